import { useMemo } from 'preact/hooks';
import { batchTargets } from '../../domain/rollup/batch-targets.ts';
import { factOf } from '../../domain/shop/registers.ts';
import { useSession } from '../parts/app-context.ts';
import { latestOf, StudyStanding } from '../parts/study-standing.tsx';
import { useNow } from '../parts/use-now.ts';
import { useStudy } from '../parts/use-study.ts';
import { NextPanel } from './next-panel.tsx';
import { PlanFrame } from './plan-frame.tsx';
import type { PlanPageProps } from './plan-page-props.ts';
import { planQuestions } from './plan-question.ts';
import { RoundsPanel } from './rounds-panel.tsx';
import { todayView } from './today-view.ts';

/** What to load when, and what to do next. */
export const TodayPage = ({ batches, rack }: PlanPageProps) => {
  const session = useSession();
  const view = session.view.value;
  useNow(60_000);
  const questions = useMemo(
    () => ({
      ...planQuestions(view.shop.registers, { batches: batchTargets(view.shop), goal: 'firsts' }),
      times: true,
    }),
    [view],
  );
  const { state, again } = useStudy('plan', questions);
  const study = latestOf(state)?.study ?? null;
  const { shop } = view;
  const moment = { now: session.now(), today: session.today(), zone: session.zone() };
  const { hasHours, groups, next } = todayView(shop, { ...moment, batches, study });
  const mine = factOf(shop.registers, { register: 'station', id: session.station })?.stage ?? null;
  return (
    <PlanFrame page="today" rack={rack} busy={state.kind === 'none' || state.kind === 'working'}>
      <StudyStanding state={state} again={again} />
      <div class="plan-page" data-old={state.kind !== 'ready' || undefined}>
        <NextPanel next={next} mine={mine} now={moment.now} />
        <RoundsPanel groups={groups} hasHours={hasHours} now={moment.now} />
      </div>
    </PlanFrame>
  );
};
