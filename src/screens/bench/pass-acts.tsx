import type { Command } from '../../domain/command/command.ts';
import type { ReasonId } from '../../domain/log/ids.ts';
import { BenchGrid } from '../../ui/bench/bench-grid.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { stageWords as words } from '../../words/stage-words.ts';
import { type BenchView, spotOf } from './bench-view.ts';
import { FlawButtons } from './flaw-buttons.tsx';
import { useKeyOf } from './use-bench-keys.ts';

export interface ActsProps {
  readonly view: BenchView;
  readonly act: (command: Command) => Promise<unknown>;
  readonly onFlaw: (reason: ReasonId) => void;
}

/** Pass, several at once where the stage is done in bulk, and the flaws of the stage in their fixed places. */
export const PassActs = ({ view, act, onFlaw }: ActsProps) => {
  const spot = spotOf(view, 'waiting');
  const pass = (pieces: number) => void act({ kind: 'pass', spot, pieces });
  const key = useKeyOf('pass', () => pass(1));
  const empty = !view.onRoute ? words.offRoute : spot.shown <= 0 ? words.nothingLeft : undefined;
  return (
    <BenchGrid>
      <PressButton
        size="bench"
        main
        tone="go"
        icon="pass"
        label={words.pass}
        disabledReason={empty}
        keyHint={key}
        onAct={() => pass(1)}
        testId="pass"
      />
      {view.stage.bulk && (
        <>
          <PressButton
            size="bench"
            label={words.passFive}
            disabledReason={empty ?? (spot.shown < 5 ? words.nothingLeft : undefined)}
            onAct={() => pass(5)}
            testId="pass-5"
          />
          <PressButton
            size="bench"
            label={words.passRest(Math.max(0, spot.shown))}
            detail={words.passRestDetail}
            disabledReason={empty}
            closing
            onAct={() => pass(spot.shown)}
            testId="pass-rest"
          />
        </>
      )}
      <FlawButtons view={view} disabledReason={empty} onFlaw={onFlaw} />
    </BenchGrid>
  );
};
