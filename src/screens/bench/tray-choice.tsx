import type { StageId } from '../../domain/log/ids.ts';
import { holds } from '../../domain/rollup/holds.ts';
import { type AtStage, traysAtStage } from '../../domain/rollup/waiting.ts';
import { factOf } from '../../domain/shop/registers.ts';
import { does } from '../../domain/wood/tray-cautions.ts';
import { EmptyState } from '../../ui/notice/empty-state.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { benchWords } from '../../words/bench-words.ts';
import { nameOf } from '../../words/names.ts';
import { speedWords } from '../../words/speed-words.ts';
import { duration, readyIn } from '../../words/time-words.ts';
import { trayChoiceWords as words } from '../../words/tray-choice-words.ts';
import { goTo } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';
import { useNow } from '../parts/use-now.ts';
import { WoodName } from '../parts/wood-name.tsx';

/** The trays at a stage, the longest waiting first, as buttons that lead to the stage screen. */
export const TrayChoice = ({ stage }: { stage: StageId }) => {
  const shop = useShop();
  const fact = factOf(shop.registers, { register: 'stage', id: stage });
  const trays = traysAtStage(shop, stage);
  const name = fact?.name ?? stage;
  return (
    <main class="stages bench-margin">
      <header class="stages-head">
        <div>
          <h1>{words.traysWaiting(name)}</h1>
          {trays.length > 1 && <p>{words.oldestFirst}</p>}
        </div>
        <div class="tray-choice-ways tray-choice-head">
          <PressButton
            size="bench-small"
            icon="scan"
            label={words.scan}
            onAct={() => goTo('trays', 'scan', stage)}
            testId="scan-at-bench"
          />
          {fact?.kind === 'hold' && (
            <PressButton
              size="bench-small"
              icon="hold"
              label={benchWords.curingBoard}
              onAct={() => goTo('bench', 'curing')}
              testId="to-curing"
            />
          )}
          {does(fact, 'turns') && (
            <PressButton
              size="bench-small"
              icon="info"
              label={speedWords.open}
              onAct={() => goTo('bench', 'speed', stage)}
              testId="to-speed"
            />
          )}
          <PressButton
            size="bench-small"
            icon="back"
            label={words.otherStages}
            onAct={() => goTo('bench')}
            testId="to-stages"
          />
        </div>
      </header>
      {fact?.caution && (
        <Notice tone="warn" title={words.caution}>
          {fact.caution}
        </Notice>
      )}
      {trays.length === 0 ? (
        <EmptyState title={words.nothingWaits}>{words.nothingWaitsDetail}</EmptyState>
      ) : (
        <ul class="tray-rack">
          {trays.map((at) => (
            <li key={at.tray.tray}>
              <TrayTile at={at} />
            </li>
          ))}
        </ul>
      )}
    </main>
  );
};

const TrayTile = ({ at }: { at: AtStage }) => {
  const shop = useShop();
  const now = useNow();
  const { tray, stage, since } = at;
  const ready = holds(shop).find((hold) => hold.tray.tray === tray.tray && hold.stage === stage)?.ready;
  return (
    <PressButton
      size="bench"
      label={tray.code}
      detail={
        <span class="tray-tile">
          <span>{nameOf(shop.registers, { register: 'variant', id: tray.variant })}</span>
          <WoodName species={tray.species} />
          <span>{countWords(at)}</span>
          {ready !== undefined && <span>{readyIn(ready, now)}</span>}
          {since !== null && <span>{words.since(duration(now - since))}</span>}
        </span>
      }
      onAct={() => goTo('bench', stage, tray.tray)}
      testId={`bench-tray-${tray.code}`}
    />
  );
};

function countWords({ waiting, held }: AtStage): string {
  const wait = waiting.first + waiting.second;
  const cure = held.first + held.second;
  const below = [waiting.first, waiting.second, held.first, held.second].find((n) => n < 0);
  if (below !== undefined) return words.toCheck(below);
  return [wait > 0 && benchWords.waiting(wait), cure > 0 && benchWords.curing(cure)]
    .filter(Boolean)
    .join(' · ');
}
