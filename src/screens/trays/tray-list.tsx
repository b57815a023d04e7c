import { useState } from 'preact/hooks';
import { factsOf } from '../../domain/shop/registers.ts';
import type { Shop } from '../../domain/shop/shop.ts';
import { SelectField } from '../../ui/field/select-field.tsx';
import { Disclosure } from '../../ui/notice/disclosure.tsx';
import { EmptyState } from '../../ui/notice/empty-state.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { type Column, DataTable } from '../../ui/table/data-table.tsx';
import { labelWords } from '../../words/label-words.ts';
import { nameOf } from '../../words/names.ts';
import { ago } from '../../words/time-words.ts';
import { traysWords as words } from '../../words/trays-words.ts';
import { goTo } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';
import { useNow } from '../parts/use-now.ts';
import { WoodName } from '../parts/wood-name.tsx';
import { FindTray } from './find-tray.tsx';
import { SharedCodes } from './shared-codes.tsx';
import { spotWords } from './spot-words.ts';
import { spotsOf, type TrayRow, traysInWork } from './trays-view.ts';

/** All trays, with the pad that finds one by its code. */
export const TrayList = () => {
  const shop = useShop();
  const { live, done } = traysInWork(shop);
  const anyVariant = factsOf(shop.registers, 'variant').some(({ fact }) => !fact.retired);
  return (
    <main class="trays">
      <header class="trays-head">
        <h1>{words.title}</h1>
        <div class="trays-acts">
          {shop.trays.size > 0 && (
            <PressButton
              icon="scan"
              label={words.scan}
              onAct={() => goTo('trays', 'scan')}
              testId="scan-trays"
            />
          )}
          {shop.trays.size > 0 && (
            <PressButton
              icon="label"
              label={labelWords.title}
              onAct={() => goTo('trays', 'labels')}
              testId="print-trays"
            />
          )}
          {anyVariant && (
            <PressButton
              tone="go"
              icon="plus"
              label={words.makeUp}
              onAct={() => goTo('trays', 'new')}
              testId="make-trays"
            />
          )}
        </div>
      </header>
      {!anyVariant && <NoVariant />}
      {anyVariant && shop.trays.size === 0 && (
        <EmptyState icon="trays" title={words.none}>
          {words.noneHelp}
        </EmptyState>
      )}
      <SharedCodes />
      {shop.trays.size > 0 && (
        <div class="trays-columns">
          <FindTray rows={live} />
          <LiveTrays rows={live} />
        </div>
      )}
      {done.length > 0 && (
        <Disclosure summary={words.done(done.length)} testId="done-trays">
          <TrayTable rows={done} caption={words.done(done.length)} />
        </Disclosure>
      )}
    </main>
  );
};

export const NoVariant = () => (
  <EmptyState
    icon="set-up"
    title={words.noVariant}
    action={<PressButton tone="go" label={words.toSetUp} onAct={() => goTo('set-up')} />}
  >
    {words.noVariantHelp}
  </EmptyState>
);

const everything = '';

const LiveTrays = ({ rows }: { rows: readonly TrayRow[] }) => {
  const { registers } = useShop();
  const [wood, setWood] = useState(everything);
  const [stage, setStage] = useState(everything);
  const shown = rows.filter(
    (row) =>
      (wood === everything || row.tray.species === wood) &&
      (stage === everything || row.stages.some((at) => at.stage === stage)),
  );
  const options = (register: 'species' | 'stage', ids: readonly string[]) => [
    { value: everything, label: words.all },
    ...[...new Set(ids)].map((id) => ({ value: id, label: nameOf(registers, { register, id }) })),
  ];
  return (
    <Panel title={words.live(rows.length)}>
      <div class="trays-filters">
        <SelectField
          label={words.filterWood}
          options={options(
            'species',
            rows.map(({ tray }) => tray.species),
          )}
          value={wood}
          onChoose={setWood}
        />
        <SelectField
          label={words.filterStage}
          options={options(
            'stage',
            rows.flatMap(({ stages }) => stages.map((at) => at.stage)),
          )}
          value={stage}
          onChoose={setStage}
        />
      </div>
      <TrayTable rows={shown} caption={words.live(rows.length)} />
    </Panel>
  );
};

const TrayTable = ({ rows, caption }: { rows: readonly TrayRow[]; caption: string }) => {
  const shop = useShop();
  const now = useNow();
  const columns: Column<TrayRow>[] = [
    {
      key: 'code',
      head: words.code,
      cell: ({ tray }) => (
        <span class="code trays-code" data-testid={`tray-row-${tray.code}`}>
          {tray.code}
        </span>
      ),
      sortBy: ({ tray }) => tray.code,
    },
    { key: 'where', head: words.where, cell: (row) => <Where shop={shop} row={row} /> },
    {
      key: 'variant',
      head: words.variant,
      cell: ({ tray }) => nameOf(shop.registers, { register: 'variant', id: tray.variant }),
    },
    { key: 'wood', head: words.wood, cell: ({ tray }) => <WoodName species={tray.species} /> },
    { key: 'age', head: words.age, cell: ({ tray }) => ago(tray.made, now), sortBy: ({ tray }) => tray.made },
  ];
  return (
    <DataTable
      caption={caption}
      captionUnseen
      columns={columns}
      rows={rows}
      rowKey={({ tray }) => tray.tray}
      onPick={({ tray }) => goTo('trays', tray.tray)}
      rowTone={(row) => (spotsOf(row).some(({ shown }) => shown < 0) ? 'warn' : undefined)}
      empty={words.noMatch}
    />
  );
};

const Where = ({ shop, row }: { shop: Shop; row: TrayRow }) => (
  <ul class="trays-where">
    {spotsOf(row).map((spot) => (
      <li key={`${spot.stage}${spot.at}${spot.grade}`}>{spotWords(spot, shop.registers)}</li>
    ))}
  </ul>
);
