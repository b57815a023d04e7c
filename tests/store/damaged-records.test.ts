import { openDB } from 'idb';
import { expect, test } from 'vitest';
import { emptyParcel, entriesIn } from '../../src/domain/packed/parcel.ts';
import { foreignEntries } from '../support/drafts.ts';
import { freshName, openTestLog, spoilRecord } from '../support/log-makers.ts';
import { otherStory } from '../support/long-logs.ts';

const now = Date.UTC(2026, 2, 2, 9);
const entries = foreignEntries();
const key = ['station-z', 3] as const;

async function logWith(spoil: Parameters<typeof spoilRecord>[2]) {
  const name = freshName();
  const log = await openTestLog(name);
  await log.merge({ entries, now });
  await spoilRecord(name, key, spoil);
  return { name, log };
}

const faults: readonly (readonly [string, Parameters<typeof spoilRecord>[2]])[] = [
  [
    'one of its figures was changed',
    (record) => ({ ...record, event: { ...entries[2]?.event, day: '2026-03-03' } }),
  ],
  ['its link was changed', (record) => ({ ...record, link: 'a'.repeat(32) })],
  ['it says nothing any more', ({ station, seq }) => ({ station, seq, trays: [] })],
  [
    'it holds the event of another',
    (record) => ({ ...record, ...entries[4], station: record.station, seq: record.seq }),
  ],
];

test.each(faults)('a record is set aside when %s, and the others stay usable', async (_, spoil) => {
  const { log } = await logWith(spoil);
  const reading = await log.since(new Map());
  expect(reading.damaged).toHaveLength(1);
  expect(reading.events.map(({ seq }) => seq).toSorted((a, b) => a - b)).toEqual(
    entries.map(({ event }) => event.seq).filter((seq) => seq !== 3),
  );
  expect(await log.entries()).toHaveLength(entries.length - 1);
});

test.each(faults)(
  'a sound copy takes the place of a record when %s; what stood there is kept',
  async (_, spoil) => {
    const { name, log } = await logWith(spoil);
    const db = await openDB(name);
    const spoiled = await db.get('events', [...key]);
    expect(await log.merge({ entries, now })).toMatchObject({
      added: emptyParcel,
      mended: 1,
      here: entries.length - 1,
    });
    expect((await log.since(new Map())).damaged).toEqual([]);
    expect(await log.entries()).toEqual(entries);
    expect(await db.getAll('aside')).toEqual([spoiled]);
    db.close();
  },
);

test('of two cloned tablets whose stories part at a damaged record, both are kept', async () => {
  const { log } = await logWith((record) => ({ ...record, link: 'a'.repeat(32) }));
  const other = otherStory(entries, 3);
  const { mended, added } = await log.merge({ entries: [...entries, ...other], now });
  expect([mended, entriesIn(added).length]).toEqual([1, other.length]);
  const links = new Set((await log.entries()).map(({ link }) => link));
  expect(links).toEqual(new Set([...entries, ...other].map(({ link }) => link)));
});

test('a store from which records have gone missing still adds up after they were put back', async () => {
  const name = freshName();
  const log = await openTestLog(name);
  await log.merge({ entries, now });
  const whole = await log.holding();
  const db = await openDB(name);
  for (const seq of [2, 5, entries.length]) await db.delete('events', ['station-z', seq]);
  db.close();
  expect((await log.holding()).records).toBe(entries.length - 3);
  expect(entriesIn((await log.merge({ entries, now })).added).map(({ event }) => event.seq)).toEqual([
    2,
    5,
    entries.length,
  ]);
  expect(await log.holding()).toEqual(whole);
});
