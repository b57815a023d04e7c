import { useMemo, useState } from 'preact/hooks';
import type { BatchId } from '../../domain/log/ids.ts';
import { batchTargets } from '../../domain/rollup/batch-targets.ts';
import { factOf, type Registers } from '../../domain/shop/registers.ts';
import { SelectField } from '../../ui/field/select-field.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { nameOf } from '../../words/names.ts';
import { reviewWords as words } from '../../words/review-words.ts';
import { useSession } from '../parts/app-context.ts';
import { latestOf, StudyStanding } from '../parts/study-standing.tsx';
import { useStudy } from '../parts/use-study.ts';
import { PlanFrame } from './plan-frame.tsx';
import type { PlanPageProps } from './plan-page-props.ts';
import { ReviewPanels } from './review-panels.tsx';
import type { ReviewNames } from './review-tables.ts';
import { chosenOf, latestFirst, outcomesOf, reviewQuestions } from './review-view.ts';

/** What a batch came to, what the next one takes from it, and all batches side by side. */
export const ReviewPage = ({ rack }: PlanPageProps) => {
  const session = useSession();
  const view = session.view.value;
  const [picked, setPicked] = useState<BatchId>();
  // Those of the view: the shop behind it changes in place.
  const { batches, chosen, questions } = useMemo(() => {
    const latest = latestFirst(batchTargets(view.shop, { retired: true }));
    const one = chosenOf(latest, picked);
    return {
      ...{ batches: latest, chosen: one },
      questions: reviewQuestions(view.shop, { batches: latest, chosen: one }),
    };
  }, [view, picked]);
  const { state, again } = useStudy('plan', questions);
  const last = latestOf(state);
  const names = namesIn(view.shop.registers);
  const outcomes = last ? outcomesOf(batches, last.study.reviews) : [];
  const outcome = outcomes.find(({ target }) => target.batch === chosen?.batch);
  return (
    <PlanFrame
      page="review"
      rack={rack}
      busy={state.kind === 'none' || state.kind === 'working'}
      actions={
        outcome && (
          <PressButton
            icon="export"
            label={words.print}
            closing
            onAct={() => globalThis.print()}
            testId="review-print"
          />
        )
      }
    >
      <div class="plan-which">
        <SelectField
          label={words.batch}
          options={batches.map(({ batch: value }) => ({ value, label: names.batch(value) }))}
          value={chosen?.batch}
          onChoose={setPicked}
          testId="review-batch"
        />
      </div>
      <StudyStanding state={state} again={again} />
      {last && outcome && (
        <div class="plan-page" data-old={state.kind !== 'ready' || undefined}>
          <ReviewPanels outcome={outcome} outcomes={outcomes} study={last.study} names={names} />
        </div>
      )}
    </PlanFrame>
  );
};

function namesIn(registers: Registers): ReviewNames {
  return {
    batch(id) {
      const name = nameOf(registers, { register: 'batch', id });
      return factOf(registers, { register: 'batch', id })?.retired ? words.putAway(name) : name;
    },
    variant: (id) => nameOf(registers, { register: 'variant', id }),
    stage: (id) => nameOf(registers, { register: 'stage', id }),
    reason: (id) => nameOf(registers, { register: 'reason', id }),
  };
}
