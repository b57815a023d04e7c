import type { Forecast } from '../../domain/plan/forecast/forecast.ts';
import { daysBetween } from '../../domain/plan/working-hours.ts';
import type { BatchTargets } from '../../domain/rollup/batch-targets.ts';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { forecastWords as words } from '../../words/forecast-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { DatesStrip } from './dates-strip.tsx';
import { dayOf, stripOf } from './forecast-view.ts';

const levels = ['at50', 'at85', 'at95'] as const;

/** The day by which all is done, in words and on a calendar. */
export const DatesPanel = ({
  forecast: { done, enough },
  batch,
}: {
  forecast: Extract<Forecast, { kind: 'forecast' }>;
  batch: BatchTargets;
}) => {
  const session = useSession();
  const shop = useShop();
  const on = (at: number | null) => (at === null ? null : dayOf(shop, at, session.zone()));
  const days = { at50: on(done.at50), at85: on(done.at85), at95: on(done.at95) };
  const enoughBy = on(enough.at50);
  const { due } = batch;
  const spare = due === null || days.at85 === null ? null : daysBetween(days.at85, due);
  return (
    <Panel
      title={words.done}
      lead={words.doneLead}
      tone={spare !== null && spare < 0 ? 'warn' : 'plain'}
      actions={<Means label={studyWords.means}>{words.doneMeans}</Means>}
      testId="forecast-dates"
    >
      <dl class="forecast-dates">
        {levels.map((level) => (
          <div key={level}>
            <dt>{words.dates[level]}</dt>
            <dd data-testid={`forecast-${level}`} data-day={days[level] ?? undefined}>
              {days[level] === null ? words.beyond : words.date(days[level])}{' '}
              <small>{words.percent[level]}</small>
            </dd>
          </div>
        ))}
      </dl>
      {spare !== null && (
        <p class="plan-answer" data-testid="forecast-spare">
          {spare < 0 ? words.late(-spare) : words.spare(spare)}
        </p>
      )}
      <p class="plan-note" data-testid="forecast-enough">
        {enoughBy === null ? words.enoughShare(enough.share, days.at95 === null) : words.enough(enoughBy)}
      </p>
      <DatesStrip strip={stripOf({ today: session.today(), due, ...days })} />
    </Panel>
  );
};
