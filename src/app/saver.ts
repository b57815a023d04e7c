import { type ReadonlySignal, signal } from '@preact/signals';
import type { ShopEvent } from '../domain/log/event.ts';
import type { Act, LogStore } from '../store/log-store.ts';

/** What the person is told of the last tap: taken at once, saved only when it is on disk. */
export type Saving =
  | { readonly kind: 'idle' }
  | { readonly kind: 'taken' }
  | { readonly kind: 'saved' }
  | { readonly kind: 'not-saved'; readonly act: Act; readonly why: 'slow' | 'failed' };

/** A save that takes longer (ms) is said out loud. */
const longestSave = 2000;

export interface Saver {
  readonly saving: ReadonlySignal<Saving>;
  /** Resolves when the act is on disk, however many tries that takes; never rejects and never forgets. */
  readonly save: (act: Act) => Promise<readonly ShopEvent[]>;
  /** Tries a failed save again, under the same act, so that it cannot count twice. */
  readonly retry: () => void;
}

export interface Timer {
  readonly after: (ms: number, run: () => void) => () => void;
}

export const systemTimer: Timer = {
  after(ms, run) {
    const handle = setTimeout(run, ms);
    return () => clearTimeout(handle);
  },
};

export function saver(log: Pick<LogStore, 'append'>, timer: Timer): Saver {
  const saving = signal<Saving>({ kind: 'idle' });
  let again: (() => void) | undefined;

  async function save(act: Act): Promise<readonly ShopEvent[]> {
    saving.value = { kind: 'taken' };
    for (let failures = 0; ; failures += 1) {
      const stopWatch = timer.after(longestSave, () => {
        saving.value = { kind: 'not-saved', act, why: 'slow' };
      });
      try {
        const events = (await log.append(act)).map(({ event }) => event);
        saving.value = { kind: 'saved' };
        return events;
      } catch {
        // The first failure is tried again at once; from the second on the person decides when.
        if (failures > 0) await askPerson(act);
      } finally {
        stopWatch();
      }
    }
  }

  function askPerson(act: Act): Promise<void> {
    saving.value = { kind: 'not-saved', act, why: 'failed' };
    return new Promise((resolve) => {
      again = resolve;
    });
  }

  return {
    saving,
    save,
    retry() {
      again?.();
      again = undefined;
    },
  };
}
