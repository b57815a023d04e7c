import { useState } from 'preact/hooks';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { type Column, DataTable } from '../../ui/table/data-table.tsx';
import { nameOf } from '../../words/names.ts';
import { outcomeWords } from '../../words/outcome-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { yieldWords as words } from '../../words/yield-words.ts';
import { useShop } from '../parts/app-context.ts';
import { flawsByReason, type ReasonRow } from './yield-view.ts';

/** Flaws by reason and wood; a reason leads to its stages and outcomes. */
export const FlawsPanel = () => {
  const shop = useShop();
  const [picked, setPicked] = useState<string | null>(null);
  const rows = flawsByReason(shop);
  const woods = [...new Set(rows.flatMap(({ bySpecies }) => [...bySpecies.keys()]))].sort();
  const reasonName = (id: string) => nameOf(shop.registers, { register: 'reason', id });
  const columns: Column<ReasonRow>[] = [
    { key: 'reason', head: words.reason, cell: ({ reason }) => reasonName(reason) },
    ...woods.map(
      (species): Column<ReasonRow> => ({
        key: species,
        head: nameOf(shop.registers, { register: 'species', id: species }),
        numeric: true,
        cell: ({ reason, bySpecies }) => (
          <span data-testid={`flaw-${reason}-${species}`}>{bySpecies.get(species) ?? 0}</span>
        ),
        sortBy: ({ bySpecies }) => bySpecies.get(species) ?? 0,
      }),
    ),
    {
      key: 'total',
      head: words.total,
      numeric: true,
      cell: ({ reason, total }) => <b data-testid={`flaw-${reason}-all`}>{total}</b>,
      sortBy: ({ total }) => total,
    },
  ];
  const row = rows.find(({ reason }) => reason === picked);
  return (
    <Panel
      title={words.flaws}
      lead={words.flawsLead}
      actions={<Means label={studyWords.means}>{words.flawsMeans}</Means>}
    >
      <DataTable
        caption={words.flaws}
        captionUnseen
        columns={columns}
        rows={rows}
        rowKey={({ reason }) => reason}
        onPick={({ reason }) => setPicked(reason)}
        empty={words.noFlaws}
      />
      {row && (
        <Sheet
          title={words.flawsBehind(reasonName(row.reason))}
          onClose={() => setPicked(null)}
          closeLabel={words.traysClose}
        >
          <Behind row={row} />
        </Sheet>
      )}
    </Panel>
  );
};

const Behind = ({ row }: { row: ReasonRow }) => {
  const { registers } = useShop();
  return (
    <DataTable
      caption={words.flawsBehind(nameOf(registers, { register: 'reason', id: row.reason }))}
      captionUnseen
      columns={[
        {
          key: 'stage',
          head: words.stage,
          cell: ({ stage }) => nameOf(registers, { register: 'stage', id: stage }),
        },
        {
          key: 'wood',
          head: words.wood,
          cell: ({ species }) => nameOf(registers, { register: 'species', id: species }),
        },
        { key: 'outcome', head: words.outcome, cell: ({ outcome }) => outcomeWords[outcome] },
        { key: 'pieces', head: words.pieces, numeric: true, cell: ({ pieces }) => pieces },
      ]}
      rows={row.cells}
      rowKey={({ stage, species, outcome }) => `${stage}|${species}|${outcome}`}
    />
  );
};
