import { factsOf } from '../../domain/shop/registers.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { EmptyState } from '../../ui/notice/empty-state.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { benchWords as words } from '../../words/bench-words.ts';
import { goTo } from '../parts/address.ts';
import { useApp, useSession, useShop } from '../parts/app-context.ts';
import { useNow } from '../parts/use-now.ts';
import { type StageTile, stageTiles } from './bench-view.ts';
import { WipeButton } from './wipe.tsx';

/** The first of the bench: the route as a rack of stages, each with what waits at it. */
export const StageChoice = () => {
  const shop = useShop();
  const tiles = stageTiles(shop, useNow());
  return (
    <main class="stages">
      <header class="stages-head">
        <div>
          <h1>{words.chooseStage}</h1>
          <p>{words.chooseStageLead}</p>
        </div>
        <WipeButton />
      </header>
      <WhoTaps />
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

/** Which of the shop's people holds the tool; asked only where there are several. */
const WhoTaps = () => {
  const { preferences } = useApp();
  const session = useSession();
  const people = factsOf(useShop().registers, 'person').filter(({ fact }) => !fact.retired);
  if (people.length < 2) return null;
  return (
    <ChoiceRow
      label={words.whoTaps}
      size="bench-small"
      choices={[
        ...people.map(({ id, fact }) => ({ value: id, label: fact.name })),
        { value: '', label: words.nobody },
      ]}
      value={session.person.value ?? ''}
      onChoose={(value) => {
        const id = people.find((person) => person.id === value)?.id ?? null;
        session.person.value = id;
        preferences.person.value = id;
      }}
    />
  );
};
