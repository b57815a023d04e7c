import { expect, test } from 'vitest';
import type { Locks } from '../../src/app/one-at-a-time.ts';
import { oneWindow } from '../../src/app/one-window.ts';
import { handClock } from '../support/hand-clock.ts';
import { tabletLocks } from '../support/tablet-locks.ts';

const settle = () => new Promise((resolve) => setTimeout(resolve, 0));

/** Windows of one tablet that hear each other; one that is frozen answers nothing, and its timers stand still. */
function aTablet(locks: Locks | undefined) {
  const windows: { isMine: boolean; isFrozen: boolean; heard: () => void }[] = [];
  const open = () => {
    const hands = handClock();
    const here = { turns: [] as boolean[], isMine: false, isFrozen: false, heard: () => {} };
    windows.push(here);
    const { heard, close } = oneWindow({
      name: 'other tablets',
      locks,
      timer: hands.timer,
      onTurn(isMine) {
        here.isMine = isMine;
        here.turns.push(isMine);
      },
      ask() {
        for (const other of windows) if (other.isMine && !other.isFrozen) here.heard();
      },
    });
    here.heard = heard;
    return Object.assign(here, {
      close() {
        here.isMine = false;
        close();
      },
      /** Time passes, with what comes of it. */
      async wait(ms: number) {
        for (let left = ms; left > 0; left -= 1000) {
          hands.pass(Math.min(1000, left));
          await settle();
        }
      },
    });
  };
  return { open };
}

test('of several windows the first has the turn, and the next has it when that one goes', async () => {
  const { open } = aTablet(tabletLocks());
  const [first, second, third] = [open(), open(), open()];
  await settle();
  expect([first, second, third].map(({ turns }) => turns)).toEqual([[true], [], []]);
  first.close();
  await settle();
  expect([second, third].map(({ isMine }) => isMine)).toEqual([true, false]);
});

test('a window that was closed while it waited is passed over', async () => {
  const { open } = aTablet(tabletLocks());
  const [first, second, third] = [open(), open(), open()];
  second.close();
  first.close();
  await settle();
  expect(second.turns).toEqual([]);
  expect(third.turns).toEqual([true]);
});

test('a window that answers keeps the turn, however long', async () => {
  const { open } = aTablet(tabletLocks());
  const [first, second] = [open(), open()];
  await second.wait(10 * 60_000);
  expect(first.turns).toEqual([true]);
  expect(second.turns).toEqual([]);
});

test('a frozen window loses the turn after half a minute of silence, and waits for it once it thaws', async () => {
  const { open } = aTablet(tabletLocks());
  const [first, second] = [open(), open()];
  first.isFrozen = true;
  await second.wait(29_000);
  expect(second.turns).toEqual([]);
  await second.wait(1000);
  expect(second.turns).toEqual([true]);
  expect(first.turns).toEqual([true, false]);
  first.isFrozen = false;
  await first.wait(60_000);
  expect(second.isMine).toBe(true);
  second.close();
  await settle();
  expect(first.turns).toEqual([true, false, true]);
});

test('of two that find a window frozen, one has the turn in the end', async () => {
  const { open } = aTablet(tabletLocks());
  const [first, second, third] = [open(), open(), open()];
  first.isFrozen = true;
  await Promise.all([second.wait(120_000), third.wait(120_000)]);
  expect([first, second, third].filter(({ isMine }) => isMine)).toHaveLength(1);
  expect(first.isMine).toBe(false);
});

test.each<[string, Locks | undefined]>([
  ['there are no locks', undefined],
  [
    'locks cannot be had',
    { request: () => Promise.reject(new DOMException('not here', 'SecurityError')) } as unknown as Locks,
  ],
])('where %s every window has the turn', async (_, locks) => {
  const { open } = aTablet(locks);
  const [first, second] = [open(), open()];
  await settle();
  expect([first, second].map(({ turns }) => turns)).toEqual([[true], [true]]);
});
