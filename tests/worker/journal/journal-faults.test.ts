import { describe, expect, test } from 'vitest';
import { chained, type Link } from '../../../src/domain/log/chain.ts';
import { foreignLog, spellDraft } from '../../support/drafts.ts';
import type { FakeDisk, Fault } from '../../support/fake-folder.ts';
import { endOf, filesOf, journalWindow } from '../../support/journal-windows.ts';

const entries = chained(foreignLog());
const links = entries.map(({ link }) => link);
const act = (name: string) => JSON.stringify({ act: name, drafts: [spellDraft('turn')], now: 1000 });
const faults: readonly Fault[] = ['throws', 'half', 'done', 'hangs'];

/** A disk with ten segments of windows that are shut: an entry each, the second with a torn end, an act in the first. */
async function olderDisk(): Promise<FakeDisk> {
  const disk: FakeDisk = new Map();
  for (const [at, entry] of entries.slice(0, 10).entries()) {
    const window = await journalWindow(disk);
    await window.add([JSON.stringify(entry)]);
    if (at === 0) await window.keepAct(act('tap-0'));
    window.die();
  }
  const [, torn] = filesOf(disk).values();
  if (torn) torn.bytes = Uint8Array.from([...torn.bytes, 0x7b, 0x22]);
  return disk;
}

/** What a day does: look, add, tidy, add on; it stops where a call never ends. Gives what was said to be kept. */
async function aDay(window: Awaited<ReturnType<typeof journalWindow>>) {
  const kept = { links: [] as Link[], acts: [] as string[], settled: [] as string[] };
  const add = (from: number, to: number) => async () => {
    await window.add(entries.slice(from, to).map((entry) => JSON.stringify(entry)));
    kept.links.push(...links.slice(from, to));
  };
  const work = [
    window.look,
    add(10, 12),
    async () => {
      await window.keepAct(act('tap-1'));
      kept.acts.push('tap-1');
    },
    window.tidy,
    add(12, 14),
    async () => {
      await window.settleAct('tap-0');
      kept.settled.push('tap-0');
    },
    window.look,
    add(14, 15),
    add(15, 17),
  ];
  for (const step of work) if ((await endOf(step())) === 'hangs') break;
  return kept;
}

async function expectAllKept(disk: FakeDisk, kept: Awaited<ReturnType<typeof aDay>>) {
  const later = await journalWindow(disk);
  const { unsettled, holding } = await later.look();
  const there = (await later.heads()).map(({ link }) => link);
  expect(there).toEqual(expect.arrayContaining([...links.slice(0, 10), ...kept.links]));
  expect(links.slice(0, 17)).toEqual(expect.arrayContaining([...there]));
  expect(new Set(there).size).toBe(holding.entries);
  const acts = unsettled.map((json) => JSON.parse(json).act);
  expect(acts).toEqual(expect.arrayContaining(kept.acts));
  if (kept.settled.length === 0) return;
  expect(acts).not.toContain('tap-0');
}

async function callsOfADay(): Promise<number> {
  const window = await journalWindow(await olderDisk());
  await aDay(window);
  return window.calls();
}

describe.each(faults)('when any one call %s', (how) => {
  test('what was said to be kept is there at the next start, and nothing that nobody added', async () => {
    const calls = await callsOfADay();
    expect(calls).toBeGreaterThan(60);
    for (let at = 1; at <= calls; at += 1) {
      const disk = await olderDisk();
      const window = await journalWindow(disk, { at, how });
      const kept = await aDay(window);
      window.die();
      await expectAllKept(disk, kept);
    }
  }, 30_000);
});

describe.each(faults.filter((how) => how !== 'hangs'))('after a call that %s', (how) => {
  test('the next add is tried for real', async () => {
    const calls = await callsOfADay();
    for (let at = 1; at <= calls; at += 1) {
      const disk = await olderDisk();
      const window = await journalWindow(disk, { at, how });
      await aDay(window);
      await window.add(entries.map((entry) => JSON.stringify(entry)));
      await window.keepAct(act('tap-1'));
      expect((await window.look()).holding.entries).toBe(links.length);
      window.die();
      const later = await journalWindow(disk);
      expect((await later.look()).holding.entries, `call ${at}`).toBe(links.length);
    }
  }, 30_000);
});

test('segments are folded only once the new one was read back, on a disk that writes other bytes than it was given', async () => {
  const probe = await journalWindow(await olderDisk());
  await probe.tidy();
  for (let at = 1; at <= probe.calls(); at += 1) {
    const disk = await olderDisk();
    const window = await journalWindow(disk, { at, how: 'spoils' });
    await endOf(window.tidy());
    window.die();
    const { holding, unsettled } = await (await journalWindow(disk)).look();
    expect(holding.entries, `call ${at}`).toBe(10);
    expect(unsettled).toHaveLength(1);
  }
});

test('what was written but could not be flushed is not believed, and is written anew', async () => {
  const disk: FakeDisk = new Map();
  const [first = '', second = ''] = entries.map((entry) => JSON.stringify(entry));
  const window = await journalWindow(disk, { at: 3, how: 'done' });
  await window.add([first]);
  await expect(window.add([second])).rejects.toThrow();
  expect(await window.look()).toMatchObject({ holding: { entries: 1 }, unreadable: 0 });
  await window.add([second]);
  expect(window.appends()).toBe(3);
  expect((await window.look()).holding.entries).toBe(2);
});

test('on a disk that takes nothing every add is refused, and none leaves a file behind', async () => {
  const disk: FakeDisk = new Map();
  for (let at = 2; at < 30; at += 1) {
    const window = await journalWindow(disk, { at: 2, how: 'half' });
    await expect(window.add([JSON.stringify(entries[0])])).rejects.toThrow();
    window.die();
  }
  expect([...(disk.get('tallywright')?.keys() ?? [])]).toEqual([]);
});
