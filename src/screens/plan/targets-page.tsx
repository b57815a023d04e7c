import { useMemo } from 'preact/hooks';
import { batchTargets } from '../../domain/rollup/batch-targets.ts';
import { useSession } from '../parts/app-context.ts';
import { latestOf, StudyStanding } from '../parts/study-standing.tsx';
import { useStudy } from '../parts/use-study.ts';
import { BatchPanel } from './batch-panel.tsx';
import { HoursPanel } from './hours-panel.tsx';
import { PlanFrame } from './plan-frame.tsx';
import type { PlanPageProps } from './plan-page-props.ts';
import { planQuestions } from './plan-question.ts';
import { TargetsFile } from './targets-file.tsx';

/** What each open batch wants and has, the hours that are left for it, and the way by a spreadsheet. */
export const TargetsPage = ({ batches, rack }: PlanPageProps) => {
  const view = useSession().view.value;
  // Other ones whenever the view is: the shop behind it changes in place.
  const questions = useMemo(
    () => planQuestions(view.shop.registers, { batches: batchTargets(view.shop), goal: 'firsts' }),
    [view],
  );
  const { state, again } = useStudy('plan', questions);
  return (
    <PlanFrame page="targets" rack={rack} busy={state.kind === 'none' || state.kind === 'working'}>
      {batches.map((batch) => (
        <BatchPanel key={batch.batch} batch={batch} />
      ))}
      <StudyStanding state={state} again={again} />
      <HoursPanel batches={batches} study={latestOf(state)?.study ?? null} />
      <TargetsFile />
    </PlanFrame>
  );
};
