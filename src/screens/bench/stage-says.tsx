import type { Saving } from '../../app/saver.ts';
import { LastAct } from '../../ui/bench/last-act.tsx';
import { SavedMark, type SavedState } from '../../ui/bench/saved-mark.tsx';
import { Icon } from '../../ui/icon/icon.tsx';
import { eventWords } from '../../words/event-words.ts';
import { savingWords } from '../../words/saving-words.ts';
import { stageWords as words } from '../../words/stage-words.ts';
import { ago } from '../../words/time-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { useNow } from '../parts/use-now.ts';

export interface StageSaysProps {
  readonly refusal: string;
  /** What to beware of before the first tap; empty when there is nothing. */
  readonly caution: string;
}

/** What was done last, in words at a fixed place, and whether it is on disk; a refusal or a caution stands in its stead. */
export const StageSays = ({ refusal, caution }: StageSaysProps) => {
  const session = useSession();
  const { registers } = useShop();
  const now = Math.max(useNow(), session.now());
  const last = session.acts.value.flatMap(({ events }) => events).findLast(({ kind }) => kind !== 'set-up');
  const undone = last?.kind === 'voided';
  return (
    <>
      {refusal ? (
        <p class="stage-refusal" role="alert" data-testid="refusal">
          {refusal}
        </p>
      ) : caution ? (
        <p class="stage-caution" role="status" data-testid="caution-line">
          <Icon name="warn" size={32} />
          <span class="stage-caution-words">{caution}</span>
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
