import './last-act-of.css';
import { useState } from 'preact/hooks';
import { inForce, type RecentAct } from '../../../app/acts.ts';
import type { EventKind, ShopEvent } from '../../../domain/log/event.ts';
import type { Voids } from '../../../domain/shop/voids.ts';
import { Icon } from '../../../ui/icon/icon.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { eventWords } from '../../../words/event-words.ts';
import { historyWords as words } from '../../../words/history-words.ts';
import { problemWords } from '../../../words/problem-words.ts';
import { useSession, useShop } from '../app-context.ts';

export interface LastActOfProps {
  /** What is done in this place. */
  readonly kinds: ReadonlySet<EventKind>;
  readonly testId: string;
  /** The act in one sentence, where that is shorter than each of its entries in words. */
  readonly inShort?: ((events: readonly ShopEvent[]) => string | undefined) | undefined;
}

/** The last thing done in a place on this tablet that still counts, and the tap that takes it back. */
export const LastActOf = ({ kinds, testId, inShort }: LastActOfProps) => {
  const session = useSession();
  const { registers, voids } = useShop();
  const [refusal, setRefusal] = useState('');
  const events = session.acts.value
    .map((act) => ofKinds(act, { kinds, voids }))
    .findLast((found) => found.length > 0);
  if (!events) return null;
  const takeBack = async () => {
    const result = await session.act({ kind: 'undo', events });
    setRefusal(result.kind === 'refused' ? problemWords(result.problem, registers) : '');
  };
  return (
    <div class="last-act-of">
      <Icon name="check" size={32} />
      <p role="status" data-testid={`${testId}-last`}>
        {refusal || inShort?.(events) || events.map((event) => eventWords(event, registers)).join('; ')}
      </p>
      <PressButton
        icon="undo"
        label={words.takeBack}
        onAct={() => void takeBack()}
        testId={`${testId}-take-back`}
      />
    </div>
  );
};

/** What of an act belongs to the place, and is still in force. */
function ofKinds(
  act: RecentAct,
  { kinds, voids }: { readonly kinds: LastActOfProps['kinds']; readonly voids: Voids },
) {
  return inForce(act, voids).filter(({ kind }) => kinds.has(kind));
}
