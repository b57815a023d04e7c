import { type BenchLock, isIdle, minute } from './kept-lock.ts';

/** Minutes without a touch after which a tablet may lock by itself. */
export const idleMinutes = [2, 5, 15, 60] as const;

export type LockStep =
  /** A first PIN, or another one; the lock stays open. */
  | { readonly kind: 'set'; readonly pin: string; readonly recovery: string; readonly now: number }
  | { readonly kind: 'minutes'; readonly minutes: number | null; readonly now: number }
  | { readonly kind: 'lock' }
  /** Counted as wrong until it proves right, so that a reload in the midst of it gains nothing. */
  | { readonly kind: 'try'; readonly now: number }
  | { readonly kind: 'open'; readonly now: number }
  | { readonly kind: 'take-away' }
  | { readonly kind: 'touch'; readonly now: number }
  | { readonly kind: 'tick'; readonly now: number };

const second = 1000;
const longestWait = minute;
/** Touches closer than this (ms) are noted once: each note is a write. */
const noteEvery = 15 * second;

/** The lock after a step; null is no lock. A step that changes nothing gives back the same lock. */
export function afterStep(lock: BenchLock | null, step: LockStep): BenchLock | null {
  if (step.kind === 'set') return withPin(lock, step);
  if (!lock) return null;
  switch (step.kind) {
    case 'minutes':
      return { ...lock, minutes: step.minutes, touchedAt: step.now };
    case 'lock':
      return lock.locked ? lock : { ...lock, locked: true };
    case 'try':
      return { ...lock, wrong: lock.wrong + 1, triedAt: step.now };
    case 'open':
      return { ...lock, locked: false, wrong: 0, touchedAt: step.now };
    case 'take-away':
      return null;
    case 'tick':
      return ticked(lock, step.now);
    case 'touch':
      return touched(ticked(lock, step.now), step.now);
  }
}

function withPin(
  lock: BenchLock | null,
  { pin, recovery, now }: LockStep & { readonly kind: 'set' },
): BenchLock {
  const minutes = lock?.minutes ?? null;
  return { pin, recovery, minutes, locked: false, wrong: 0, triedAt: 0, touchedAt: now };
}

/** A clock that was set back makes no wait longer than it was, and no idle time endless. */
function ticked(lock: BenchLock, now: number): BenchLock {
  const ahead = lock.triedAt > now || lock.touchedAt > now;
  const sound = ahead
    ? { ...lock, triedAt: Math.min(lock.triedAt, now), touchedAt: Math.min(lock.touchedAt, now) }
    : lock;
  return isIdle(sound, now) && !sound.locked ? { ...sound, locked: true } : sound;
}

function touched(lock: BenchLock, now: number): BenchLock {
  if (lock.locked || lock.minutes === null || now - lock.touchedAt < noteEvery) return lock;
  return { ...lock, touchedAt: now };
}

/** How long (ms) after the n-th try in vain no other is taken: 1, 2, 4 … 60 s. */
export function waitAfter(wrong: number): number {
  return wrong === 0 ? 0 : Math.min(second * 2 ** (wrong - 1), longestWait);
}

/** How long (ms) it is until the next try is taken. */
export function waitLeft({ wrong, triedAt }: BenchLock, now: number): number {
  const wait = waitAfter(wrong);
  return Math.min(Math.max(0, triedAt + wait - now), wait);
}

/** Digits of a PIN, and of the recovery number. */
const pinLengths = { least: 4, most: 8 } as const;
export const recoveryLength = 12;

/** What is wrong with a PIN that was typed twice; undefined when nothing is. */
export function newPinFault({
  once,
  again,
}: {
  once: string;
  again: string;
}): 'shape' | 'differs' | undefined {
  const { least, most } = pinLengths;
  if (!/^[0-9]+$/.test(once) || once.length < least || once.length > most) return 'shape';
  return once === again ? undefined : 'differs';
}

export interface LockDoor {
  readonly lock: { value: BenchLock | null };
  readonly now: () => number;
  readonly matches: (typed: string, hashed: string) => Promise<boolean>;
}

export type Tried = 'opened' | 'recovered' | 'wrong' | 'waits';

/** Tries a PIN or the recovery number. The right one opens the lock; the recovery number takes it away as well. */
export async function tryPin({ lock, now, matches }: LockDoor, typed: string): Promise<Tried> {
  lock.value = afterStep(lock.value, { kind: 'tick', now: now() });
  const before = lock.value;
  if (!before) return 'opened';
  if (waitLeft(before, now()) > 0) return 'waits';
  lock.value = afterStep(before, { kind: 'try', now: now() });
  const isRecovery = typed.length === recoveryLength;
  if (!(await matches(typed, isRecovery ? before.recovery : before.pin))) return 'wrong';
  const step: LockStep = isRecovery ? { kind: 'take-away' } : { kind: 'open', now: now() };
  lock.value = afterStep(lock.value, step);
  return isRecovery ? 'recovered' : 'opened';
}
