import { describe, expect, test } from 'vitest';
import type { Entry } from '../../../src/domain/log/chain.ts';
import { holdingOf } from '../../../src/domain/log/holding.ts';
import type { PackedRun } from '../../../src/domain/packed/packed-run.ts';
import { entriesOfTwin, textsOfJournal, textsWith } from '../../support/copy-reads.ts';
import { spellDraft } from '../../support/drafts.ts';
import type { FakeDisk } from '../../support/fake-folder.ts';
import { filesOf, journalWindow, named } from '../../support/journal-windows.ts';
import { longLog, otherStory } from '../../support/long-logs.ts';
import { packedRuns } from '../../support/run-makers.ts';

const log = longLog(6000);
const other = longLog(700, 'station-y');
const clone = otherStory(log.slice(0, 900), 601);
const emptyDisk = (): FakeDisk => new Map();
const act = (name: string) => JSON.stringify({ act: name, drafts: [spellDraft('turn')], now: 1000 });
const textsOf = (entries: readonly Entry[]) => entries.map((entry) => JSON.stringify(entry));
const linksOf = (entries: readonly Entry[]) => entries.map(({ link }) => link);
const holding = (...parts: readonly (readonly Entry[])[]) => holdingOf(linksOf(parts.flat()));
const sizeOf = (disk: FakeDisk, name: string) => filesOf(disk).get(name)?.bytes.length ?? 0;

async function added(disk: FakeDisk, entries: readonly Entry[]): Promise<void> {
  const window = await journalWindow(disk);
  await window.add(textsOf(entries));
  window.die();
}

async function tidied(disk: FakeDisk): Promise<void> {
  const window = await journalWindow(disk);
  await window.look();
  await window.tidy();
  window.die();
}

/** A disk with these entries in one packed file. */
async function packedDisk(...parts: readonly (readonly Entry[])[]): Promise<FakeDisk> {
  const disk = emptyDisk();
  const window = await journalWindow(disk);
  await window.addRuns(parts.flatMap(packedRuns));
  window.die();
  return disk;
}

function flip(disk: FakeDisk, name: string, at: number): void {
  const file = filesOf(disk).get(name);
  if (!file) throw new Error('there is such a file');
  file.bytes = file.bytes.map((byte, place) => (place === at ? byte ^ (1 << (at % 8)) : byte));
}

describe('a fold of a few thousand entries', () => {
  test('packs them into one file of less than an eighth of the bytes, and gives them back as they were', async () => {
    const disk = emptyDisk();
    await added(disk, [...log.slice(0, 3900), ...other]);
    const [old = ''] = named(disk, '');
    const before = sizeOf(disk, old);
    await tidied(disk);
    const [name = '', ...more] = named(disk, '');
    expect([name.startsWith('packed-'), more]).toEqual([true, []]);
    expect(sizeOf(disk, name)).toBeLessThan(before / 8);
    const later = await journalWindow(disk);
    expect((await later.look()).holding).toEqual(holding(log.slice(0, 3900), other));
    expect((await textsOfJournal(later)).toSorted()).toEqual(
      textsOf([...log.slice(0, 3900), ...other]).toSorted(),
    );
  });

  test('leaves as lines what makes no run, and what is known of acts', async () => {
    const disk = emptyDisk();
    const first = await journalWindow(disk);
    await first.add(textsOf([...log.slice(0, 4200), ...other.slice(0, 3)]));
    await first.keepAct(act('tap-1'));
    await first.keepAct(act('tap-2'));
    await first.settleAct('tap-1');
    first.die();
    await tidied(disk);
    const later = await journalWindow(disk);
    const report = await later.look();
    expect(report).toEqual({
      holding: holding(log.slice(0, 4200), other.slice(0, 3)),
      unreadable: 0,
      unsettled: [act('tap-2')],
    });
    expect((await later.heads()).filter(({ entries }) => entries === 1)).toHaveLength(3);
  });

  test('of a cloned tablet keeps both stories', async () => {
    const disk = emptyDisk();
    await added(disk, [...log.slice(0, 4100), ...clone]);
    await tidied(disk);
    const later = await journalWindow(disk);
    expect((await later.look()).holding).toEqual(holding(log.slice(0, 4100), clone));
    expect(await textsWith(later, linksOf(clone))).toEqual(textsOf(clone));
  });

  test('takes in packed files no larger than what is folded anyway', async () => {
    const disk = await packedDisk(log.slice(0, 1000));
    for (const from of [1000, 1400]) {
      const window = await journalWindow(disk);
      await window.addRuns(packedRuns(log.slice(from, from + 400)));
      window.die();
    }
    const [large = ''] = named(disk, 'packed-');
    for (let at = 0; at < 9; at += 1) await added(disk, log.slice(1800 + at * 50, 1850 + at * 50));
    const bytes = filesOf(disk).get(large)?.bytes;
    await tidied(disk);
    // 450 young ones and 400, 850 and 400; then 1,000, which are no more than 1,250.
    expect(named(disk, '')).toHaveLength(1);
    expect((await (await journalWindow(disk)).look()).holding).toEqual(holding(log.slice(0, 2250)));
    await added(disk, log.slice(2250, 2260));
    for (let at = 0; at < 8; at += 1) await added(disk, log.slice(2260 + at * 5, 2265 + at * 5));
    const [whole = ''] = named(disk, 'packed-');
    await tidied(disk);
    expect(named(disk, 'packed-')).toEqual([whole]);
    expect(named(disk, 'journal-')).toHaveLength(1);
    expect(filesOf(disk).get(large)?.bytes).not.toBe(bytes);
  });

  test('writes each entry a few times in its life, however many days there are', async () => {
    const disk = emptyDisk();
    let written = 0;
    for (let day = 0; day < 60; day += 1) {
      await added(disk, log.slice(day * 100, day * 100 + 100));
      const window = await journalWindow(disk);
      await window.look();
      const before = new Set(named(disk, ''));
      await window.tidy();
      for (const name of named(disk, ''))
        if (!before.has(name)) written += (await entriesIn(disk, name)).length;
      window.die();
    }
    expect(named(disk, '').length).toBeLessThan(16);
    expect(written).toBeLessThan(60 * 100 * 8);
    expect((await (await journalWindow(disk)).look()).holding).toEqual(holding(log));
  });
});

