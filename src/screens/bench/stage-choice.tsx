import { factsOf } from '../../domain/shop/registers.ts';
import { EmptyState } from '../../ui/notice/empty-state.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { benchWords as words } from '../../words/bench-words.ts';
import { goTo } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';
import { onDemand } from '../parts/on-demand.tsx';
import { useNow } from '../parts/use-now.ts';
import { type StageTile, stageTiles } from './stage-tiles.ts';
import { WipeButton } from './wipe.tsx';

const { Screen: WhoTaps } = onDemand(async () => (await import('./who-taps.tsx')).WhoTaps, null);

/** The first of the bench: the route as a rack of stages, each with what waits at it. */
export const StageChoice = () => {
  const shop = useShop();
  const people = factsOf(shop.registers, 'person').filter(({ fact }) => !fact.retired);
  const needsAsking = people.length > 1;
  const tiles = stageTiles(shop, useNow());
  return (
    <main class="stages">
      <header class="stages-head">
        <div>
          <h1>{words.chooseStage}</h1>
          <p>{words.chooseStageLead}</p>
        </div>
        <div class="tray-choice-ways">
          {tiles.some(({ fact }) => fact.kind === 'hold') && (
            <PressButton
              size="bench-small"
              icon="hold"
              label={words.curingBoard}
              onAct={() => goTo('bench', 'curing')}
              testId="to-curing"
            />
          )}
          <WipeButton />
        </div>
      </header>
      {needsAsking && <WhoTaps />}
      {tiles.length === 0 ? (
        <EmptyState
          title={words.noStages}
          action={<PressButton tone="go" label={words.toSetUp} onAct={() => goTo('set-up', 'route')} />}
        >
          {words.noStagesDetail}
        </EmptyState>
      ) : (
        <Stages tiles={tiles} anyTray={shop.trays.size > 0} />
      )}
    </main>
  );
};

const Stages = ({ tiles, anyTray }: { tiles: readonly StageTile[]; anyTray: boolean }) => (
  <>
    {!anyTray && (
      <EmptyState
        title={words.noTrays}
        action={<PressButton tone="go" label={words.toTrays} onAct={() => goTo('trays', 'new')} />}
      >
        {words.noTraysDetail}
      </EmptyState>
    )}
    <ol class="stages-rack">
      {tiles.map((tile, index) => (
        <li key={tile.stage}>
          <PressButton
            size="bench-small"
            icon={tile.fact.kind === 'hold' ? 'hold' : undefined}
            label={`${index + 1} ${tile.fact.name}`}
            detail={tileWords(tile)}
            onAct={() => goTo('bench', tile.stage)}
            testId={`stage-${tile.stage}`}
          />
        </li>
      ))}
    </ol>
  </>
);

function tileWords({ fact, waiting, held, ready }: StageTile): string {
  const said = [
    waiting !== 0 && words.waiting(waiting),
    fact.kind === 'hold' && held - ready !== 0 && words.curing(held - ready),
    ready > 0 && words.ready(ready),
  ].filter((each) => each !== false);
  return said.length > 0 ? said.join(' · ') : words.nothing;
}
