import { useMemo, useState } from 'preact/hooks';
import type { LoadName } from '../../domain/plan/constraint/constraint-study.ts';
import { batchTargets } from '../../domain/rollup/batch-targets.ts';
import { SelectField } from '../../ui/field/select-field.tsx';
import { constraintWords as words } from '../../words/constraint-words.ts';
import { useSession } from '../parts/app-context.ts';
import { latestOf, StudyStanding } from '../parts/study-standing.tsx';
import { useStudy } from '../parts/use-study.ts';
import { useConstraintNames } from './constraint-names.ts';
import { type ConstraintChoice, constraintOf, constraintQuestions, missingHere } from './constraint-view.ts';
import { CostMissing } from './cost-missing.tsx';
import { missingFacts } from './cost-view.ts';
import { EarningsPanel } from './earnings-panel.tsx';
import { LoadBehind } from './load-behind.tsx';
import { LoadsPanel } from './loads-panel.tsx';
import { MixPanel } from './mix-panel.tsx';
import { PlanFrame } from './plan-frame.tsx';
import type { PlanPageProps } from './plan-page-props.ts';

/** What holds the shop back, what an hour of it earns, and the mix that makes the most of all. */
export const ConstraintPage = ({ batches, rack }: PlanPageProps) => {
  const session = useSession();
  const view = session.view.value;
  const [choice, setChoice] = useState<ConstraintChoice>(() => ({
    batch: (batches.find(({ due }) => due !== null) ?? batches[0])?.batch,
    ...{ time: 'week', own: '40', sells: 'wanted' },
  }));
  const [picked, setPicked] = useState<LoadName>();
  const questions = useMemo(
    () =>
      constraintQuestions(view.shop, {
        ...{ now: session.now(), today: session.today(), zone: session.zone() },
        batches: batchTargets(view.shop),
        choice,
      }),
    [view, session, choice],
  );
  const { state, again } = useStudy('plan', questions);
  const last = latestOf(state);
  const study = last?.study.constraint;
  const question = last?.questions.constraint;
  const names = useConstraintNames(study?.demands ?? []);
  const chosen = batches.find(({ batch }) => batch === choice.batch) ?? batches[0];
  const isNamed = (name: LoadName | null | undefined): name is LoadName =>
    name != null && (study?.uses.some(({ of }) => of.has(name)) ?? false);
  const name = [picked, study && constraintOf(study)?.resource].find(isNamed) ?? 'hands';
  return (
    <PlanFrame page="constraint" rack={rack} busy={state.kind === 'none' || state.kind === 'working'}>
      <div class="plan-which">
        <SelectField
          label={words.horizon}
          hint={words.horizonHint}
          options={batches.map(({ batch: value, name: batch, due }) => ({
            value,
            label: words.dueOn(batch, due),
          }))}
          value={chosen?.batch}
          onChoose={(batch) => setChoice({ ...choice, batch })}
          testId="constraint-batch"
        />
      </div>
      <StudyStanding state={state} again={again} />
      {study && question && (
        <div class="plan-page" data-old={state.kind !== 'ready' || undefined}>
          <LoadsPanel study={study} due={chosen?.due ?? null} names={names} onPick={setPicked} />
          <LoadBehind study={study} name={name} keys={question.until.keys} names={names} />
          <EarningsPanel study={study} name={name} names={names} />
          <CostMissing missing={missingFacts(missingHere(study))} />
          <MixPanel
            study={study}
            choice={choice}
            onChoose={setChoice}
            names={names}
            hasPlaces={question.mix?.stretch.working !== null}
          />
        </div>
      )}
    </PlanFrame>
  );
};
