import type { PlanStudy } from '../../domain/plan/plan-study.ts';
import type { BatchTargets } from '../../domain/rollup/batch-targets.ts';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { type Column, DataTable } from '../../ui/table/data-table.tsx';
import { nameOf } from '../../words/names.ts';
import { planWords as words } from '../../words/plan-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { goTo } from '../parts/address.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { type HoursRow, hoursRows, minutesOfWeek, shopHours } from './targets-view.ts';

/** The hours that people have against those that the open batches need. */
export const HoursPanel = ({
  batches,
  study,
}: {
  batches: readonly BatchTargets[];
  study: PlanStudy | null;
}) => {
  const { registers } = useShop();
  const today = useSession().today();
  const hours = shopHours(registers);
  const week = minutesOfWeek(hours, today);
  const rows = hoursRows(batches, { hours, today, study });
  const unmeasured = [...new Set(rows.flatMap(({ needed }) => needed?.unknown ?? []))];
  return (
    <Panel
      title={words.hours}
      lead={words.hoursLead}
      actions={<Means label={studyWords.means}>{words.hoursMeans}</Means>}
      testId="plan-hours"
    >
      <p data-testid="plan-week">{week === undefined ? words.weekUnknown : words.week(week)}</p>
      {hours.unsaid.length > 0 && <p class="plan-name">{words.unsaid(hours.unsaid.join(', '))}</p>}
      {(week === undefined || hours.unsaid.length > 0) && (
        <div class="plan-acts">
          <PressButton
            icon="person"
            label={words.toPeople}
            onAct={() => goTo('set-up', 'people')}
            testId="plan-to-people"
          />
        </div>
      )}
      <DataTable
        caption={words.hours}
        captionUnseen
        columns={columns}
        rows={rows}
        rowKey={({ batch }) => batch.batch}
        rowTone={({ verdict }) => (verdict === 'short' || verdict === 'past' ? 'warn' : undefined)}
      />
      {unmeasured.length > 0 && (
        <p class="plan-note">
          {words.unmeasured(unmeasured.map((id) => nameOf(registers, { register: 'stage', id })).join(', '))}
        </p>
      )}
    </Panel>
  );
};

const columns: readonly Column<HoursRow>[] = [
  { key: 'batch', head: words.batch, cell: ({ batch }) => batch.name },
  {
    key: 'until',
    head: words.until,
    numeric: true,
    cell: ({ until, batch }) =>
      until === undefined
        ? words.notKnown
        : until === null
          ? (batch.due ?? words.noDay)
          : words.minutes(until),
  },
  {
    key: 'needed',
    head: words.needed,
    numeric: true,
    cell: ({ needed, batch }) => <span data-testid={`needed-${batch.batch}`}>{neededWords(needed)}</span>,
  },
  {
    key: 'verdict',
    head: words.verdict,
    cell: ({ verdict, batch }) => <b data-testid={`verdict-${batch.batch}`}>{words.verdicts[verdict]}</b>,
  },
];

function neededWords(needed: HoursRow['needed']): string {
  if (!needed || (needed.minutes === 0 && needed.unknown.length > 0)) return words.notKnown;
  return needed.unknown.length > 0 ? words.atLeast(needed.minutes) : words.minutes(needed.minutes);
}
