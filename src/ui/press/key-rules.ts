/**
 * What counts as a press of a key of the page: a foot switch, a page turner and a number pad are keyboards, and not all of
 * them say that a key is held. A pure step from what is remembered of the keys to what is remembered next.
 */
import { pressLimits } from './press-rules.ts';

/** Beside the limits of the press rules; all are choices of ours, for no standard covers how such devices behave. */
export const keyLimits = {
  /** A switch that opens for less than this bounced, or its keyboard repeats by letting the key go and pressing it anew. */
  reopenMs: 40,
  /**
   * A held key of which nothing was heard for so long was let go without a word, as a pedal does whose radio fell asleep.
   * Longer than the longest delay before a key repeats that a system offers (2 s).
   */
  lostReleaseMs: 3000,
  /** No foot lets go so soon: the pedal sends down and up by itself, and may go on to do so while it is held. */
  pulseMs: 30,
  /** The longest pause that is believed between the first pulse of a held pedal and its second. */
  pulsePauseMs: 1200,
} as const;

export type KeySignal =
  | { readonly kind: 'down'; readonly key: string; readonly at: number; readonly repeat: boolean }
  | { readonly kind: 'up'; readonly key: string; readonly at: number };

/**
 * Whether a signal is a press of its own. After a pulse the next one may be the same foot, still down: then it counts
 * `if-alone`, when no other comes within the time of a bounce.
 */
export type Counts = 'yes' | 'no' | 'if-alone';

interface HeardKey {
  readonly held: boolean;
  /** When it last came down, counted or not, and when it last went up. */
  readonly downAt: number;
  readonly upAt: number;
  /** When a press of it last counted, and whether that was a pulse. */
  readonly countedAt: number;
  readonly pulsed: boolean;
}

/** What was heard of each key so far, by `event.key`. */
export type KeyMemory = ReadonlyMap<string, HeardKey>;

/** No key was ever heard. */
export const unheard: KeyMemory = new Map();

const never = Number.NEGATIVE_INFINITY;
const silent: HeardKey = { held: false, downAt: never, upAt: never, countedAt: never, pulsed: false };

/** One signal further. Bounces are measured from touch-down to touch-down. */
export const hearKey = (
  memory: KeyMemory,
  signal: KeySignal,
): { readonly memory: KeyMemory; readonly counts: Counts } => {
  const { key, at } = signal;
  const before = memory.get(key) ?? silent;
  const heard = (now: Partial<HeardKey>): KeyMemory => new Map(memory).set(key, { ...before, ...now });
  if (signal.kind === 'up') {
    const pulsed =
      before.downAt === before.countedAt ? at - before.downAt < keyLimits.pulseMs : before.pulsed;
    return { memory: heard({ held: false, upAt: at, pulsed }), counts: 'no' };
  }
  const counts = signal.repeat ? 'no' : countsOf(before, at);
  return {
    memory: heard({ held: true, downAt: at, ...(counts === 'no' ? {} : { countedAt: at }) }),
    counts,
  };
};

const countsOf = ({ held, downAt, upAt, countedAt, pulsed }: HeardKey, at: number): Counts => {
  const isStillHeld = held && at - downAt < keyLimits.lostReleaseMs;
  const isBounce = at - downAt < pressLimits.bounceMs || at - upAt < keyLimits.reopenMs;
  if (isStillHeld || isBounce) return 'no';
  return pulsed && at - countedAt < keyLimits.pulsePauseMs ? 'if-alone' : 'yes';
};
