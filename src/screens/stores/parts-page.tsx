import { factsOf } from '../../domain/shop/registers.ts';
import { EmptyState } from '../../ui/notice/empty-state.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { storesWords as words } from '../../words/stores-words.ts';
import { goTo } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';

/** What lies in the stores, part by part. */
export const PartsPage = () => {
  const { registers } = useShop();
  const parts = factsOf(registers, 'part').filter(({ fact }) => !fact.retired);
  return (
    <main class="stores">
      <header class="stores-head">
        <div>
          <h1>{words.title}</h1>
          <p>{words.lead}</p>
        </div>
      </header>
      {parts.length === 0 ? (
        <EmptyState
          icon="stores"
          title={words.noParts}
          action={<PressButton label={words.toSetUp} onAct={() => goTo('set-up', 'parts')} />}
        >
          {words.noPartsHelp}
        </EmptyState>
      ) : (
        <Panel title={words.parts}>
          <ul>
            {parts.map(({ id, fact }) => (
              <li key={id}>{fact.name}</li>
            ))}
          </ul>
        </Panel>
      )}
    </main>
  );
};
