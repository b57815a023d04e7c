/** What the shop does beside the window once the first screen has had its time; its code comes then. */
import { computed, type ReadonlySignal } from '@preact/signals';
import type { Opening } from './opening.ts';
import { openReplica, type ReplicaDesk } from './replica.ts';
import { systemTimer as timer } from './saver.ts';
import { sealNowAndThen } from './sealing.ts';

export interface Leisure {
  /** The other tablets of the shop. */
  readonly replica: Promise<ReplicaDesk>;
}

/** What came in is copied to the second copy after so long without more (ms). */
const untilCopied = 10_000;

/** `openAnew` opens the shop again, under the station that its store has now. */
export function atLeisure(opening: ReadonlySignal<Opening>, openAnew: () => Promise<void>): Leisure {
  const storeIn = (now: Opening) => (now.kind === 'open' ? now.store : null);
  sealNowAndThen({ timer, store: () => storeIn(opening.peek()) });

  let cancelCopying = () => {};
  let named: string | undefined;

  /** A shop that came in gives this station a letter, which an open shop gets when it is opened. */
  async function nameStation(): Promise<void> {
    const now = opening.peek();
    if (now.kind !== 'open' || now.which !== 'own' || now.session.station === named) return;
    const { registers } = now.session.view.peek().shop;
    if (registers.size === 0 || registers.has(`station/${now.session.station}`)) return;
    named = now.session.station;
    await openAnew();
  }

  function takeNote({ renewed }: { renewed: boolean }): void {
    cancelCopying();
    if (renewed) {
      void openAnew();
      return;
    }
    cancelCopying = timer.after(untilCopied, () => {
      const now = opening.peek();
      if (now.kind !== 'open' || now.which !== 'own') return;
      void now.twoCopies?.compare();
      void now.session.refresh().then(nameStation, () => undefined);
    });
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
