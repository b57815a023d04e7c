import { useState } from 'preact/hooks';
import { BenchGrid } from '../../ui/bench/bench-grid.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { stageWords as words } from '../../words/stage-words.ts';
import { spotOf } from './bench-view.ts';
import { cureWords, EarlyQuestion } from './early-question.tsx';
import { FlawButtons } from './flaw-buttons.tsx';
import type { ActsProps } from './pass-acts.tsx';
import { useKeyOf } from './use-bench-keys.ts';

/** Into the clamps or onto the rack, and out again; a cure that is not over is asked about once. */
export const HoldActs = ({ view, act, onFlaw, now }: ActsProps & { now: number }) => {
  const [early, setEarly] = useState<number | null>(null);
  const waiting = spotOf(view, 'waiting');
  const held = spotOf(view, 'held');
  const load = (pieces: number) => void act({ kind: 'load', spot: waiting, pieces });
  const unload = (pieces: number) => {
    setEarly(null);
    void act({ kind: 'pass', spot: held, pieces });
  };
  const takeOut = (pieces: number) => (pieces > view.mayComeOut ? setEarly(pieces) : unload(pieces));
  // What is ready goes first; else what may come out by now; else all, which is asked about.
  const ready = Math.min(view.readyNow || view.mayComeOut || held.shown, held.shown);
  const key = useKeyOf(
    'pass',
    () => (held.shown > 0 ? takeOut(ready) : waiting.shown > 0 && load(waiting.shown)),
    { closing: true },
  );
  if (early !== null) {
    return (
      <EarlyQuestion view={view} now={now} onKeep={() => setEarly(null)} onTakeOut={() => unload(early)} />
    );
  }
  const noneWaits = waiting.shown <= 0 ? words.nothingLeft : undefined;
  const noneHeld = held.shown <= 0 ? words.nothingLeft : undefined;
  return (
    <BenchGrid>
      <PressButton
        size="bench"
        main
        tone={view.readyNow > 0 ? 'go' : 'plain'}
        icon="pass"
        label={words.takeOutAll(Math.max(0, ready))}
        detail={cureWords(view, now)}
        disabledReason={noneHeld}
        keyHint={noneHeld ? undefined : key}
        closing
        onAct={() => takeOut(ready)}
        testId="take-out"
      />
      <PressButton
        size="bench"
        tone={noneHeld ? 'go' : 'plain'}
        label={words.loadAll(Math.max(0, waiting.shown))}
        disabledReason={noneWaits}
        keyHint={noneHeld && key}
        closing
        onAct={() => load(waiting.shown)}
        testId="load-all"
      />
      <PressButton
        size="bench"
        label={words.loadAll(1)}
        disabledReason={noneWaits}
        onAct={() => load(1)}
        testId="load-1"
      />
      <PressButton
        size="bench"
        label={words.takeOutAll(1)}
        disabledReason={noneHeld}
        onAct={() => takeOut(1)}
        testId="take-out-1"
      />
      <FlawButtons view={view} disabledReason={noneHeld && noneWaits} onFlaw={onFlaw} />
    </BenchGrid>
  );
};
