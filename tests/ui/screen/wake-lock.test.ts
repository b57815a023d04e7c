import { describe, expect, test } from 'vitest';
import { keepAwake, type Waking } from '../../../src/ui/screen/wake-lock.ts';

/** A platform whose locks a test grants, refuses and takes away. */
function platform({ agrees = true } = {}) {
  const listeners = new Set<() => void>();
  const locks: { released: boolean; lose: () => void }[] = [];
  const told: Waking[] = [];
  const here = { agrees, visibilityState: 'visible' as DocumentVisibilityState };

  const request = async () => {
    if (!here.agrees) throw new DOMException('battery is low', 'NotAllowedError');
    const heard = new Set<() => void>();
    const lock = { released: false, lose: () => {} };
    lock.lose = () => {
      lock.released = true;
      for (const hear of heard) hear();
    };
    locks.push(lock);
    return {
      addEventListener: (_: string, hear: () => void) => heard.add(hear),
      release: async () => lock.lose(),
    } as unknown as WakeLockSentinel;
  };
  const page = {
    get visibilityState() {
      return here.visibilityState;
    },
    addEventListener: (_: string, hear: () => void) => void listeners.add(hear),
    removeEventListener: (_: string, hear: () => void) => void listeners.delete(hear),
  } as Pick<Document, 'visibilityState' | 'addEventListener' | 'removeEventListener'>;

  return {
    here,
    told,
    locks,
    listeners,
    held: () => locks.filter(({ released }) => !released).length,
    start: () => keepAwake({ wakeLock: { request }, page, tell: (waking) => told.push(waking) }),
    page,
    async view(state: DocumentVisibilityState) {
      here.visibilityState = state;
      for (const hear of listeners) hear();
      await settle();
    },
  };
}

const settle = () => new Promise((done) => setImmediate(done));

describe('a screen that is to stay awake', () => {
  test('is kept awake until it goes', async () => {
    const { start, told, held, listeners } = platform();
    const stop = start();
    await settle();
    expect([told, held()]).toEqual([['kept'], 1]);
    stop();
    await settle();
    expect([told, held(), listeners.size]).toEqual([['kept'], 0, 0]);
  });

  test('is asked for anew when the page comes back to view, however often', async () => {
    const { here, start, locks, view, held } = platform();
    start();
    await settle();
    for (let times = 0; times < 3; times += 1) {
      // The platform takes the lock away when the page goes out of sight.
      here.visibilityState = 'hidden';
      locks.at(-1)?.lose();
      await view('hidden');
      expect(held()).toBe(0);
      await view('visible');
      expect(held()).toBe(1);
    }
  });

  test('is asked for anew at once when the platform takes it away in view', async () => {
    const { start, locks, held } = platform();
    start();
    await settle();
    locks.at(-1)?.lose();
    await settle();
    expect([locks.length, held()]).toEqual([2, 1]);
  });

  test('says so when it is refused, and is kept awake at the next view when the platform agrees', async () => {
    const { start, told, here, view } = platform({ agrees: false });
    start();
    await settle();
    expect(told).toEqual(['refused']);
    here.agrees = true;
    await view('hidden');
    await view('visible');
    expect(told).toEqual(['refused', 'kept']);
  });

  test('that goes before the platform has answered leaves no lock behind', async () => {
    const { start, told, held } = platform();
    start()();
    await settle();
    expect([told, held()]).toEqual([[], 0]);
  });

  test('says so where the platform has no such thing', async () => {
    const { page, told } = platform();
    keepAwake({ wakeLock: undefined, page, tell: (waking) => told.push(waking) });
    await settle();
    expect(told).toEqual(['refused']);
  });

  test('is not asked for while the page is out of sight', async () => {
    const { start, view, locks } = platform();
    await view('hidden');
    start();
    await settle();
    expect(locks).toEqual([]);
    await view('visible');
    expect(locks).toHaveLength(1);
  });
});
