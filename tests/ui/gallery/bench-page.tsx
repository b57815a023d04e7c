import { useState } from 'preact/hooks';
import { BenchFrame } from '../../../src/ui/bench/bench-frame.tsx';
import { BenchGrid } from '../../../src/ui/bench/bench-grid.tsx';
import { BigCode } from '../../../src/ui/bench/big-code.tsx';
import { BigCount } from '../../../src/ui/bench/big-count.tsx';
import { LastAct } from '../../../src/ui/bench/last-act.tsx';
import { NotSavedBar } from '../../../src/ui/bench/not-saved-bar.tsx';
import { SavedMark, type SavedState } from '../../../src/ui/bench/saved-mark.tsx';
import { PressButton } from '../../../src/ui/press/press-button.tsx';

const words: Record<SavedState, string> = {
  idle: 'Ready',
  taken: 'Taken',
  saved: 'Saved',
  'not-saved': 'NOT SAVED',
  undone: 'Undone',
};
const flaws = ['Tear-out', 'Catch', 'Blown', 'Scratch'];

const Bench = ({ state, first }: { state: SavedState; first: number }) => {
  const [count, setCount] = useState(first);
  const notSaved = state === 'not-saved';
  return (
    <BenchFrame
      label="Turn to shape"
      head={
        <>
          <BigCode code="A17K" name="Tray A 1 7 K" />
          <BigCount count={count} label="passed" of="of 24" />
        </>
      }
      acts={
        <BenchGrid>
          <PressButton
            main
            size="bench"
            tone="go"
            icon="pass"
            label="Pass"
            keyHint="1"
            testId="pass"
            onAct={() => setCount((n) => n + 1)}
          />
          {flaws.map((flaw, index) => (
            <PressButton
              key={flaw}
              size="bench"
              tone="flaw"
              icon={index % 2 ? undefined : 'flaw'}
              label={flaw}
              keyHint={String(index + 2)}
              testId={`flaw-${index}`}
              onAct={() => undefined}
            />
          ))}
        </BenchGrid>
      }
      says={
        <>
          <LastAct label="Last" text="1 passed, A17K, now 12" ago="just now" />
          <SavedMark state={state} words={words} />
        </>
      }
      foot={
        <>
          <PressButton
            size="bench"
            icon="undo"
            label="Undo"
            keyHint="⌫"
            testId="undo"
            onAct={() => setCount((n) => n - 1)}
          />
          <PressButton size="bench" closing label="Stage done" testId="done" onAct={() => undefined} />
        </>
      }
      bar={
        notSaved && (
          <NotSavedBar
            word="NOT SAVED"
            detail="1 tap waits: 1 passed, A17K. It is still here."
            retryLabel="Try again"
            onRetry={() => undefined}
            exportLabel="Export"
            onExport={() => undefined}
          />
        )
      }
    />
  );
};

/** A bench screen in use. */
export const BenchPage = () => <Bench state="saved" first={12} />;

/** The same when a tap could not be saved. */
export const NotSavedPage = () => <Bench state="not-saved" first={12} />;
