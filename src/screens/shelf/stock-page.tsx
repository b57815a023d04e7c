import { salesOf, shelfStock } from '../../domain/rollup/shelf-stock.ts';
import { EmptyState } from '../../ui/notice/empty-state.tsx';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { shelfWords as words } from '../../words/shelf-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { tableWords } from '../../words/table-words.ts';
import { goTo, hrefOf } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';
import { priceText } from '../parts/money.ts';
import { TableButton } from '../parts/table-button.tsx';
import { WoodName } from '../parts/wood-name.tsx';
import { KindFigures, PlaceFigures } from './kind-figures.tsx';
import { ShelfLastAct } from './shelf-last-act.tsx';
import { type ShelfCard, shelfCards, totals } from './shelf-view.ts';
import { UnpicturedPanel } from './unpictured-panel.tsx';
import { type OpenMove, useMoveSheet } from './use-move-sheet.tsx';

/** All finished pieces, variant by variant, and which variants are still to be photographed. */
export const StockPage = () => {
  const shop = useShop();
  const cards = shelfCards(shop);
  const { open, sheet } = useMoveSheet();
  return (
    <main class="shelf">
      <header class="shelf-head">
        <div>
          <h1>{words.title}</h1>
          <p>{words.lead}</p>
        </div>
        {cards.length > 0 && (
          <div class="shelf-ways">
            <PressButton
              icon="label"
              tone="go"
              label={words.toListing}
              onAct={() => goTo('shelf', 'listing')}
              testId="to-listing"
            />
            <TableButton table="shelf" label={tableWords.save} />
          </div>
        )}
      </header>
      <ShelfLastAct />
      {cards.length === 0 ? (
        <EmptyState
          icon="shelf"
          title={words.none}
          action={<PressButton label={words.toBench} onAct={() => goTo('bench')} />}
        >
          {words.noneHelp}
        </EmptyState>
      ) : (
        <>
          <AllPieces />
          <Panel title={words.variants} testId="shelf-variants">
            <ul class="shelf-cards">
              {cards.map((card) => (
                <Card key={card.variant} card={card} onMove={open} />
              ))}
            </ul>
          </Panel>
        </>
      )}
      <UnpicturedPanel />
      {sheet}
    </main>
  );
};

const AllPieces = () => {
  const shop = useShop();
  const rows = shelfStock(shop);
  const all = totals(rows);
  const { sold, priced, takings } = salesOf(shop, rows);
  return (
    <Panel
      title={words.allTitle}
      lead={<span data-testid="shelf-finished">{words.finishedOf(all.finished)}</span>}
      actions={<Means label={studyWords.means}>{words.allMeans}</Means>}
    >
      <PlaceFigures row={all} name="shelf-all">
        <div data-figure="brought">
          <dt>{words.brought}</dt>
          <dd class="figures" data-testid="shelf-takings">
            {priced === 0 && takings === 0 ? words.soldNone : priceText(takings)}
          </dd>
          {sold > 0 && <dd data-testid="shelf-priced">{words.pricedOf(priced, sold)}</dd>}
        </div>
      </PlaceFigures>
    </Panel>
  );
};

const Card = ({ card: { variant, fact, rows }, onMove }: { card: ShelfCard; onMove: OpenMove }) => (
  <li class="shelf-card">
    <header>
      <a class="shelf-name" href={hrefOf('shelf', variant)} data-testid={`shelf-open-${variant}`} dir="auto">
        {fact.name}
      </a>
      <WoodName species={fact.species} />
    </header>
    {rows.map((row) => (
      <KindFigures key={row.grade} row={row} />
    ))}
    <PressButton
      label={words.move}
      name={`${words.move}: ${fact.name}`}
      onAct={() => onMove(variant)}
      testId={`shelf-move-${variant}`}
    />
  </li>
);
