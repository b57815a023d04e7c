import type { EventKind } from '../../domain/log/event.ts';
import { EmptyState } from '../../ui/notice/empty-state.tsx';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { moistureWords } from '../../words/moisture-words.ts';
import { storesWords as words } from '../../words/stores-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { tableWords } from '../../words/table-words.ts';
import { goTo } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';
import { LastActOf } from '../parts/last-act/last-act-of.tsx';
import { TableButton } from '../parts/table-button.tsx';
import { OrderPanel } from './order-panel.tsx';
import { PartCard } from './part-card.tsx';
import { StartPanel } from './start-panel.tsx';
import { partRows } from './stores-view.ts';
import { ToCleanPanel } from './to-clean-panel.tsx';
import { usePartSheet } from './use-part-sheet.tsx';

const storesActs: ReadonlySet<EventKind> = new Set([
  'parts-received',
  'parts-counted',
  'parts-cleaned',
  'parts-sampled',
  'moisture-read',
]);

/** What lies in the stores, part by part; what can be started with it, and what to order. */
export const PartsPage = () => {
  const rows = partRows(useShop());
  const { open, sheet } = usePartSheet();
  return (
    <main class="stores">
      <header class="stores-head">
        <div>
          <h1>{words.title}</h1>
          <p>{words.lead}</p>
        </div>
        <div class="stores-ways">
          <PressButton
            icon="stores"
            label={moistureWords.title}
            onAct={() => goTo('stores', 'wood')}
            testId="to-wood"
          />
          {rows.length > 0 && <TableButton table="stores" label={tableWords.save} />}
        </div>
      </header>
      <LastActOf kinds={storesActs} testId="stores" />
      {rows.length === 0 ? (
        <EmptyState
          icon="stores"
          title={words.noParts}
          action={<PressButton label={words.toSetUp} onAct={() => goTo('set-up', 'parts')} />}
        >
          {words.noPartsHelp}
        </EmptyState>
      ) : (
        <>
          <Panel
            title={words.parts}
            actions={<Means label={studyWords.means}>{words.partsMeans}</Means>}
            testId="stores-parts"
          >
            <ul class="stores-parts">
              {rows.map((row) => (
                <PartCard key={row.id} row={row} onOpen={open} />
              ))}
            </ul>
          </Panel>
          <ToCleanPanel rows={rows} onOpen={open} />
          <div class="stores-columns">
            <StartPanel />
            <OrderPanel />
          </div>
        </>
      )}
      {sheet}
    </main>
  );
};
