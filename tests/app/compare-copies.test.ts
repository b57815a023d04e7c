import { openDB } from 'idb';
import { describe, expect, test } from 'vitest';
import { compareCopies } from '../../src/app/compare-copies.ts';
import type { Entry } from '../../src/domain/log/chain.ts';
import { holdingOf } from '../../src/domain/log/holding.ts';
import type { LogStore } from '../../src/store/log-store.ts';
import { opfsTwin } from '../../src/store/opfs-twin.ts';
import type { Twin } from '../../src/store/twin.ts';
import { loose } from '../support/copy-reads.ts';
import type { FakeDisk } from '../support/fake-folder.ts';
import { filesOf, named } from '../support/journal-windows.ts';
import { freshName, openTestLog, sealAll } from '../support/log-makers.ts';
import { longLog, otherStory } from '../support/long-logs.ts';
import { packedRuns } from '../support/run-makers.ts';
import { testFiles } from '../support/test-files.ts';

const log = longLog(1500);
const clone = otherStory(log.slice(0, 900), 701);
const allOf = (...parts: readonly (readonly Entry[])[]) => holdingOf(parts.flat().map(({ link }) => link));

/** A twin that notes how many entries it gives out, and takes. */
function watched(twin: Twin) {
  const seen = { given: 0, taken: 0 };
  const watching: Twin = {
    ...twin,
    async parcel(heads) {
      seen.given += heads.reduce((sum, { entries }) => sum + entries, 0);
      return twin.parcel(heads);
    },
    async add(parcel) {
      seen.taken += parcel.runs.reduce((sum, { entries }) => sum + entries, parcel.entries.length);
      await twin.add(parcel);
    },
  };
  return { seen, twin: watching };
}

async function aTablet() {
  const [disk, name]: [FakeDisk, string] = [new Map(), freshName()];
  const store = await openTestLog(name, 'station-own');
  return { disk, name, store, ...watched(opfsTwin(testFiles(disk))) };
}

async function sealed(store: LogStore, name: string, entries: readonly Entry[]): Promise<void> {
  await store.merge({ entries, now: 1 });
  await sealAll(name);
}

async function expectSame({ store, twin }: { store: LogStore; twin: Twin }, all: ReturnType<typeof allOf>) {
  expect((await twin.look()).holding).toEqual(all);
  expect(await store.holding()).toEqual({ written: all, records: all.entries });
}

describe('a store and a journal that are packed at different places', () => {
  test('and hold the same open nothing', async () => {
    const { name, store, twin, seen } = await aTablet();
    await sealed(store, name, log.slice(0, 1200));
    await twin.add({ runs: packedRuns(log.slice(0, 700)), entries: log.slice(700, 1200) });
    await compareCopies({ log: store, twin }, 1);
    expect(seen).toEqual({ given: 0, taken: 1200 });
  });

  test('give a store that was wiped everything back, in runs', async () => {
    const { store, twin } = await aTablet();
    await twin.add({ runs: packedRuns(log.slice(0, 1200)), entries: log.slice(1200) });
    expect(await compareCopies({ log: store, twin }, 1)).toMatchObject({
      putBack: 1500,
      copied: 0,
      entries: 1500,
    });
    await expectSame({ store, twin }, allOf(log));
    expect((await store.parcel()).runs.length).toBeGreaterThan(0);
  });

  test('give a journal that was wiped everything back, in packed files', async () => {
    const { disk, name, store, twin } = await aTablet();
    await sealed(store, name, log);
    expect(await compareCopies({ log: store, twin }, 1)).toMatchObject({ putBack: 0, copied: 1500 });
    await expectSame({ store, twin }, allOf(log));
    expect(named(disk, 'packed-')).toHaveLength(1);
  });

  test('hand over no more than what the other lacks, where they end in lines', async () => {
    const { name, store, twin, seen } = await aTablet();
    await sealed(store, name, log.slice(0, 1000));
    await twin.add({ runs: packedRuns(log.slice(0, 700)), entries: log.slice(700, 1040) });
    expect(await compareCopies({ log: store, twin }, 1)).toMatchObject({ putBack: 40, copied: 0 });
    expect(seen).toEqual({ given: 40, taken: 1040 });
    await store.merge({ entries: log.slice(1040, 1060), now: 1 });
    expect(await compareCopies({ log: store, twin }, 1)).toMatchObject({ putBack: 0, copied: 20 });
    expect(seen.given).toBe(40);
    await expectSame({ store, twin }, allOf(log.slice(0, 1060)));
  });

  test('end inside of each other’s runs, beside a clone, and agree afterwards', async () => {
    const { name, store, twin } = await aTablet();
    await sealed(store, name, log.slice(0, 900));
    await twin.add(loose([...log.slice(0, 300), ...clone]));
    await twin.add({ runs: packedRuns(log.slice(400, 1100)), entries: [] });
    expect(await compareCopies({ log: store, twin }, 1)).toMatchObject({ putBack: 400, copied: 100 });
    await expectSame({ store, twin }, allOf(log.slice(0, 1100), clone));
    await compareCopies({ log: store, twin }, 1);
    await expectSame({ store, twin }, allOf(log.slice(0, 1100), clone));
  });

  test('mend a packed file whose damage is found, from the store', async () => {
    const { disk, name, store, twin } = await aTablet();
    await sealed(store, name, log);
    await twin.add({ runs: packedRuns(log), entries: [] });
    const [file] = [...filesOf(disk).values()];
    if (file) file.bytes = file.bytes.map((byte, at) => (at === 5000 ? byte ^ 1 : byte));
    // A later start: its worker verifies a file after the first look.
    const later = opfsTwin(testFiles(disk));
    await later.look();
    await expect.poll(() => named(disk, 'aside-')).toHaveLength(1);
    expect(await compareCopies({ log: store, twin: later }, 1)).toMatchObject({ copied: 1500, putBack: 0 });
    await expectSame({ store, twin: later }, allOf(log));
  });

  test('put a run that the store has lost right again', async () => {
    const { name, store, twin } = await aTablet();
    await sealed(store, name, log.slice(0, 1200));
    await twin.add({ runs: packedRuns(log.slice(0, 500)), entries: log.slice(500, 1200) });
    const db = await openDB(name);
    const left = await db.count('events');
    for (const kind of ['packs', 'runs']) await db.clear(kind);
    db.close();
    expect(await compareCopies({ log: store, twin }, 1)).toMatchObject({ putBack: 1200 - left, copied: 0 });
    expect((await store.entries()).map(({ link }) => link)).toEqual(
      log.slice(0, 1200).map(({ link }) => link),
    );
  });
});
