import { describe, expect, test } from 'vitest';
import { chained, type Link } from '../../../src/domain/log/chain.ts';
import { emptyHolding, holdingOf } from '../../../src/domain/log/holding.ts';
import { textsWith } from '../../support/copy-reads.ts';
import { foreignLog, spellDraft } from '../../support/drafts.ts';
import type { FakeDisk } from '../../support/fake-folder.ts';
import { filesOf, journalWindow, named, oneByOne } from '../../support/journal-windows.ts';

const entries = chained(foreignLog());
const texts = entries.map((entry) => JSON.stringify(entry));
const links = entries.map(({ link }) => link);
const act = (name: string) => JSON.stringify({ act: name, drafts: [spellDraft('turn')], now: 1000 });
const emptyDisk = (): FakeDisk => new Map();

describe('a journal', () => {
  test('writes what waits with one flush', async () => {
    const window = await journalWindow(emptyDisk());
    await Promise.all([...texts.map((text) => window.add([text])), window.settleAct('tap-1')]);
    expect(window.appends()).toBeLessThanOrEqual(2);
    expect((await window.look()).holding).toEqual(holdingOf(links));
  });

  test('writes nothing for entries that it has', async () => {
    const disk = emptyDisk();
    await oneByOne(disk, texts);
    const window = await journalWindow(disk);
    await window.look();
    await window.add(texts);
    expect(window.appends()).toBe(0);
  });

  test('of a window writes to a segment of its own, beside one that another window holds', async () => {
    const disk = emptyDisk();
    const [here, there] = [await journalWindow(disk), await journalWindow(disk)];
    await here.add(texts.slice(0, 2));
    await there.add(texts.slice(2, 4));
    expect(named(disk, 'journal-')).toHaveLength(2);
    expect((await there.look()).holding).toEqual(holdingOf(links.slice(0, 4)));
    expect(await textsWith(there, links.slice(0, 2))).toEqual(texts.slice(0, 2));
  });

  test('takes another name when its own is taken', async () => {
    const disk = emptyDisk();
    const probe = await journalWindow(disk);
    await probe.add(texts.slice(0, 1));
    const [name = ''] = named(disk, 'journal-');
    const next = name.replace(/w(\d+)-1$/, (_, number) => `w${Number(number) + 1}-1`);
    filesOf(disk).set(next, { bytes: new Uint8Array(), holder: {} });
    const window = await journalWindow(disk);
    await window.add(texts.slice(1, 2));
    expect(named(disk, 'journal-')).toContain(next.replace(/1$/, '2'));
  });

  test('skips and counts a line with a flipped bit, and reads all others', async () => {
    const disk = emptyDisk();
    const window = await journalWindow(disk);
    await window.add(texts);
    window.die();
    const [file] = filesOf(disk).values();
    if (!file) throw new Error('there is a segment');
    const at = texts.slice(0, 3).join('\n').length - 40;
    file.bytes[at] = (file.bytes[at] ?? 0) ^ 4;
    const later = await journalWindow(disk);
    expect(await later.look()).toMatchObject({
      holding: holdingOf(links.toSpliced(2, 1)),
      unreadable: 1,
    });
    expect(await textsWith(later, links)).toEqual(texts.toSpliced(2, 1));
  });

  test('with a bit flipped at any place loses two entries at most, says so, and takes them again', async () => {
    const disk = emptyDisk();
    const window = await journalWindow(disk);
    await window.add(texts.slice(0, 3));
    window.die();
    const [file] = filesOf(disk).values();
    if (!file) throw new Error('there is a segment');
    const sound = file.bytes;
    for (const at of sound.keys()) {
      const flipped = sound.map((byte, place) => (place === at ? byte ^ (1 << (at % 8)) : byte));
      file.bytes = flipped;
      const later = await journalWindow(disk);
      const { unreadable } = await later.look();
      const found = await textsWith(later, links);
      expect(unreadable, `bit at ${at}`).toBeGreaterThan(0);
      expect(found.length).toBeGreaterThan(0);
      expect(texts.slice(0, 3)).toEqual(expect.arrayContaining([...found]));
      await later.add(texts.slice(0, 3));
      expect((await later.look()).holding).toEqual(holdingOf(links.slice(0, 3)));
      expect(file.bytes).toBe(flipped);
      later.die();
      for (const name of named(disk, '').slice(1)) filesOf(disk).delete(name);
    }
  }, 20_000);

  test('leaves out an entry that was changed on the disk since it was looked at', async () => {
    const disk = emptyDisk();
    const window = await journalWindow(disk);
    await window.add(texts.slice(0, 2));
    const [file] = filesOf(disk).values();
    if (file) file.bytes[150] = (file.bytes[150] ?? 0) ^ 1;
    expect(await textsWith(window, links.slice(0, 2))).toEqual(texts.slice(1, 2));
  });

  test('cut at any length gives what was whole, and counts a torn end once', async () => {
    const disk = emptyDisk();
    const window = await journalWindow(disk);
    await window.add(texts.slice(0, 3));
    window.die();
    const [file] = filesOf(disk).values();
    if (!file) throw new Error('there is a segment');
    const whole = file.bytes;
    for (let size = 0; size <= whole.length; size += 1) {
      file.bytes = whole.slice(0, size);
      const lines = file.bytes.filter((byte) => byte === 10).length;
      const isTorn = size > 0 && whole[size - 1] !== 10;
      expect(await (await journalWindow(disk)).look(), `cut at ${size}`).toMatchObject({
        holding: holdingOf(links.slice(0, lines)),
        unreadable: isTorn ? 1 : 0,
      });
    }
  });

  test('does not call torn what another window is still writing', async () => {
    const disk = emptyDisk();
    const window = await journalWindow(disk);
    await window.add(texts.slice(0, 3));
    const [file] = filesOf(disk).values();
    if (!file) throw new Error('there is a segment');
    file.bytes = file.bytes.slice(0, -10);
    expect((await (await journalWindow(disk)).look()).unreadable).toBe(0);
  });

  test('notices that a segment was cut or taken away while it was open, and forgets what was in it', async () => {
    const disk = emptyDisk();
    await oneByOne(disk, texts.slice(0, 3));
    const window = await journalWindow(disk);
    expect((await window.look()).holding.entries).toBe(3);
    const [first = '', second = ''] = named(disk, 'journal-');
    filesOf(disk).delete(first);
    filesOf(disk).set(second, { bytes: new Uint8Array(9), holder: undefined });
    expect((await window.look()).holding).toEqual(holdingOf(links.slice(2, 3)));
    await window.add(texts.slice(0, 3));
    expect((await window.look()).holding).toEqual(holdingOf(links.slice(0, 3)));
  });

  test('keeps a settled act settled, wherever the two lines lie', async () => {
    const disk = emptyDisk();
    const [here, there] = [await journalWindow(disk), await journalWindow(disk)];
    await here.keepAct(act('tap-1'));
    await here.keepAct(act('tap-2'));
    await there.settleAct('tap-1');
    expect((await here.look()).unsettled).toEqual([act('tap-2')]);
  });
});

