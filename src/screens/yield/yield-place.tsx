import './yield.css';
import { EmptyState } from '../../ui/notice/empty-state.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { yieldWords as words } from '../../words/yield-words.ts';
import { goTo } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';
import { FlawsPanel } from './flaws-panel.tsx';
import { FlowPanel } from './flow-panel.tsx';
import { WoodsPanel } from './woods-panel.tsx';

/** Where everything is, what comes out of each wood, and what went wrong. */
export const YieldPlace = () => {
  const shop = useShop();
  return (
    <main class="yield">
      <header>
        <h1>{words.title}</h1>
        <p>{words.lead}</p>
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
          <FlowPanel />
          <WoodsPanel />
          <FlawsPanel />
        </>
      )}
    </main>
  );
};
