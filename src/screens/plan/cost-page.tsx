import { useMemo, useState } from 'preact/hooks';
import { batchTargets } from '../../domain/rollup/batch-targets.ts';
import { SelectField } from '../../ui/field/select-field.tsx';
import { costWords as words } from '../../words/cost-words.ts';
import { useSession } from '../parts/app-context.ts';
import { latestOf, StudyStanding } from '../parts/study-standing.tsx';
import { useStudy } from '../parts/use-study.ts';
import { CostMissing } from './cost-missing.tsx';
import { CostTable } from './cost-table.tsx';
import { costQuestion, missingIn } from './cost-view.ts';
import { LossesPanel } from './losses-panel.tsx';
import { PlanFrame } from './plan-frame.tsx';
import type { PlanPageProps } from './plan-page-props.ts';
import { planQuestions } from './plan-question.ts';
import { SecondPanel } from './second-panel.tsx';

/** What the good pieces of a batch cost, which prices bear that, and where money was lost. */
export const CostPage = ({ batches, rack }: PlanPageProps) => {
  const view = useSession().view.value;
  const [chosen, setChosen] = useState<string>();
  const id = (batches.find((each) => each.batch === chosen) ?? batches[0])?.batch;
  // Other ones whenever the view is: the shop behind it changes in place.
  const questions = useMemo(() => {
    const batch = batchTargets(view.shop).find((each) => each.batch === id);
    const none = planQuestions(view.shop.registers, { batches: [], goal: 'finished' });
    return batch ? { ...none, costs: costQuestion(view.shop, batch) } : none;
  }, [view, id]);
  const { state, again } = useStudy('plan', questions);
  const last = latestOf(state);
  const study = last?.study.costs;
  const question = last?.questions.costs;
  return (
    <PlanFrame page="cost" rack={rack} busy={state.kind === 'none' || state.kind === 'working'}>
      {batches.length > 1 && (
        <div class="plan-fields">
          <SelectField
            label={words.batch}
            options={batches.map(({ batch: value, name: label }) => ({ value, label }))}
            value={id}
            onChoose={setChosen}
            testId="cost-batch"
          />
        </div>
      )}
      <StudyStanding state={state} again={again} />
      {study && question && (
        <div class="plan-page" data-old={state.kind !== 'ready' || undefined}>
          <CostTable study={study} question={question} />
          <CostMissing missing={missingIn(study)} />
          <LossesPanel losses={study.losses} />
          <SecondPanel study={study} question={question} />
        </div>
      )}
    </PlanFrame>
  );
};
