import { BenchGrid } from '../../ui/bench/bench-grid.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { stageWords as words } from '../../words/stage-words.ts';
import { readyIn } from '../../words/time-words.ts';
import type { BenchView } from './bench-view.ts';
import { useAnswerKeys } from './use-bench-keys.ts';

export interface EarlyQuestionProps {
  readonly view: BenchView;
  readonly now: number;
  readonly onKeep: () => void;
  readonly onTakeOut: () => void;
}

/** Asks once before pieces leave the clamps that still need their least time; the safe answer is the large one. */
export const EarlyQuestion = ({ view, now, onKeep, onTakeOut }: EarlyQuestionProps) => {
  const [keepKey, outKey] = useAnswerKeys([onKeep, onTakeOut]);
  return (
    <section class="flaw-panel" aria-label={words.takeOutEarlyTitle}>
      <h2 class="flaw-question">
        {words.takeOutEarlyTitle}: {cureWords(view, now)}
      </h2>
      <BenchGrid>
        <PressButton
          size="bench"
          main
          tone="go"
          icon="hold"
          label={words.keepCuring}
          keyHint={keepKey}
          onAct={onKeep}
          testId="keep-curing"
        />
        <PressButton
          size="bench"
          tone="flaw"
          closing
          label={words.takeOutEarly}
          keyHint={outKey}
          onAct={onTakeOut}
          testId="take-out-early"
        />
      </BenchGrid>
    </section>
  );
};

/** When the soonest is ready, and that it may come out already. */
export function cureWords(
  { ready, readyNow, mayComeOut }: Pick<BenchView, 'ready' | 'readyNow' | 'mayComeOut'>,
  now: number,
): string | undefined {
  if (ready === null) return undefined;
  const when = readyIn(ready, now);
  return readyNow === 0 && mayComeOut > 0 ? `${words.mayComeOut} · ${when}` : when;
}
