import type { Signal } from '@preact/signals';
import type { Timer } from './saver.ts';
import type { Busy, Offer, UpdateNeeds } from './update-offer.ts';
import type { OtherWindows } from './update-windows.ts';

/** What taking a new version in needs of the browser. */
interface UpdateBrowser {
  /** A version is wholly on the tablet and waits. */
  readonly waits: () => boolean;
  /** Asks the waiting version to take over; `onTakeOver` is called when it has. */
  readonly letIn: () => void;
  /** How many windows of the app are open, sleeping ones included; undefined when nobody answers. */
  readonly countWindows: () => Promise<number | undefined>;
  /** Loads this page anew; false when it must not be tried unasked, for nothing would stop a second time. */
  readonly reload: (asked: 'by-person' | 'unasked') => boolean;
}

export interface TakingParts extends UpdateNeeds {
  readonly browser: UpdateBrowser;
  readonly windows: OtherWindows;
  readonly timer: Timer;
  readonly offer: Signal<Offer>;
}

/** How long a version may take to come into force (ms). */
const longestTakeOver = 5000;
/** How long the copy before it may take (ms): the shop must not stay shut for it. */
const longestCopy = 20_000;
/** How long until a window that was in mid-work is asked again (ms). */
const untilAskedAgain = 10_000;
/** How often a window that was overtaken looks whether it may be loaded anew (ms). */
const untilIdle = 1000;

export interface UpdateTaking {
  readonly apply: () => Promise<void>;
  readonly atColdStart: () => Promise<boolean>;
  /** To be called when a version waits, or waits no longer. */
  readonly onWaiting: () => void;
  /** To be called when another version has taken over, whoever asked for it. */
  readonly onTakeOver: () => void;
}

/** When a waiting version is let in: never in mid-work, not without a copy of the records, and with one reload. */
export function updateTaking({
  browser,
  windows,
  timer,
  offer,
  busyHere,
  beforeApply,
}: TakingParts): UpdateTaking {
  let takenOver: (() => void) | undefined;
  let reloading = false;

  const rest = (): Offer => (browser.waits() ? { kind: 'waiting' } : { kind: 'none' });
  const isBetween = () => offer.value.kind === 'asking' || offer.value.kind === 'applying';

  function hold(by: Busy, at?: string): void {
    offer.value = { kind: 'held', by, at };
    timer.after(untilAskedAgain, () => void askAgain());
  }

  async function inTheWay(): Promise<{ by: Busy; at?: string } | undefined> {
    const here = busyHere();
    return here ? { by: here } : windows.ask();
  }

  async function askAgain(): Promise<void> {
    if (offer.value.kind !== 'held') return;
    const busy = await inTheWay();
    if (offer.value.kind !== 'held') return;
    // A free way is only said, not taken: by now the maker may be at other work here.
    if (busy) hold(busy.by, busy.at);
    else offer.value = rest();
  }

  function withinLimit(copying: Promise<void>): Promise<void> {
    return new Promise((resolve, reject) => {
      const stop = timer.after(longestCopy, () => reject(new Error('the copy took too long')));
      copying.then(resolve, reject).finally(stop);
    });
  }

  /** Copies first; a tap that fell into that moment holds the update back again. */
  async function copied(): Promise<boolean> {
    try {
      await withinLimit(beforeApply());
    } catch {
      offer.value = { kind: 'no-copy' };
      return false;
    }
    const by = busyHere();
    if (by) hold(by);
    return by === undefined;
  }

  function letIn(): Promise<boolean> {
    offer.value = { kind: 'applying' };
    return new Promise((resolve) => {
      const stop = timer.after(longestTakeOver, () => {
        takenOver = undefined;
        offer.value = { kind: 'did-not-take' };
        resolve(false);
      });
      takenOver = () => {
        stop();
        resolve(true);
      };
      browser.letIn();
    });
  }

  function reload(asked: 'by-person' | 'unasked'): void {
    if (reloading) return;
    const by = busyHere();
    // A tap fell between: this version goes on with all its parts until that is done.
    if (by) return void timer.after(untilIdle, () => reload('unasked'));
    reloading = browser.reload(asked);
  }

  return {
    async apply() {
      if (isBetween() || !browser.waits()) return;
      offer.value = { kind: 'asking' };
      const busy = await inTheWay();
      if (busy) return hold(busy.by, busy.at);
      if (await copied()) await letIn();
    },
    async atColdStart() {
      if (isBetween() || !browser.waits()) return false;
      offer.value = { kind: 'asking' };
      const alone = (await browser.countWindows()) === 1;
      if (alone && (await copied()) && (await letIn())) return reloading;
      if (isBetween()) offer.value = rest();
      return false;
    },
    onWaiting() {
      if (offer.value.kind === 'none' || offer.value.kind === 'waiting') offer.value = rest();
    },
    onTakeOver() {
      const asked = takenOver !== undefined;
      reload(asked ? 'by-person' : 'unasked');
      takenOver?.();
      takenOver = undefined;
    },
  };
}
