import { useState } from 'preact/hooks';
import { inForce, type RecentAct } from '../../app/acts.ts';
import type { Voids } from '../../domain/shop/voids.ts';
import { Icon } from '../../ui/icon/icon.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { eventWords } from '../../words/event-words.ts';
import { problemWords } from '../../words/problem-words.ts';
import { storesWords as words } from '../../words/stores-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';

/** The last thing done in the stores on this tablet that still counts, and the tap that takes it back. */
export const LastAct = () => {
  const session = useSession();
  const { registers, voids } = useShop();
  const [refusal, setRefusal] = useState('');
  const events = session.acts.value.map((act) => ofStores(act, voids)).findLast((found) => found.length > 0);
  if (!events) return null;
  const takeBack = async () => {
    const result = await session.act({ kind: 'undo', events });
    setRefusal(result.kind === 'refused' ? problemWords(result.problem, registers) : '');
  };
  return (
    <div class="stores-last">
      <Icon name="check" size={32} />
      <p role="status" data-testid="stores-last">
        {refusal || events.map((event) => eventWords(event, registers)).join('; ')}
      </p>
      <PressButton
        icon="undo"
        label={words.takeBack}
        onAct={() => void takeBack()}
        testId="stores-take-back"
      />
    </div>
  );
};

/** What of an act is about no tray, and still in force. */
function ofStores(act: RecentAct, voids: Voids) {
  return inForce(act, voids).filter((event) => event.kind !== 'voided' && !('of' in event));
}
