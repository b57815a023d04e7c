import { Disclosure } from '../../ui/notice/disclosure.tsx';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { type Column, DataTable } from '../../ui/table/data-table.tsx';
import { nameOf } from '../../words/names.ts';
import { wholeNumber } from '../../words/number-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { adviceWords, todayWords as words } from '../../words/today-words.ts';
import { goTo } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';
import { useTodayNames } from './today-names.ts';
import type { GroupToday } from './today-view.ts';

type Round = GroupToday['timetable']['rounds'][number];

export interface RoundsPanelProps {
  readonly groups: readonly GroupToday[];
  readonly hasHours: boolean;
  readonly now: number;
}

/** The advice for all clamps and racks, each with the timetable behind it. */
export const RoundsPanel = ({ groups, hasHours, now }: RoundsPanelProps) => (
  <Panel
    title={words.rounds}
    lead={words.roundsLead}
    actions={<Means label={studyWords.means}>{words.roundsMeans}</Means>}
    testId="rounds"
  >
    {groups.length === 0 && <p>{words.noHolds}</p>}
    {!hasHours && (
      <div class="plan-acts">
        <p>{words.noHours}</p>
        <PressButton icon="person" label={words.toPeople} onAct={() => goTo('set-up', 'people')} />
      </div>
    )}
    {hasHours && groups.map((group) => <Group key={group.key} group={group} now={now} />)}
  </Panel>
);

const Group = ({ group, now }: { group: GroupToday; now: number }) => {
  const { registers } = useShop();
  const names = useTodayNames(now);
  const { key, limit, stages, advice, timetable, untimed } = group;
  const name =
    limit.resource === null
      ? stages.map(names.stage).join(', ')
      : nameOf(registers, { register: 'resource', id: limit.resource });
  const columns: readonly Column<Round>[] = [
    { key: 'stage', head: words.columns.stage, cell: ({ stage }) => names.stage(stage) },
    { key: 'pieces', head: words.columns.pieces, numeric: true, cell: ({ pieces }) => wholeNumber(pieces) },
    { key: 'from', head: words.columns.from, numeric: true, cell: ({ from }) => names.time(from) },
    { key: 'loaded', head: words.columns.loaded, numeric: true, cell: ({ loaded }) => names.time(loaded) },
    { key: 'ready', head: words.columns.ready, numeric: true, cell: ({ ready }) => names.time(ready) },
  ];
  return (
    <section class="plan-round" data-testid={`rounds-${key}`}>
      <h3 dir="auto">{name}</h3>
      <p class="plan-advice" data-testid={`advice-${key}`}>
        {adviceWords(advice, names)}
      </p>
      {untimed.length > 0 && <p class="plan-note">{words.untimed(untimed.map(names.stage).join(', '))}</p>}
      {timetable.left > 0 && advice.kind !== 'no-time' && (
        <p class="plan-note">{words.left(timetable.left)}</p>
      )}
      {timetable.rounds.length > 0 && (
        <Disclosure summary={words.showTimetable} testId={`timetable-${key}`}>
          <DataTable
            caption={words.timetable(name)}
            captionUnseen
            columns={columns}
            rows={timetable.rounds}
            rowKey={(round) => `${round.stage} ${round.from}`}
          />
        </Disclosure>
      )}
    </section>
  );
};
