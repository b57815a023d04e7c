import { expect, test } from 'vitest';
import { packRun } from '../../src/domain/packed/pack-run.ts';
import { countIn } from '../../src/domain/packed/parcel.ts';
import { freshName, openTestLog, sealAll } from '../support/log-makers.ts';
import { longLog, otherStory } from '../support/long-logs.ts';

const now = Date.UTC(2026, 2, 2, 9);
const log = longLog(60);
const runOf = (from: number, to: number, of = log) => packRun(of.slice(from, to).map((entry) => ({ entry })));

test('a run goes to the branch that the run before it lies on, as its entries would', async () => {
  const [together, singly] = await Promise.all([openTestLog(), openTestLog()]);
  const other = otherStory(log, 5).slice(0, 6);
  for (const store of [together, singly]) await store.merge({ entries: [...log.slice(0, 4), ...other], now });
  const { added, unplaced } = await together.merge({ runs: [runOf(0, 20), runOf(20, 60)], now });
  expect([countIn(added), unplaced]).toEqual([56, 0]);
  await singly.merge({ entries: log, now });
  const eventsOf = async (store: typeof singly) =>
    (await store.since(new Map())).events.map(({ station, seq, stamp }) => [station, seq, stamp]).sort();
  expect(await eventsOf(together)).toEqual(await eventsOf(singly));
});

test('a run that is held in other runs and records adds nothing, and mends what of it is missing', async () => {
  const name = freshName();
  const store = await openTestLog(name);
  await store.merge({ entries: log.slice(0, 25), now });
  await sealAll(name);
  await store.merge({ entries: log.slice(25, 41), now });
  await sealAll(name, { young: 5, together: 1 });
  for (const [from, to] of [
    [0, 41],
    [7, 20],
    [3, 30],
    [30, 38],
    [37, 41],
  ] as const)
    expect(await store.merge({ runs: [runOf(from, to)], now })).toMatchObject({
      ...{ here: to - from, added: { runs: [], entries: [] }, mended: 0, unplaced: 0 },
    });
  const { added, here } = await store.merge({ runs: [runOf(3, 60)], now });
  expect([countIn(added), here]).toEqual([19, 38]);
  expect(await store.entries()).toHaveLength(60);
});