/** How many entries one file holds, as a journal of this file alone. */
async function entriesIn(disk: FakeDisk, name: string): Promise<readonly string[]> {
  const file = filesOf(disk).get(name);
  if (!file) return [];
  const alone: FakeDisk = new Map([['tallywright', new Map([[name, { ...file, holder: undefined }]])]]);
  return textsOfJournal(await journalWindow(alone));
}

describe('a look', () => {
  test('reads the index of a packed file and not its runs, and after it nothing but what is new', async () => {
    const disk = await packedDisk(log, other);
    await added(disk, log.slice(0, 0));
    const [name = ''] = named(disk, 'packed-');
    const window = await journalWindow(disk);
    expect((await window.look()).holding).toEqual(holding(log, other));
    expect(window.bytesRead()).toBeLessThanOrEqual(4096);
    expect(sizeOf(disk, name)).toBeGreaterThan(20 * 4096);
    const before = window.bytesRead();
    await window.look();
    expect(window.bytesRead()).toBe(before);
  });

  test('costs as much at ten times the entries', async () => {
    const bytes: number[] = [];
    for (const length of [600, 6000]) {
      const window = await journalWindow(await packedDisk(log.slice(0, length)));
      await window.look();
      bytes.push(window.bytesRead());
    }
    expect(bytes[1]).toBe(bytes[0]);
  });

  test('counts no entry twice that is in two files, and opens no run for it where the ends tell', async () => {
    const disk = await packedDisk(log.slice(0, 2000));
    await added(disk, log.slice(1500, 2100));
    const twice = await packedDisk(log.slice(0, 1000), log.slice(1000, 2000));
    for (const [name, file] of filesOf(twice)) filesOf(disk).set(`${name}-again`, file);
    const window = await journalWindow(disk);
    expect((await window.look()).holding).toEqual(holding(log.slice(0, 2100)));
    const runs = named(disk, 'packed-').reduce((sum, name) => sum + sizeOf(disk, name), 0);
    const lines = named(disk, 'journal-').reduce((sum, name) => sum + sizeOf(disk, name), 0);
    expect(window.bytesRead()).toBeLessThan(lines + runs / 2);
  });

  test('counts runs once that overlap anyhow, of two stories too', async () => {
    const disk = emptyDisk();
    for (const part of [log.slice(0, 700), log.slice(500, 900), clone, log.slice(300, 350)]) {
      const apart = await packedDisk(part);
      const folder = disk.get('tallywright') ?? new Map();
      disk.set('tallywright', folder);
      for (const [name, file] of filesOf(apart)) folder.set(name, file);
    }
    await added(disk, [...clone.slice(0, 9), ...log.slice(890, 910)]);
    const window = await journalWindow(disk);
    expect((await window.look()).holding).toEqual(holding(log.slice(0, 910), clone));
    expect((await textsOfJournal(window)).toSorted()).toEqual(
      textsOf([...log.slice(0, 910), ...clone]).toSorted(),
    );
  });
});

