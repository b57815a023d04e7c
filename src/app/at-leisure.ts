/** What the shop does beside the window once the first screen has had its time; its code comes then. */
import { computed, type ReadonlySignal } from '@preact/signals';
import { shellWords } from '../words/shell-words.ts';
import { tellOfHands } from './hands.ts';
import type { Opening } from './opening.ts';
import { openReplica, type ReplicaDesk } from './replica.ts';
import { systemTimer as timer } from './saver.ts';
import { sealNowAndThen } from './sealing.ts';
import { nameStation } from './station-letter.ts';

export interface Leisure {
  /** The other tablets of the shop. */
  readonly replica: Promise<ReplicaDesk>;
}

/** What came in is read after so long without more, and later copied to the second copy (ms). */
const [untilNamed, untilCopied] = [1000, 10_000];

/** `openAnew` opens the shop again, under the station that its store has now. */
export function atLeisure(opening: ReadonlySignal<Opening>, openAnew: () => Promise<void>): Leisure {
  const storeIn = (now: Opening) => (now.kind === 'open' ? now.store : null);
  tellOfHands();
  sealNowAndThen({ timer, store: () => storeIn(opening.peek()) });

  let cancelNaming = () => {};
  let cancelCopying = () => {};

  const ownShop = () => {
    const now = opening.peek();
    return now.kind === 'open' && now.which === 'own' ? now : undefined;
  };

  /** A station gets its letter once it has a shop: a new tablet has none before it comes in. */
  async function nameOwnStation(): Promise<void> {
    const shop = ownShop();
    await shop?.session.refresh();
    if (shop)
      await nameStation(shop.session, {
        name: shellWords.stationName,
        before: shop.twoCopies?.stationBefore() ?? null,
      });
  }

  function takeNote({ renewed }: { renewed: boolean }): void {
    cancelNaming();
    cancelCopying();
    if (renewed) {
      void openAnew();
      return;
    }
    cancelNaming = timer.after(untilNamed, () => void nameOwnStation().catch(() => undefined));
    cancelCopying = timer.after(untilCopied, () => void ownShop()?.twoCopies?.compare());
  }

  const replica = openReplica({
    // The demo shop meets nobody.
    store: computed(() => {
      const now = opening.value;
      return now.kind === 'open' && now.which === 'own' ? now.store : null;
    }),
    onMerged: takeNote,
    timer,
    page: location.href,
  });
  return { replica };
}
