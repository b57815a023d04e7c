import { expect, test } from 'vitest';
import { type Locks, oneAtATime } from '../../src/app/one-at-a-time.ts';
import { handClock } from '../support/hand-clock.ts';

/** Locks of one tablet, as the Web Locks API describes them, for the two ways in which they are asked for. */
function tabletLocks(): Locks & { readonly held: () => number } {
  const held = new Set<string>();
  const request = async (
    name: string,
    { ifAvailable, steal }: LockOptions,
    run: (lock: Lock | null) => Promise<unknown>,
  ) => {
    if (ifAvailable && held.has(name)) return run(null);
    if (!ifAvailable && !steal) throw new Error('this test knows no waiting for a lock');
    held.add(name);
    try {
      return await run({ name, mode: 'exclusive' });
    } finally {
      held.delete(name);
    }
  };
  return { request, held: () => held.size } as ReturnType<typeof tabletLocks>;
}

const never = new Promise<never>(() => {});

test('the turn is taken, used and given back, also after a failure', async () => {
  const locks = tabletLocks();
  const alone = oneAtATime('copies', locks, () => 0);
  expect(await alone(async () => locks.held())).toEqual({ kind: 'ran', result: 1 });
  await expect(alone(() => Promise.reject(new Error('full')))).rejects.toThrow('full');
  expect(locks.held()).toBe(0);
  expect(await alone(async () => 7)).toEqual({ kind: 'ran', result: 7 });
});

test('of two windows one does the work and the other leaves it alone', async () => {
  const locks = tabletLocks();
  const [here, there] = [oneAtATime('copies', locks, () => 0), oneAtATime('copies', locks, () => 0)];
  let finish = () => {};
  const first = here(() => new Promise<void>((done) => (finish = done)));
  let done = false;
  expect(await there(async () => (done = true))).toEqual({ kind: 'busy' });
  expect(done).toBe(false);
  finish();
  await first;
  expect(await there(async () => 'mine')).toEqual({ kind: 'ran', result: 'mine' });
});

test('a frozen window keeps the turn for a quarter of an hour and no longer', async () => {
  const locks = tabletLocks();
  const hands = handClock();
  void oneAtATime('copies', locks, hands.clock.monotonic)(() => never);
  const alone = oneAtATime('copies', locks, hands.clock.monotonic);
  expect((await alone(async () => 1)).kind).toBe('busy');
  hands.pass(15 * 60_000 - 1);
  expect((await alone(async () => 2)).kind).toBe('busy');
  hands.pass(1);
  expect(await alone(async () => 3)).toEqual({ kind: 'ran', result: 3 });
});

test('where there are no locks the work is done all the same', async () => {
  expect(await oneAtATime('copies', undefined, () => 0)(async () => 5)).toEqual({ kind: 'ran', result: 5 });
});

test('a window from which the turn was taken hears that another is at it', async () => {
  const taken = {
    request: () => Promise.reject(new DOMException('stolen', 'AbortError')),
  } as unknown as Locks;
  expect(await oneAtATime('copies', taken, () => 0)(async () => 1)).toEqual({ kind: 'busy' });
});
