import { Panel } from '../../../src/ui/panel/panel.tsx';
import { BarRow } from '../../../src/ui/share/bar-row.tsx';
import { ShareBar } from '../../../src/ui/share/share-bar.tsx';
import { type Column, DataTable } from '../../../src/ui/table/data-table.tsx';

interface Row {
  code: string;
  wood: string;
  pieces: number;
  firstPass: number | undefined;
  cost: number;
}

const rows: readonly Row[] = [
  { code: 'A17K', wood: 'Ash, copper', pieces: 24, firstPass: 0.958, cost: 4.12 },
  { code: 'C08R', wood: 'Boxwood, nickel silver', pieces: 6, firstPass: 0.5, cost: 11.9 },
  { code: 'D11F', wood: 'Yew, copper', pieces: 12, firstPass: undefined, cost: 7.05 },
  { code: 'H20L', wood: 'Plum, copper', pieces: 18, firstPass: 0.833, cost: 6.4 },
];

const columns: readonly Column<Row>[] = [
  {
    key: 'code',
    head: 'Tray',
    cell: (row) => <span class="code">{row.code}</span>,
    sortBy: (row) => row.code,
  },
  { key: 'wood', head: 'Variant', cell: (row) => row.wood, sortBy: (row) => row.wood },
  { key: 'pieces', head: 'Pieces', cell: (row) => row.pieces, numeric: true, sortBy: (row) => row.pieces },
  {
    key: 'first',
    head: 'First-pass yield',
    cell: (row) => (row.firstPass === undefined ? '–' : `${(row.firstPass * 100).toFixed(1)} %`),
    numeric: true,
    sortBy: (row) => row.firstPass,
  },
  {
    key: 'cost',
    head: 'Cost a piece',
    cell: (row) => row.cost.toFixed(2),
    numeric: true,
    sortBy: (row) => row.cost,
  },
];

/** Tables, shares and bars. */
export const TablesPage = () => (
  <main class="gallery">
    <h1>Figures</h1>
    <Panel title="Trays in work">
      <DataTable
        caption="Trays in work"
        captionUnseen
        columns={columns}
        rows={rows}
        rowKey={(row) => row.code}
        onPick={() => undefined}
        sorted={{ key: 'pieces', way: 'descending' }}
        rowTone={(row) => (row.code === 'C08R' ? 'flaw' : undefined)}
        foot={['Total', '', 60, '88.3 %', '']}
        testId="trays"
      />
    </Panel>
    <Panel title="First-pass yield by wood" tone="warn">
      <ShareBar label="Ash" part={115} whole={120} shown="115 of 120" low={0.91} high={0.985} />
      <ShareBar label="Boxwood" part={3} whole={6} shown="3 of 6" low={0.19} high={0.81} tone="flaw" />
      <ShareBar label="Yew" part={0} whole={0} shown="none yet" />
    </Panel>
    <Panel title="Money lost by stage">
      <BarRow label="Turn to shape" value={41.2} most={41.2} shown="41.20" tone="flaw" detail="9 pieces" />
      <BarRow label="Sand" value={12.5} most={41.2} shown="12.50" tone="flaw" detail="2 pieces" />
      <BarRow label="Polish" value={0} most={41.2} shown="0.00" tone="flaw" />
      <BarRow label="Copper held" value={20} most={41.2} shown="20" tone="copper" />
    </Panel>
  </main>
);
