import { describe, expect, test } from 'vitest';
import { chained } from '../../../src/domain/log/chain.ts';
import { holdingOf } from '../../../src/domain/log/holding.ts';
import { openJournal } from '../../../src/worker/journal/journal.ts';
import { folderIn } from '../../../src/worker/journal/opfs-folder.ts';
import { foreignLog } from '../../support/drafts.ts';
import { type FakeOpfsOptions, fakeOpfs } from '../../support/fake-opfs.ts';

const bytes = (...all: number[]) => Uint8Array.from(all);

/** A disk with a file of three bytes on it, and two windows that see it. */
async function aDisk(options?: FakeOpfsOptions) {
  const disk = fakeOpfs(options);
  const [here, there] = [folderIn(disk.open), folderIn(disk.open)];
  const file = await here.create('one');
  return { disk, here, there, file };
}

describe('a folder of the browser', () => {
  test('keeps through a power cut what was said to be added', async () => {
    const disk = fakeOpfs();
    const entries = chained(foreignLog());
    const aWindow = (writer: string) =>
      openJournal({
        folder: folderIn(disk.open),
        writer,
        turn: async () => {},
        alive: () => {},
        chance: () => 0,
      });
    const window = aWindow('a');
    for (const entry of entries) await window.add([JSON.stringify(entry)]);
    disk.cutPower();
    const report = await aWindow('b').look();
    expect(report.holding).toEqual(holdingOf(entries.map(({ link }) => link)));
    expect(report.unreadable).toBe(0);
  });

  test('adds at the end, also to a file that was there', async () => {
    const { there, file } = await aDisk();
    await file.append(bytes(1, 2));
    file.release();
    const again = await there.hold('one');
    await again?.append(bytes(3));
    expect(await there.read('one', { from: 0, to: 9 })).toEqual(bytes(1, 2, 3));
  });

  test('does not say that it added what was written in part', async () => {
    const { file } = await aDisk({ most: 2 });
    await expect(file.append(bytes(1, 2, 3))).rejects.toThrow('part');
  });

  test('gives a file to one window at a time, and reads for the others meanwhile', async () => {
    const { here, there, file } = await aDisk();
    await file.append(bytes(1, 2, 3));
    expect(await there.hold('one')).toBeUndefined();
    for (const folder of [here, there])
      expect(await folder.read('one', { from: 1, to: 9 })).toEqual(bytes(2, 3));
    file.release();
    expect(await there.hold('one')).toBeDefined();
  });

  test('takes a file that has gone for one that another window has', async () => {
    const { there } = await aDisk();
    expect(await there.hold('none')).toBeUndefined();
  });

  test('makes no file over another, and leaves that one free', async () => {
    const { there, file } = await aDisk();
    await file.append(bytes(1));
    file.release();
    await expect(there.create('one')).rejects.toThrow();
    expect(await there.hold('one')).toBeDefined();
    expect(await there.read('one', { from: 0, to: 9 })).toEqual(bytes(1));
  });

  test('lists files with their sizes, without those that go meanwhile', async () => {
    const { disk, here, file } = await aDisk();
    await file.append(bytes(1, 2, 3));
    await here.create('two');
    disk.fleeting.add('two');
    expect(await here.list()).toEqual([{ name: 'one', size: 3 }]);
  });
});

describe.each(['always', 'to free names', 'never'] as const)('where the engine moves files %s', (moves) => {
  test.each(['free', 'taken'])('a file takes a name that is %s, and no power cut undoes it', async (name) => {
    const { disk, here, file } = await aDisk({ moves });
    await file.append(bytes(1, 2, 3));
    file.release();
    const longer = await here.create('taken');
    await longer.append(bytes(9, 9, 9, 9, 9));
    longer.release();
    await here.rename('one', name);
    disk.cutPower();
    expect(await here.read(name, { from: 0, to: 9 })).toEqual(bytes(1, 2, 3));
    expect([...disk.files.keys()]).not.toContain('one');
    expect(await here.hold(name)).toBeDefined();
  });
});

test('a file that can be copied in part only keeps its own name', async () => {
  const { here, file, disk } = await aDisk({ moves: 'never', most: 2 });
  await file.append(bytes(1, 2));
  await file.append(bytes(3, 4));
  file.release();
  await expect(here.rename('one', 'two')).rejects.toThrow('part');
  expect(disk.files.get('one')?.bytes).toEqual(bytes(1, 2, 3, 4));
});
