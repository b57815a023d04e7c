import type { ForecastState } from '../../app/forecast.ts';
import { compared } from '../../domain/plan/forecast/compared.ts';
import type { Forecast } from '../../domain/plan/forecast/forecast.ts';
import type { Payback } from '../../domain/plan/purchase/payback.ts';
import { factOf } from '../../domain/shop/registers.ts';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { forecastWords } from '../../words/forecast-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { whatIfWords as words } from '../../words/what-if-words.ts';
import { goTo } from '../parts/address.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { dayOf } from './forecast-view.ts';
import { paybackOf, type WhatIfDraft } from './what-if-view.ts';

const aDay = 86_400_000;

export interface WhatIfResultProps {
  readonly now: NonNullable<ForecastState['last']>;
  readonly afterwards: Forecast;
  readonly draft: WhatIfDraft;
}

/** The difference that a change makes: in days, hours, and money where the rate is known. */
export const WhatIfResult = ({
  now: { question, forecast: now },
  afterwards: then,
  draft,
}: WhatIfResultProps) => {
  const shop = useShop();
  const zone = useSession().zone();
  if (now.kind !== 'forecast') return null;
  if (then.kind !== 'forecast')
    return (
      <Panel title={words.result} tone="warn" testId="what-if-result">
        <p>{words.cannot}</p>
      </Panel>
    );
  const { done, hours } = compared(now, then);
  const rate = factOf(shop.registers, { register: 'shop', id: 'shop' })?.hourCost ?? null;
  const fair = (at: number | null) =>
    at === null ? forecastWords.beyond : forecastWords.date(dayOf(shop, at, zone));
  const finished = question.plan.variants.reduce((sum, variant) => sum + variant.finished, 0);
  const good = (now.marks.at(-1)?.all.fan[2] ?? 0) - finished;
  const paid = rate === null ? undefined : paybackOf(draft, { hours, good, rate });
  return (
    <Panel
      title={words.result}
      lead={words.resultLead}
      actions={<Means label={studyWords.means}>{words.means}</Means>}
      testId="what-if-result"
    >
      <dl class="forecast-dates">
        <div>
          <dt>{`${words.now}: ${words.fair}`}</dt>
          <dd data-testid="what-if-now">{fair(now.done.at85)}</dd>
        </div>
        <div>
          <dt>{`${words.afterwards}: ${words.fair}`}</dt>
          <dd data-testid="what-if-then">{fair(then.done.at85)}</dd>
        </div>
      </dl>
      <dl class="forecast-differences">
        <dt>{words.date}</dt>
        <dd data-testid="what-if-days" data-days={done ? done.middle / aDay : undefined}>
          {done ? words.sooner(done.low / aDay, done.middle / aDay, done.high / aDay) : words.noDate}
        </dd>
        <dt>{words.hours}</dt>
        <dd data-testid="what-if-hours" data-hours={hours.middle}>
          {words.hoursDiffer(hours.low, hours.middle, hours.high)}
        </dd>
        <dt>{words.cost}</dt>
        <dd data-testid="what-if-money">
          {rate === null
            ? words.noRate
            : words.moneyDiffer(hours.low * rate, hours.middle * rate, hours.high * rate)}
        </dd>
        {paid && (
          <>
            <dt>
              {words.payback} <Means label={studyWords.means}>{words.paybackMeans}</Means>
            </dt>
            <dd data-testid="what-if-payback">
              <PaybackWords paid={paid} />
            </dd>
          </>
        )}
      </dl>
      {rate === null && (
        <div class="plan-acts">
          <PressButton label={words.toRate} onAct={() => goTo('set-up', 'tablet')} />
        </div>
      )}
    </Panel>
  );
};

const PaybackWords = ({ paid }: { paid: Payback }) => {
  if (paid.kind === 'never') return <p>{words.never}</p>;
  const { pieces, months } = paid;
  return (
    <>
      <p>{words.after(pieces.soonest, pieces.likely, pieces.latest)}</p>
      {months && <p>{words.months(months.soonest, months.likely, months.latest)}</p>}
    </>
  );
};
