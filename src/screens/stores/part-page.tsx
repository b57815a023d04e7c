import type { PartId } from '../../domain/log/ids.ts';
import { partCost } from '../../domain/rollup/part-cost.ts';
import { countOf } from '../../domain/shop/counter.ts';
import { EmptyState } from '../../ui/notice/empty-state.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { samplingWords } from '../../words/sampling-words.ts';
import { setUpWords } from '../../words/set-up-words.ts';
import { storesWords as words } from '../../words/stores-words.ts';
import { goTo } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';
import { EventHistory } from '../parts/event-history.tsx';
import { pieceCostText, priceText } from '../parts/money.ts';
import { PartFigures, StateSign } from './part-figures.tsx';
import { type PartRow, partRows } from './stores-view.ts';
import { ToCleanPanel } from './to-clean-panel.tsx';
import { usePartSheet } from './use-part-sheet.tsx';

/** One part: its numbers, what it costs, and all that was received, counted and cleaned of it. */
export const PartPage = ({ id }: { id: PartId }) => {
  const shop = useShop();
  const { open, sheet } = usePartSheet();
  const row = partRows(shop).find((each) => each.id === id);
  const back = <PressButton icon="back" label={words.toStores} onAct={() => goTo('stores')} />;
  if (!row) {
    return (
      <main class="stores">
        <EmptyState icon="stores" title={words.goneTitle} action={back}>
          {words.goneHelp}
        </EmptyState>
      </main>
    );
  }
  const { fact } = row;
  return (
    <main class="stores">
      <header class="stores-head">
        <div>
          <h1>{fact.name}</h1>
          <p>{fact.retired ? words.putAway : setUpWords.sorts[fact.sort]}</p>
        </div>
        {back}
      </header>
      <Panel
        title={words.howMany}
        actions={
          <>
            <PressButton
              icon="import"
              tone="go"
              label={words.receive}
              onAct={() => open('receive', id)}
              testId="part-receive"
            />
            <PressButton
              icon="recount"
              label={words.countIt}
              onAct={() => open('count', id)}
              testId="part-count"
            />
            <PressButton
              icon="check"
              label={samplingWords.checkIt}
              onAct={() => open('sample', id)}
              testId="part-sample"
            />
            <PressButton
              icon="pencil"
              tone="quiet"
              label={words.editPart}
              onAct={() => goTo('set-up', 'parts')}
            />
          </>
        }
      >
        <div class="stores-one" data-state={row.state}>
          <PartFigures row={row} />
          <StateSign row={row} />
        </div>
        <MoneyAndSums row={row} />
      </Panel>
      <ToCleanPanel rows={[row]} onOpen={open} />
      <EventHistory of={`part/${id}`} nothing={words.noHistory} />
      {sheet}
    </main>
  );
};

const MoneyAndSums = ({ row: { id, onHand, fact } }: { row: PartRow }) => {
  const shop = useShop();
  const cost = partCost(shop, id);
  const worth = cost === null ? null : Math.round(cost * Math.max(0, onHand));
  const mark = fact.lowMark ?? null;
  const lines = [
    ['received', words.receivedInAll, words.count(countOf(shop.stores, `received|${id}`))],
    ['cost', words.costEach, cost === null ? words.unknown : pieceCostText(Math.round(cost * 100))],
    ['worth', words.worth, worth === null ? words.unknown : priceText(worth)],
    ['mark', words.lowMark, mark === null ? words.unknown : words.count(mark)],
    ['lost', words.lostInCleaning, words.count(countOf(shop.stores, `lost|${id}`))],
  ] as const;
  return (
    <dl class="stores-sums">
      {lines.map(([name, label, value]) => (
        <div key={name}>
          <dt>{label}</dt>
          <dd class="figures" data-testid={`part-${name}`}>
            {value}
          </dd>
        </div>
      ))}
    </dl>
  );
};
