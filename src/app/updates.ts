import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import { takeUpdateMark } from './update-mark.ts';
import type { Offer, UpdateNeeds } from './update-offer.ts';

/** A new version of the app: offered where nobody taps, applied only when asked or before the first screen. */
export interface Updates {
  readonly offer: ReadonlySignal<Offer>;
  /** Whether there is anything to offer: what the quiet dots show. */
  readonly waiting: ReadonlySignal<boolean>;
  /** Whether everything is on this tablet, so that the app opens without a network. */
  readonly offlineReady: ReadonlySignal<boolean>;
  /** This page is the first one after an update, and nobody has said yet that it is seen. */
  readonly arrived: Signal<boolean>;
  readonly apply: () => void;
  /** Lets a waiting version in when this is the only window; true when the page is about to be loaded anew. */
  readonly atColdStart: () => Promise<boolean>;
}

/** A browser answers in a few ms; one that does not must not keep the shop shut. */
const longestLook = 1000;

/** Registers the service worker at `address` (none when empty) and looks after its updates. */
export function watchUpdates(address: string): (needs: UpdateNeeds) => Updates {
  const arrived = signal(takeUpdateMark());
  return (needs) => {
    const offer = signal<Offer>({ kind: 'none' });
    const offlineReady = signal(false);
    const watched: Omit<Updates, 'apply' | 'atColdStart'> = {
      offer,
      offlineReady,
      waiting: computed(() => offer.value.kind !== 'none'),
      arrived,
    };
    if (address === '' || !('serviceWorker' in navigator)) {
      return { ...watched, apply: () => {}, atColdStart: async () => false };
    }
    // Not needed before the first screen stands.
    const watch = import('./update-watch.ts').then(({ openUpdateWatch }) =>
      openUpdateWatch(address, { ...needs, offer, offlineReady }),
    );
    watch.catch(() => undefined);
    return {
      ...watched,
      apply: () => void watch.then(({ apply }) => apply()).catch(() => undefined),
      async atColdStart() {
        // Right after an update no other is let in without a word, so that two versions cannot take turns for ever.
        if (arrived.value || !(await aVersionWaits())) return false;
        return watch.then(({ atColdStart }) => atColdStart()).catch(() => false);
      },
    };
  };
}

async function aVersionWaits(): Promise<boolean> {
  if (!navigator.serviceWorker.controller) return false;
  const registration = await Promise.race([
    navigator.serviceWorker.getRegistration().catch(() => undefined),
    new Promise<undefined>((resolve) => setTimeout(resolve, longestLook)),
  ]);
  return registration?.waiting != null;
}
