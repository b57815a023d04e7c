import * as v from 'valibot';
import type { Timer } from './saver.ts';
import type { Busy } from './update-offer.ts';

/** A window that must not be loaded anew now: why, and where in the app it is (its hash). */
interface BusyWindow {
  readonly by: Busy;
  readonly at: string;
}

/** The other windows of this tablet. */
export interface OtherWindows {
  /** The first window that says it is in mid-work, or undefined. A window that sleeps stands in nobody's way. */
  readonly ask: () => Promise<BusyWindow | undefined>;
}

export interface OtherWindowsParts {
  /** What the windows of one tablet meet under. */
  readonly name: string;
  readonly timer: Timer;
  readonly newId: () => string;
  /** What this window answers when another asks. */
  readonly busyHere: () => Busy | undefined;
  /** Where in the app this window is. */
  readonly at: () => string;
}

/** How long an answer is waited for (ms). */
const longestAnswer = 500;

const message = v.variant('kind', [
  v.object({ kind: v.literal('may-i-update'), asked: v.string() }),
  v.object({
    kind: v.literal('not-now'),
    asked: v.string(),
    by: v.picklist(['tapping', 'not-saved', 'typing']),
    at: v.string(),
  }),
]);

/** Without BroadcastChannel nobody can be asked: such windows are on their own, and see for themselves when they may reload. */
export function otherWindows({ name, timer, newId, busyHere, at }: OtherWindowsParts): OtherWindows {
  if (typeof BroadcastChannel === 'undefined') return { ask: async () => undefined };
  const channel = new BroadcastChannel(name);
  const waiting = new Map<string, (busy: BusyWindow) => void>();

  channel.addEventListener('message', ({ data }) => {
    const read = v.safeParse(message, data);
    if (!read.success) return;
    const { output: said } = read;
    if (said.kind === 'not-now') return waiting.get(said.asked)?.({ by: said.by, at: said.at });
    const by = busyHere();
    if (by) channel.postMessage({ kind: 'not-now', asked: said.asked, by, at: at() });
  });

  return {
    ask() {
      const asked = newId();
      return new Promise((resolve) => {
        const settle = (busy: BusyWindow | undefined) => {
          waiting.delete(asked);
          stop();
          resolve(busy);
        };
        const stop = timer.after(longestAnswer, () => settle(undefined));
        waiting.set(asked, settle);
        channel.postMessage({ kind: 'may-i-update', asked });
      });
    },
  };
}
