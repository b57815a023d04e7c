import { mostWanted } from '../../domain/plan/starts/most-wanted.ts';
import type { BatchTargets, VariantTarget } from '../../domain/rollup/batch-targets.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { forecastWords as words } from '../../words/forecast-words.ts';
import { nameOf } from '../../words/names.ts';
import { goTo } from '../parts/address.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import type { PlanAbout } from './forecast-view.ts';

/** What is to be known before the dates are believed. */
export const ForecastNotices = ({ batch, about }: { batch: BatchTargets; about: PlanAbout }) => {
  const { registers } = useShop();
  const session = useSession();
  const isPast = batch.due !== null && batch.due < session.today();
  const names = (targets: readonly VariantTarget[]) =>
    [...new Set(targets.map(({ variant: id }) => nameOf(registers, { register: 'variant', id })))].join(', ');
  return (
    <>
      {isPast && (
        <Notice
          tone="warn"
          title={words.past}
          actions={<PressButton label={words.toTargets} onAct={() => goTo('plan')} />}
          testId="forecast-past"
        >
          {words.pastHelp}
        </Notice>
      )}
      {about.unplanned.length > 0 && (
        <p class="plan-note plan-name" data-testid="forecast-unplanned">
          {words.unplanned(names(about.unplanned))}
        </p>
      )}
      {about.tooMany.length > 0 && (
        <p class="plan-note plan-name" data-testid="forecast-too-many">
          {words.tooMany(names(about.tooMany), mostWanted)}
        </p>
      )}
      <p class="plan-note" data-testid="forecast-starts">
        {about.starts > 0 ? words.startsAdded(about.starts) : words.noStarts}
      </p>
    </>
  );
};
