import './yield.css';
import { EmptyState } from '../../ui/notice/empty-state.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { InTurn } from '../../ui/turn/in-turn.tsx';
import { stillDrawing } from '../../ui/turn/turns.ts';
import { tableWords } from '../../words/table-words.ts';
import { yieldWords as words } from '../../words/yield-words.ts';
import { goTo } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';
import { TableButton } from '../parts/table-button.tsx';
import { FlawsPanel } from './flaws-panel.tsx';
import { FlowPanel } from './flow-panel.tsx';
import { StudyRack } from './study-rack.tsx';
import { WoodsPanel } from './woods-panel.tsx';

/** Where everything is, what comes out of each wood, and what went wrong; ways to what the whole log tells. */
export const YieldPlace = () => {
  const shop = useShop();
  return (
    <main class="yield" aria-busy={stillDrawing}>
      <header class="yield-head">
        <div>
          <h1>{words.title}</h1>
          <p>{words.lead}</p>
        </div>
        {shop.trays.size > 0 && <TableButton table="yield" tone="quiet" label={tableWords.save} />}
      </header>
      {shop.trays.size === 0 ? (
        <EmptyState
          icon="yield"
          title={words.empty}
          action={<PressButton tone="go" label={words.toTrays} onAct={() => goTo('trays', 'new')} />}
        >
          {words.emptyHelp}
        </EmptyState>
      ) : (
        <>
          <StudyRack />
          <FlowPanel />
          <InTurn>
            <WoodsPanel />
          </InTurn>
          <InTurn>
            <FlawsPanel />
          </InTurn>
        </>
      )}
    </main>
  );
};
