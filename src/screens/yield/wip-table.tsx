import { type Column, DataTable } from '../../ui/table/data-table.tsx';
import { nameOf } from '../../words/names.ts';
import { yieldWords as words } from '../../words/yield-words.ts';
import { useShop } from '../parts/app-context.ts';
import { WoodName } from '../parts/wood-name.tsx';
import type { StageFlow } from './yield-view.ts';

/** Pieces per stage and wood, with totals both ways; a hold's cure is part of the count. */
export const WipTable = ({ flow }: { flow: readonly StageFlow[] }) => {
  const { registers } = useShop();
  const woods = [...new Set(flow.flatMap(({ cells }) => cells.map(({ species }) => species)))].sort();
  const countAt = (row: StageFlow, species: string) => {
    const cell = row.cells.find((each) => each.species === species);
    return cell ? cell.waiting + cell.held : 0;
  };
  const columns: Column<StageFlow>[] = [
    {
      key: 'stage',
      head: words.stage,
      cell: ({ stage }) => nameOf(registers, { register: 'stage', id: stage }),
    },
    ...woods.map(
      (species): Column<StageFlow> => ({
        key: species,
        head: nameOf(registers, { register: 'species', id: species }),
        numeric: true,
        cell: (row) => <span data-testid={`wip-${row.stage}-${species}`}>{countAt(row, species)}</span>,
      }),
    ),
    {
      key: 'total',
      head: words.total,
      numeric: true,
      cell: ({ stage, total }) => <b data-testid={`wip-${stage}-all`}>{total}</b>,
    },
  ];
  const sum = (count: (row: StageFlow) => number) => flow.reduce((all, row) => all + count(row), 0);
  return (
    <>
      <DataTable
        caption={words.flow}
        captionUnseen
        columns={columns}
        rows={flow}
        rowKey={({ stage }) => stage}
        foot={[
          words.total,
          ...woods.map((species) => sum((row) => countAt(row, species))),
          sum(({ total }) => total),
        ]}
      />
      <ul class="yield-legend">
        {woods.map((species) => (
          <li key={species}>
            <WoodName species={species} />
          </li>
        ))}
      </ul>
    </>
  );
};
