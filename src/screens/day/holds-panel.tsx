import { type Hold, holds } from '../../domain/rollup/holds.ts';
import { Panel } from '../../ui/panel/panel.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';
import { clockTime } from '../../words/date-words.ts';
import { dayWords as words } from '../../words/day-words.ts';
import { nameOf } from '../../words/names.ts';
import { readyIn } from '../../words/time-words.ts';
import { goTo } from '../parts/address.ts';
import { useSession, useShop } from '../parts/app-context.ts';

/** What cures now, the soonest first; a tap leads to the stage screen that takes it out. */
export const HoldsPanel = ({ now }: { now: number }) => {
  const shop = useShop();
  const zone = useSession().zone();
  const key = ({ tray, stage, ready, grade }: Hold) => `${tray.tray}|${stage}|${ready}|${grade}`;
  return (
    <Panel title={words.holds}>
      <DataTable
        caption={words.holds}
        captionUnseen
        columns={[
          { key: 'tray', head: words.tray, cell: ({ tray }) => <span class="code">{tray.code}</span> },
          {
            key: 'stage',
            head: words.stage,
            cell: ({ stage }) => nameOf(shop.registers, { register: 'stage', id: stage }),
          },
          {
            key: 'pieces',
            head: words.pieces,
            numeric: true,
            cell: ({ tray, pieces }) => <b data-testid={`hold-${tray.code}`}>{pieces}</b>,
          },
          {
            key: 'ready',
            head: words.ready,
            cell: ({ ready }) => `${clockTime(ready, { zone, now })} · ${readyIn(ready, now)}`,
          },
        ]}
        rows={holds(shop)}
        rowKey={key}
        rowTone={({ ready }) => (ready <= now ? 'saved' : undefined)}
        onPick={({ tray, stage }) => goTo('bench', stage, tray.tray)}
        empty={words.noHolds}
      />
    </Panel>
  );
};