describe('runs that are added', () => {
  test('lie in a packed file of their own, and in no line', async () => {
    const disk = await packedDisk(log.slice(0, 5000), other);
    expect(named(disk, '')).toHaveLength(1);
    const window = await journalWindow(disk);
    const runs: PackedRun[] = [...(await window.parcel(await window.heads())).runs];
    expect(runs.map(({ entries }) => entries).toSorted()).toEqual([5000, 700]);
    expect(
      await entriesOfTwin({ heads: window.heads, parcel: async () => ({ runs, entries: [] }) }),
    ).toHaveLength(5700);
  });

  test('of which a part is held bring what is new', async () => {
    const disk = await packedDisk(log.slice(0, 1000));
    await added(disk, log.slice(1000, 1010));
    const window = await journalWindow(disk);
    await window.addRuns(packedRuns(log.slice(500, 1500)));
    await window.addRuns(packedRuns(clone));
    const after = named(disk, '').length;
    await window.addRuns(packedRuns(log.slice(0, 1500)));
    expect(named(disk, '')).toHaveLength(after);
    expect((await window.look()).holding).toEqual(holding(log.slice(0, 1500), clone));
  });

  test('whose chain does not hold are refused, and leave nothing behind', async () => {
    const disk = emptyDisk();
    const window = await journalWindow(disk);
    const [run] = packedRuns(log.slice(0, 300));
    if (!run) throw new Error('there is a run');
    const wall = run.columns.wall.slice();
    wall[20] = (wall[20] ?? 0) + 1;
    await expect(window.addRuns([{ ...run, columns: { ...run.columns, wall } }])).rejects.toThrow();
    expect(named(disk, '')).toEqual([]);
    expect((await window.look()).holding.entries).toBe(0);
  });

  test('make single entries of them unnecessary', async () => {
    const disk = await packedDisk(log.slice(0, 1000));
    const window = await journalWindow(disk);
    await window.look();
    await window.add(textsOf(log.slice(700, 1003)));
    expect((await window.look()).holding).toEqual(holding(log.slice(0, 1003)));
    expect((await window.heads()).map(({ entries }) => entries)).toEqual([1000, 1, 1, 1]);
    expect(window.appends()).toBe(1);
  });
});

describe('a packed file with a bit flipped', () => {
  test('at any 97th byte is found when it is verified, holds its other runs, and is mended by adding again', async () => {
    const [ours, theirs] = [log.slice(0, 120), other.slice(0, 120)];
    const sound = await packedDisk(ours, theirs);
    const [name = ''] = named(sound, 'packed-');
    const bytes = filesOf(sound).get(name)?.bytes ?? new Uint8Array();
    for (let at = 0; at < bytes.length; at += 97) {
      const disk: FakeDisk = new Map([['tallywright', new Map([[name, { bytes, holder: undefined }]])]]);
      flip(disk, name, at);
      const window = await journalWindow(disk);
      await window.look();
      await window.tidy();
      await window.verify();
      const kept = await window.look();
      const found = await textsOfJournal(window);
      expect(kept.holding, `byte ${at}`).toEqual(holdingOf(found.map((text) => JSON.parse(text).link)));
      expect(kept.holding.entries % 120, `byte ${at}`).toBe(0);
      expect(kept.unreadable, `byte ${at}`).toBe(0);
      expect(named(disk, 'aside-'), `byte ${at}`).toEqual([`aside-${name}`]);
      expect(kept.holding.entries, `byte ${at}`).toBeGreaterThanOrEqual(120);
      window.die();
      if (at % 8 > 0) continue;
      await window.addRuns([...packedRuns(ours), ...packedRuns(theirs)]);
      expect((await window.look()).holding).toEqual(holding(ours, theirs));
      window.die();
      expect((await (await journalWindow(disk)).look()).holding.entries).toBe(240);
    }
  }, 120_000);

  test('is not believed once it was opened: the journal says that it lacks those entries', async () => {
    const disk = await packedDisk(log.slice(0, 300), other.slice(0, 300));
    const [name = ''] = named(disk, '');
    const window = await journalWindow(disk);
    await window.look();
    flip(disk, name, sizeOf(disk, name) - 300);
    const { runs } = await window.parcel(await window.heads());
    expect(runs).toHaveLength(1);
    expect((await window.look()).holding.entries).toBe(300);
  });

  test('while another window holds it is reported short all the same', async () => {
    const disk = await packedDisk(log.slice(0, 300), other.slice(0, 300));
    const [name = ''] = named(disk, '');
    const window = await journalWindow(disk);
    await window.look();
    flip(disk, name, sizeOf(disk, name) - 300);
    const file = filesOf(disk).get(name);
    if (file) file.holder = {};
    await window.verify();
    expect(await window.look()).toMatchObject({ holding: { entries: 300 }, unreadable: 1 });
  });
});

test('a packed file cut at any 97th byte gives the runs that are whole', async () => {
  const sound = await packedDisk(log.slice(0, 300), other.slice(0, 300));
  const [name = ''] = named(sound, 'packed-');
  const bytes = filesOf(sound).get(name)?.bytes ?? new Uint8Array();
  const ends = [...bytes.keys()].filter((at) => bytes[at] === 10);
  for (let size = 0; size < bytes.length; size += 97) {
    const file = { bytes: bytes.slice(0, size), holder: undefined };
    const window = await journalWindow(new Map([['tallywright', new Map([[name, file]])]]));
    const whole = Math.max(0, ends.filter((end) => end < size).length - 1);
    expect((await window.look()).holding.entries, `cut at ${size}`).toBe(300 * whole);
  }
});
