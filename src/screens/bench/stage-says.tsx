import type { Saving } from '../../app/saver.ts';
import { LastAct } from '../../ui/bench/last-act.tsx';
import { SavedMark, type SavedState } from '../../ui/bench/saved-mark.tsx';
import { eventWords } from '../../words/event-words.ts';
import { savingWords } from '../../words/saving-words.ts';
import { stageWords as words } from '../../words/stage-words.ts';
import { ago } from '../../words/time-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { useNow } from '../parts/use-now.ts';

/** What was done last, in words at a fixed place, and whether it is on disk; a refusal stands in its stead. */
export const StageSays = ({ refusal }: { refusal: string }) => {
  const session = useSession();
  const { registers } = useShop();
  const now = Math.max(useNow(), session.now());
  const said = session.acts.value.at(-1)?.events ?? [];
  const last = said.at(-1);
  const undone = last?.kind === 'voided';
  return (
    <>
      {refusal ? (
        <p class="stage-refusal" role="alert" data-testid="refusal">
          {refusal}
        </p>
      ) : (
        <LastAct
          label={words.lastAct}
          text={last ? eventWords(last, registers) : words.noActYet}
          ago={last && ago(last.stamp.wall, now)}
          testId="last-act"
        />
      )}
      <SavedMark state={markOf(session.saving.value, undone)} words={savingWords} testId="saved-mark" />
    </>
  );
};

function markOf(saving: Saving, undone: boolean): SavedState {
  return saving.kind === 'saved' && undone ? 'undone' : saving.kind;
}
