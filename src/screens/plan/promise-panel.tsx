import { useState } from 'preact/hooks';
import type { ShopDay } from '../../domain/log/ids.ts';
import { dayAfter } from '../../domain/log/zone.ts';
import type { Forecast } from '../../domain/plan/forecast/forecast.ts';
import type { BatchTargets } from '../../domain/rollup/batch-targets.ts';
import { Field } from '../../ui/field/field.tsx';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { type Column, DataTable } from '../../ui/table/data-table.tsx';
import { forecastWords as words } from '../../words/forecast-words.ts';
import { nameOf } from '../../words/names.ts';
import { wholeNumber } from '../../words/number-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { dayTyped, type PromiseRow, promisesBy } from './forecast-view.ts';

export interface PromisePanelProps {
  readonly forecast: Extract<Forecast, { kind: 'forecast' }>;
  readonly keys: readonly string[];
  readonly batch: BatchTargets;
  /** Whether the batch is all that is planned. */
  readonly isWhole: boolean;
  readonly day: ShopDay;
  readonly onDay: (day: ShopDay) => void;
}

/** What will be there by a day that is chosen, and how much of it is safe to promise. */
export const PromisePanel = ({ forecast, keys, batch, isWhole, day, onDay }: PromisePanelProps) => {
  const session = useSession();
  const shop = useShop();
  const [typed, setTyped] = useState<string>();
  const today = session.today();
  const change = (text: string) => {
    setTyped(text);
    const read = dayTyped(text, today);
    if (read) onDay(read);
  };
  const isBad = typed !== undefined && dayTyped(typed, today) === undefined;
  const promises = promisesBy(shop, { forecast, keys, batch, day, zone: session.zone() });
  const { registers } = shop;
  return (
    <Panel
      title={words.promise}
      lead={words.promiseLead(batch.chance)}
      actions={<Means label={studyWords.means}>{words.promiseMeans}</Means>}
      testId="forecast-promise"
    >
      <div class="plan-fields">
        <Field
          label={words.until}
          kind="date"
          value={typed ?? day}
          onText={change}
          error={isBad ? words.badDay : undefined}
          testId="promise-day"
        />
      </div>
      {promises ? (
        <div class="forecast-promise">
          <DataTable
            caption={words.promise}
            captionUnseen
            columns={columnsOf((id) => nameOf(registers, { register: 'variant', id }))}
            rows={promises.rows}
            rowKey={({ target }) => target.variant}
            foot={isWhole ? footOf(promises.rows, promises.all) : undefined}
            testId="promise-table"
          />
        </div>
      ) : (
        <p role="status">{day > dayAfter(today, 0) ? words.asking : words.badDay}</p>
      )}
    </Panel>
  );
};

function columnsOf(nameOfVariant: (id: string) => string): readonly Column<PromiseRow>[] {
  return [
    { key: 'variant', head: words.variant, cell: ({ target }) => nameOfVariant(target.variant) },
    {
      key: 'safe',
      head: words.safe,
      numeric: true,
      cell: ({ target, safe }) => <b data-testid={`safe-${target.variant}`}>{wholeNumber(safe)}</b>,
    },
    { key: 'chance', head: words.chance, numeric: true, cell: ({ chance }) => words.share(chance) },
    { key: 'half', head: words.half, numeric: true, cell: ({ middle }) => wholeNumber(middle) },
    { key: 'range', head: words.range, numeric: true, cell: ({ low, high }) => words.between(low, high) },
    {
      key: 'wanted',
      head: words.wantedHead,
      numeric: true,
      cell: ({ target }) => wholeNumber(target.wanted),
    },
    {
      key: 'ready',
      head: words.ready,
      numeric: true,
      cell: ({ target }) => wholeNumber(target.finished.first),
    },
  ];
}

function footOf(rows: readonly PromiseRow[], all: Omit<PromiseRow, 'target'>) {
  const sum = (of: (row: PromiseRow) => number) => wholeNumber(rows.reduce((to, row) => to + of(row), 0));
  return [
    words.all,
    <b key="safe" data-testid="safe-all">
      {wholeNumber(all.safe)}
    </b>,
    words.share(all.chance),
    wholeNumber(all.middle),
    words.between(all.low, all.high),
    sum(({ target }) => target.wanted),
    sum(({ target }) => target.finished.first),
  ];
}
