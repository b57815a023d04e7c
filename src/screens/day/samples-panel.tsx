import type { DaySample } from '../../domain/rollup/day-report.ts';
import { Panel } from '../../ui/panel/panel.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';
import { dayWords as words } from '../../words/day-words.ts';
import { nameOf } from '../../words/names.ts';
import { useShop } from '../parts/app-context.ts';

/** Deliveries that were checked on a day; nothing where none was. */
export const SamplesPanel = ({ samples }: { samples: readonly DaySample[] }) => {
  const { registers } = useShop();
  if (samples.length === 0) return null;
  const name = ({ part }: DaySample) => nameOf(registers, { register: 'part', id: part });
  return (
    <Panel title={words.samples} testId="day-samples">
      <DataTable
        caption={words.samples}
        captionUnseen
        columns={[
          { key: 'part', head: words.part, cell: name },
          {
            key: 'accepted',
            head: words.accepted,
            numeric: true,
            cell: ({ accepted }) => words.number(accepted),
          },
          {
            key: 'refused',
            head: words.refused,
            numeric: true,
            cell: ({ refused }) => words.number(refused),
          },
        ]}
        rows={samples.toSorted((a, b) => name(a).localeCompare(name(b)))}
        rowKey={({ part }) => part}
      />
    </Panel>
  );
};
