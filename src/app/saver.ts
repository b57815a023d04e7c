import { type ReadonlySignal, signal } from '@preact/signals';
import type { Entry } from '../domain/log/chain.ts';
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
  /**
   * Resolves when the act is on disk, however many tries that takes, and never forgets. `take` is called in the same moment, so that
   * the mark and what the act has changed come to the screen in one drawing; rejects only with what it throws.
   */
  readonly save: (act: Act, take?: (events: readonly ShopEvent[]) => void) => Promise<readonly ShopEvent[]>;
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

/** What is done beside the store for an act that it does not take at once. */
export interface SafetyNet {
  readonly unsaved: (act: Act) => void;
  /** The store has failed, or was slow twice. */
  readonly doubt: () => void;
  /** An act is stored that was told of as unsaved. */
  readonly saved: (act: Act) => void;
}

export const noNet: SafetyNet = { unsaved: () => {}, doubt: () => {}, saved: () => {} };

export interface SaverParts {
  readonly log: Pick<LogStore, 'append' | 'revive'>;
  readonly timer: Timer;
  readonly net: SafetyNet;
}

export function saver({ log, timer, net }: SaverParts): Saver {
  const saving = signal<Saving>({ kind: 'idle' });
  let again: (() => void) | undefined;

  function save(
    act: Act,
    take: (events: readonly ShopEvent[]) => void = () => {},
  ): Promise<readonly ShopEvent[]> {
    saving.value = { kind: 'taken' };
    return new Promise((resolve, reject) => {
      let tries = 0;
      let isStored = false;

      function stored(entries: readonly Entry<ShopEvent>[]): void {
        // Of two tries that both come through the second adds nothing: they carry the same act.
        if (isStored) return;
        isStored = true;
        if (again === tryOnce) again = undefined;
        if (tries > 1) net.saved(act);
        saving.value = { kind: 'saved' };
        const events = entries.map(({ event }) => event);
        try {
          take(events);
          resolve(events);
        } catch (error) {
          reject(error);
        }
      }

      function tryOnce(): void {
        tries += 1;
        let isOver = false;
        const over = (why: 'slow' | 'failed') => {
          if (isOver || isStored) return;
          isOver = true;
          stopWatch();
          failed(why);
        };
        const stopWatch = timer.after(longestSave, () => over('slow'));
        log.append(tries > 1 ? { ...act, tried: true } : act).then(
          (entries) => {
            isOver = true;
            stopWatch();
            stored(entries);
          },
          () => over('failed'),
        );
      }

      /** The first failure is tried again at once; from the second on the person decides when. */
      function failed(why: 'slow' | 'failed'): void {
        net.unsaved(act);
        if (why === 'failed' || tries > 1) net.doubt();
        if (why === 'slow') log.revive();
        if (why === 'slow' || tries > 1) saving.value = { kind: 'not-saved', act, why };
        if (tries === 1) tryOnce();
        else again = tryOnce;
      }

      tryOnce();
    });
  }

  return {
    saving,
    save,
    retry() {
      const now = again;
      again = undefined;
      now?.();
    },
  };
}
