import { describe, expect, test } from 'vitest';
import {
  afterStep,
  type LockDoor,
  newPinFault,
  tryPin,
  waitAfter,
  waitLeft,
} from '../../src/app/bench-lock.ts';
import { type BenchLock, isClosed } from '../../src/app/kept-lock.ts';
import { handClock } from '../support/hand-clock.ts';

/** The digits stand for their own hash: what hashing does is tested apart. */
const pin = '2718';
const recovery = '314159265358';
const at = Date.UTC(2026, 2, 2, 9);
const minute = 60_000;

const set = (start: BenchLock | null = null) => afterStep(start, { kind: 'set', pin, recovery, now: at });

/** A lock as it is after its PIN was set, with what is of interest changed. */
function lockWith(change: Partial<BenchLock> = {}): BenchLock {
  const lock = set();
  if (!lock) throw new Error('a lock that was set is missing');
  return { ...lock, ...change };
}

/** A door whose hashes are the digits themselves, at a clock moved by hand. */
function door(lock: BenchLock | null = lockWith({ locked: true })) {
  const hands = handClock(at);
  const opened: LockDoor & { lock: { value: BenchLock | null } } = {
    lock: { value: lock },
    now: hands.clock.now,
    matches: async (typed, hashed) => typed === hashed,
  };
  return { ...opened, hands, enter: (typed: string) => tryPin(opened, typed) };
}

describe('a lock', () => {
  test('is open when its PIN is set, and closes when it is told to', () => {
    expect(isClosed(null, at)).toBe(false);
    expect(isClosed(set(), at)).toBe(false);
    expect(isClosed(afterStep(set(), { kind: 'lock' }), at)).toBe(true);
  });

  test('that does not exist stays away, whatever happens', () => {
    for (const kind of ['lock', 'take-away'] as const) expect(afterStep(null, { kind })).toBeNull();
    for (const kind of ['try', 'open', 'touch', 'tick'] as const)
      expect(afterStep(null, { kind, now: at })).toBeNull();
    expect(afterStep(null, { kind: 'minutes', minutes: 5, now: at })).toBeNull();
  });

  test('keeps its minutes when the PIN is changed, and forgets the tries', () => {
    const before = lockWith({ minutes: 15, wrong: 3, triedAt: at });
    expect(set(before)).toMatchObject({ minutes: 15, wrong: 0, locked: false });
  });
});

describe('a lock that closes by itself', () => {
  const idle = lockWith({ minutes: 5 });

  test.each([
    ['a moment before its time', 5 * minute - 1, false],
    ['at its time', 5 * minute, true],
    ['after a night', 600 * minute, true],
  ] as const)('%s', (_when, later, closed) => {
    expect(isClosed(idle, at + later)).toBe(closed);
    expect(afterStep(idle, { kind: 'tick', now: at + later })?.locked).toBe(closed);
    expect(afterStep(idle, { kind: 'touch', now: at + later })?.locked).toBe(closed);
  });

  test('begins anew at a touch, which is noted four times a minute at most', () => {
    const soon = afterStep(idle, { kind: 'touch', now: at + 14_999 });
    expect(soon).toBe(idle);
    const touched = afterStep(idle, { kind: 'touch', now: at + 4 * minute });
    expect(isClosed(touched, at + 8 * minute)).toBe(false);
    expect(isClosed(touched, at + 9 * minute)).toBe(true);
  });

  test('never does so where it was not asked to', () => {
    expect(isClosed(lockWith(), at + 10_000 * minute)).toBe(false);
  });

  test('still does so after the clock was set back', () => {
    const back = at - 600 * minute;
    const seen = afterStep(idle, { kind: 'tick', now: back });
    expect(isClosed(seen, back + 5 * minute)).toBe(true);
  });
});

describe('a try', () => {
  test('with the PIN opens; with another it does not', async () => {
    const { lock, enter, hands } = door();
    expect(await enter('1618')).toBe('wrong');
    expect(isClosed(lock.value, at)).toBe(true);
    hands.pass(1000);
    expect(await enter('2718')).toBe('opened');
    expect(lock.value).toMatchObject({ locked: false, wrong: 0 });
  });

  test('in vain waits longer each time: 1, 2, 4 … 60 s', async () => {
    expect([0, 1, 2, 3, 4, 5, 6, 7, 8, 500].map(waitAfter)).toEqual(
      [0, 1, 2, 4, 8, 16, 32, 60, 60, 60].map((seconds) => seconds * 1000),
    );
    const { enter, hands } = door();
    for (const seconds of [1, 2, 4, 8, 16, 32, 60, 60]) {
      expect(await enter('1618')).toBe('wrong');
      hands.pass(seconds * 1000 - 1);
      expect(await enter('2718')).toBe('waits');
      hands.pass(1);
    }
    expect(await enter('2718')).toBe('opened');
  });

  test('counts before it is judged: leaving in the midst of it gains nothing', () => {
    const { lock, hands } = door();
    void tryPin({ lock, now: hands.clock.now, matches: () => new Promise(() => undefined) }, '1618');
    expect(lock.value).toMatchObject({ locked: true, wrong: 1, triedAt: at });
  });

  test('waits no longer than it has to when the clock is set back, and is not let off', async () => {
    const { lock, enter, hands } = door(lockWith({ locked: true, wrong: 2, triedAt: at }));
    hands.setWall(at - 600 * minute);
    expect(await enter('2718')).toBe('waits');
    hands.pass(1999);
    expect(lock.value && waitLeft(lock.value, hands.clock.now())).toBe(1);
    hands.pass(1);
    expect(await enter('2718')).toBe('opened');
  });

  test('with the recovery number opens, and takes the lock away', async () => {
    const { lock, enter } = door();
    expect(await enter('314159265358')).toBe('recovered');
    expect(lock.value).toBeNull();
  });

  test('with a wrong recovery number counts like any other', async () => {
    const { lock, enter } = door();
    expect(await enter('314159265359')).toBe('wrong');
    expect(lock.value).toMatchObject({ locked: true, wrong: 1 });
  });
});

test.each([
  ['123', '123', 'shape'],
  ['1234', '1234', undefined],
  ['0000', '0000', undefined],
  ['12345678', '12345678', undefined],
  ['123456789', '123456789', 'shape'],
  ['12a4', '12a4', 'shape'],
  ['', '', 'shape'],
  ['1234', '1243', 'differs'],
] as const)('a new PIN of %s and then %s: %s', (once, again, fault) => {
  expect(newPinFault({ once, again })).toBe(fault);
});
