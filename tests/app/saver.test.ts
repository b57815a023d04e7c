import { expect, test } from 'vitest';
import { saver } from '../../src/app/saver.ts';
import type { Act } from '../../src/store/log-store.ts';
import { spellDraft } from '../support/drafts.ts';
import { handClock } from '../support/hand-clock.ts';
import { openTestLog } from '../support/log-makers.ts';

const act: Act = { act: 'tap', drafts: [spellDraft('turn')], now: 1 };
const settle = () => new Promise((resolve) => setImmediate(resolve));

type Behaviour = 'stores' | 'fails' | 'hangs' | 'stores and fails' | 'stores and hangs';

/** A store that behaves as told, call by call, and well from then on. */
async function savingInto(...behaviours: readonly Behaviour[]) {
  const log = await openTestLog();
  const told: string[] = [];
  let call = 0;
  const hands = handClock();
  const keeper = saver({
    log: {
      async append(each) {
        const behaviour = behaviours[call] ?? 'stores';
        call += 1;
        const entries = behaviour.startsWith('stores') ? await log.append(each) : [];
        if (behaviour.endsWith('hangs')) await new Promise(() => {});
        if (behaviour.endsWith('fails')) throw new DOMException('no room', 'QuotaExceededError');
        return entries;
      },
      revive: () => told.push('revive'),
    },
    timer: hands.timer,
    net: {
      unsaved: (each) => told.push(`unsaved ${each.act}`),
      doubt: () => told.push('doubt'),
      saved: (each) => told.push(`saved ${each.act}`),
    },
  });
  const inStore = async () => (await log.since(new Map())).events.length;
  return { keeper, hands, told, calls: () => call, inStore };
}

test('a save that hangs is said after two seconds and tried once more, on a new connection, under the same act', async () => {
  const { keeper, hands, told, calls, inStore } = await savingInto('hangs');
  const done = keeper.save(act);
  hands.pass(1999);
  expect([keeper.saving.value.kind, calls()]).toEqual(['taken', 1]);
  hands.pass(1);
  expect(keeper.saving.value).toEqual({ kind: 'not-saved', act, why: 'slow' });
  expect(await done).toHaveLength(1);
  expect([keeper.saving.value.kind, calls(), await inStore()]).toEqual(['saved', 2, 1]);
  expect(told).toEqual(['unsaved tap', 'revive', 'saved tap']);
});

test('a save that was stored and then hangs counts once', async () => {
  const { keeper, hands, inStore, calls } = await savingInto('stores and hangs');
  const done = keeper.save(act);
  while ((await inStore()) === 0) await settle();
  hands.pass(2000);
  expect(await done).toHaveLength(1);
  expect([await inStore(), calls()]).toEqual([1, 2]);
});

test('a save that hangs twice stays on the screen until the person tries again; it is never tried in a loop', async () => {
  const { keeper, hands, told, calls } = await savingInto('hangs', 'hangs');
  const done = keeper.save(act);
  hands.pass(2000);
  hands.pass(2000);
  hands.pass(600_000);
  await settle();
  expect([keeper.saving.value, calls()]).toEqual([{ kind: 'not-saved', act, why: 'slow' }, 2]);
  expect(told).toEqual(['unsaved tap', 'revive', 'unsaved tap', 'doubt', 'revive']);
  keeper.retry();
  expect(await done).toHaveLength(1);
  expect([keeper.saving.value.kind, calls()]).toEqual(['saved', 3]);
});

test('a save that fails is tried once more at once; a store that fails again is in doubt', async () => {
  const { keeper, told, calls } = await savingInto('fails', 'fails');
  const done = keeper.save(act);
  while (keeper.saving.value.kind !== 'not-saved') await settle();
  expect([keeper.saving.value, calls()]).toEqual([{ kind: 'not-saved', act, why: 'failed' }, 2]);
  expect(told).toEqual(['unsaved tap', 'doubt', 'unsaved tap', 'doubt']);
  keeper.retry();
  await done;
  expect(told.at(-1)).toBe('saved tap');
});

test('a save that is late and then comes through is saved, and trying again does no harm', async () => {
  let release = () => {};
  const late = new Promise<void>((resolve) => {
    release = resolve;
  });
  const log = await openTestLog();
  const hands = handClock();
  let calls = 0;
  const keeper = saver({
    log: {
      async append(each) {
        calls += 1;
        await (calls === 1 ? late : new Promise(() => {}));
        return log.append(each);
      },
      revive: () => {},
    },
    timer: hands.timer,
    net: { unsaved: () => {}, doubt: () => {}, saved: () => {} },
  });
  const done = keeper.save(act);
  hands.pass(2000);
  hands.pass(2000);
  release();
  expect(await done).toHaveLength(1);
  expect(keeper.saving.value.kind).toBe('saved');
  keeper.retry();
  await settle();
  expect([calls, (await log.since(new Map())).events.length]).toEqual([2, 1]);
});

test('what an act has changed is taken once, in the moment in which the mark says that it is saved', async () => {
  const { keeper } = await savingInto('stores and fails');
  const taken: unknown[] = [];
  let isLater = false;
  const done = keeper.save(act, (events) => {
    taken.push([keeper.saving.value.kind, isLater, events.length]);
  });
  keeper.saving.subscribe(({ kind }) => {
    if (kind === 'saved')
      queueMicrotask(() => {
        isLater = true;
      });
  });
  await done;
  expect(taken).toEqual([['saved', false, 1]]);
});

test('a fault in taking what was stored reaches who tapped, and the act counts as saved', async () => {
  const { keeper, inStore } = await savingInto();
  const done = keeper.save(act, () => {
    throw new Error('no such tray');
  });
  await expect(done).rejects.toThrow('no such tray');
  expect([keeper.saving.value.kind, await inStore()]).toEqual(['saved', 1]);
});