test('a long journal is read on line by line, over the borders of what is read at a time', async () => {
  const disk = emptyDisk();
  const [event] = foreignLog();
  if (!event) throw new Error('the log has events');
  const long = chained(
    [700_000, 5, 1_500_000, 348_000].map((length, at) => ({
      ...event,
      seq: at + 1,
      note: 'ü'.repeat(length),
    })),
  );
  const window = await journalWindow(disk);
  for (const entry of long) await window.add([JSON.stringify(entry)]);
  window.die();
  const later = await journalWindow(disk);
  expect((await later.look()).holding).toEqual(holdingOf(long.map(({ link }) => link)));
  expect(
    await textsWith(
      later,
      long.map(({ link }) => link),
    ),
  ).toEqual(long.map((entry) => JSON.stringify(entry)));
});

test('a look reads each byte of a long journal once, and later only what has come to it', async () => {
  const disk = emptyDisk();
  const [event] = foreignLog();
  if (!event) throw new Error('the log has events');
  const long = chained(Array.from({ length: 20_000 }, (_, at) => ({ ...event, seq: at + 1 })));
  const written = long.map((entry) => JSON.stringify(entry));
  const living = await journalWindow(disk);
  await living.add(written.slice(0, -1));
  const [file] = filesOf(disk).values();
  const size = file?.bytes.length ?? 0;
  const window = await journalWindow(disk);
  expect((await window.look()).holding.entries).toBe(19_999);
  // The line that is cut by the end of a stretch of 1 MiB is read again with the next.
  const stretches = Math.ceil(size / 2 ** 20);
  const longest = Math.max(...written.map(({ length }) => length)) + 1;
  expect(window.bytesRead()).toBeLessThan(size + stretches * longest);
  const before = window.bytesRead();
  await window.look();
  expect(window.bytesRead()).toBe(before);
  await living.add(written.slice(-1));
  expect((await window.look()).holding.entries).toBe(20_000);
  expect(window.bytesRead() - before).toBe((written.at(-1)?.length ?? 0) + 1);
}, 20_000);

test('a copy of nothing holds nothing and knows no link', async () => {
  const window = await journalWindow(emptyDisk());
  expect(await window.look()).toEqual({ holding: emptyHolding, unreadable: 0, unsettled: [] });
  expect(await textsWith(window, links as readonly Link[])).toEqual([]);
});
