import { describe, expect, test } from 'vitest';
import { chained } from '../../../src/domain/log/chain.ts';
import { holdingOf } from '../../../src/domain/log/holding.ts';
import { settledLine } from '../../../src/domain/log/journal-line.ts';
import type { Folder } from '../../../src/worker/journal/folder.ts';
import { type Journal, openJournal } from '../../../src/worker/journal/journal.ts';
import { textsWith } from '../../support/copy-reads.ts';
import { foreignLog, spellDraft } from '../../support/drafts.ts';
import { type FakeDisk, fakeWindow } from '../../support/fake-folder.ts';
import { filesOf, journalWindow, named, oneByOne } from '../../support/journal-windows.ts';

const entries = chained(foreignLog());
const texts = entries.map((entry) => JSON.stringify(entry));
const links = entries.map(({ link }) => link);
const act = (name: string) => JSON.stringify({ act: name, drafts: [spellDraft('turn')], now: 1000 });
const emptyDisk = (): FakeDisk => new Map();

/** A window whose folder does some things in another way. */
async function foldingWindow(
  disk: FakeDisk,
  otherWay: (folder: Folder) => Partial<Folder>,
): Promise<Journal> {
  const folder = await fakeWindow(disk).openFolder('tallywright');
  return openJournal({
    folder: { ...folder, ...otherWay(folder) },
    writer: 'folding',
    turn: async () => {},
    alive: () => {},
    chance: () => 0,
  });
}

describe('folding segments', () => {
  test('leaves eight as they are, and folds nine into one that says the same', async () => {
    const disk = emptyDisk();
    await oneByOne(disk, texts.slice(0, 8));
    await (await journalWindow(disk)).tidy();
    expect(named(disk, 'journal-')).toHaveLength(8);
    await oneByOne(disk, texts.slice(8, 9));
    const window = await journalWindow(disk);
    await window.look();
    await window.tidy();
    expect(named(disk, '')).toHaveLength(1);
    expect((await window.look()).holding).toEqual(holdingOf(links.slice(0, 9)));
    expect((await textsWith(window, links.slice(0, 9))).toSorted()).toEqual(texts.slice(0, 9).toSorted());
  });

  test('keeps unsettled acts, and that others are settled', async () => {
    const disk = emptyDisk();
    const first = await journalWindow(disk);
    await first.keepAct(act('tap-1'));
    await first.keepAct(act('tap-2'));
    await first.settleAct('tap-2');
    first.die();
    await oneByOne(disk, texts.slice(0, 9));
    await (await journalWindow(disk)).tidy();
    const later = await journalWindow(disk);
    await later.keepAct(act('tap-2'));
    expect((await later.look()).unsettled).toEqual([act('tap-1')]);
    const [only] = filesOf(disk).values();
    expect(new TextDecoder().decode(only?.bytes)).toContain(settledLine('tap-2'));
  });

  test('leaves alone what another window holds, however many there are', async () => {
    const disk = emptyDisk();
    const windows = await Promise.all(texts.slice(0, 12).map(() => journalWindow(disk)));
    await Promise.all(windows.map((window, at) => window.add(texts.slice(at, at + 1))));
    await (await journalWindow(disk)).tidy();
    expect(named(disk, 'journal-')).toHaveLength(12);
    for (const window of windows.slice(0, 8)) window.die();
    await (await journalWindow(disk)).tidy();
    expect(named(disk, 'journal-')).toHaveLength(12);
    for (const window of windows.slice(0, 9)) window.die();
    await (await journalWindow(disk)).tidy();
    expect(named(disk, 'journal-')).toHaveLength(4);
    const [held] = windows.slice(-1);
    await held?.add(texts.slice(12));
    expect((await held?.look())?.holding).toEqual(holdingOf([...links.slice(0, 12), ...links.slice(12)]));
  });

  test('lays segments aside that have a line which says nothing, and keeps them byte by byte', async () => {
    const disk = emptyDisk();
    await oneByOne(disk, texts.slice(0, 10));
    const [flipped = '', torn = ''] = named(disk, 'journal-');
    const file = filesOf(disk).get(flipped);
    if (file) file.bytes[20] = 120;
    const cut = filesOf(disk).get(torn);
    if (cut) cut.bytes = cut.bytes.slice(0, 50);
    const bytes = [file?.bytes.slice(), cut?.bytes.slice()];
    const window = await journalWindow(disk);
    expect((await window.look()).unreadable).toBe(2);
    await window.tidy();
    expect(named(disk, 'aside-')).toEqual([`aside-${flipped}`, `aside-${torn}`]);
    expect(named(disk, 'aside-').map((name) => filesOf(disk).get(name)?.bytes)).toEqual(bytes);
    expect(await window.look()).toMatchObject({ holding: holdingOf(links.slice(2, 10)), unreadable: 0 });
  });

  test('while another window looks: it finds everything where it now lies', async () => {
    const disk = emptyDisk();
    await oneByOne(disk, texts.slice(0, 9));
    const reader = await journalWindow(disk);
    await reader.look();
    await (await journalWindow(disk)).tidy();
    expect(await textsWith(reader, links.slice(0, 9))).toHaveLength(9);
    expect((await reader.look()).holding).toEqual(holdingOf(links.slice(0, 9)));
  });

  test('loses nothing that another window adds, and is shut, while the segments are being gathered', async () => {
    const disk = emptyDisk();
    await oneByOne(disk, texts.slice(0, 9));
    const living = await journalWindow(disk);
    await living.add(texts.slice(9, 10));
    let holds = 0;
    const folding = await foldingWindow(disk, (folder) => ({
      async hold(name) {
        holds += 1;
        if (holds === 1) {
          await living.add(texts.slice(10, 11));
          living.die();
        }
        return folder.hold(name);
      },
    }));
    await folding.tidy();
    expect(named(disk, '')).toEqual(['journal-folding-1']);
    expect((await (await journalWindow(disk)).look()).holding).toEqual(holdingOf(links.slice(0, 11)));
  });

  test('in a folder that lets no segment go leaves no further copy behind', async () => {
    const disk = emptyDisk();
    await oneByOne(disk, texts.slice(0, 9));
    const before = named(disk, '');
    const folding = await foldingWindow(disk, (folder) => ({
      remove: (name) => (before.includes(name) ? Promise.reject(new Error('no')) : folder.remove(name)),
    }));
    await expect(folding.tidy()).rejects.toThrow('no');
    expect(named(disk, '')).toEqual(before);
  });

  test('in two windows at once loses nothing', async () => {
    const disk = emptyDisk();
    await oneByOne(disk, texts.slice(0, 20));
    const windows = await Promise.all([journalWindow(disk), journalWindow(disk)]);
    await Promise.allSettled(windows.map(({ tidy }) => tidy()));
    for (const { look } of windows) expect((await look()).holding).toEqual(holdingOf(links.slice(0, 20)));
  });
});
