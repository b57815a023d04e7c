import { useState } from 'preact/hooks';
import type { CureRound } from '../../../domain/rollup/holds.ts';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { shortTime, curingWords as words } from '../../../words/curing-words.ts';
import { clockTime } from '../../../words/date-words.ts';
import { nameOf } from '../../../words/names.ts';
import { pieces } from '../../../words/pieces-words.ts';
import { stageWords } from '../../../words/stage-words.ts';
import { useSession, useShop } from '../../parts/app-context.ts';
import { WoodName } from '../../parts/wood-name.tsx';
import { type CureRow, stateOf } from './curing-view.ts';

export interface CuringRowProps {
  readonly row: CureRow;
  readonly now: number;
  readonly onTakeOut: (round: CureRound) => void;
}

/** One round, to be read across the shop; taken out by one tap, and before its least time by a second one. */
export const CuringRow = ({ row: { round, state, isBehind }, now, onTakeOut }: CuringRowProps) => {
  const { registers } = useShop();
  const session = useSession();
  const zone = session.zone();
  const [asks, setAsks] = useState(false);
  const { tray, stage, ready, least } = round;
  const asked = asks && state === 'cures';
  const when = words.readyAt(clockTime(ready, { zone, now }));
  return (
    <li class="curing-row" data-state={state} data-testid={`curing-${tray.code}`}>
      <div class="curing-time">
        <span class="curing-big" data-testid={`curing-left-${tray.code}`}>
          {state === 'ready' ? words.ready : shortTime(ready - now)}
        </span>
        <span>
          {state === 'ready'
            ? words.readySince(now - ready)
            : state === 'may-come-out'
              ? `${words.mayComeOut} · ${when}`
              : when}
        </span>
      </div>
      <div class="curing-what">
        <span class="curing-big curing-code">{tray.code}</span>
        <span class="curing-is">
          <span>{pieces(round.pieces)}</span>
          <span dir="auto">{nameOf(registers, { register: 'stage', id: stage })}</span>
          <WoodName species={tray.species} />
        </span>
      </div>
      {asked ? (
        <div class="curing-asks">
          <p role="alert" data-testid={`curing-early-${tray.code}`}>
            {words.isEarly(least - now)}
          </p>
          <div class="curing-acts">
            <PressButton
              size="bench-small"
              tone="go"
              icon="hold"
              label={stageWords.keepCuring}
              onAct={() => setAsks(false)}
              testId={`curing-keep-${tray.code}`}
            />
            <PressButton
              size="bench-small"
              tone="flaw"
              closing
              label={stageWords.takeOutEarly}
              onAct={() => onTakeOut(round)}
              testId={`curing-out-early-${tray.code}`}
            />
          </div>
        </div>
      ) : (
        <PressButton
          size="bench"
          tone={state === 'ready' ? 'go' : 'plain'}
          icon={state === 'ready' ? 'pass' : undefined}
          label={words.takeOut(round.pieces)}
          name={words.takeOutOf(round.pieces, tray.code)}
          disabledReason={isBehind ? words.behind : undefined}
          closing
          onAct={() => (stateOf(round, session.now()) === 'cures' ? setAsks(true) : onTakeOut(round))}
          testId={`curing-out-${tray.code}`}
        />
      )}
    </li>
  );
};
