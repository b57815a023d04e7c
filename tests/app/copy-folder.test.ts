import { describe, expect, test } from 'vitest';
import { type ChosenFolder, type FolderParts, openCopyFolder } from '../../src/app/copy-folder.ts';
import { copyWork } from '../../src/app/copy-work.ts';
import type { CopyOrder } from '../../src/app/keeper.ts';
import { writeToFolder } from '../../src/app/outside-copy.ts';
import { chained } from '../../src/domain/log/chain.ts';
import { readBackup } from '../../src/store/backup/read-backup.ts';
import { foreignLog } from '../support/drafts.ts';

/** A folder of the maker's, as far as the app asks anything of it. */
function aFolder({ permission = 'granted' as PermissionState } = {}) {
  const files = new Map<string, Uint8Array>();
  const world = { permission, spoil: (bytes: Uint8Array) => bytes };
  const handle = (name: string) => ({
    getFile: async () => new Blob([new Uint8Array(files.get(name) ?? [])]),
    createWritable: async () => ({
      write: async (bytes: Uint8Array) => void files.set(name, world.spoil(bytes)),
      close: async () => undefined,
    }),
  });
  const folder = {
    name: 'Shared',
    queryPermission: async () => world.permission,
    requestPermission: async () => world.permission,
    async getFileHandle(name: string, { create = false } = {}) {
      if (!create && !files.has(name)) throw new DOMException('no such file', 'NotFoundError');
      return handle(name);
    },
  } as unknown as ChosenFolder;
  return { folder, files, world };
}

function keptFolders(first?: ChosenFolder): FolderParts['kept'] & { now: ChosenFolder | undefined } {
  const kept = {
    now: first,
    load: async () => kept.now,
    keep: async (folder: ChosenFolder) => {
      kept.now = folder;
    },
    forget: async () => {
      kept.now = undefined;
    },
  };
  return kept;
}

describe('the folder for copies', () => {
  test('is chosen once and remembered', async () => {
    const { folder } = aFolder();
    const kept = keptFolders();
    const first = await openCopyFolder({ pick: async () => folder, kept });
    expect(first.state.value).toEqual({ kind: 'none' });
    expect(await first.choose()).toBe(true);
    expect(first.state.value).toEqual({ kind: 'open', name: 'Shared' });
    const next = await openCopyFolder({ pick: async () => folder, kept });
    expect(next.state.value).toEqual({ kind: 'open', name: 'Shared' });
    await next.forget();
    expect(next.state.value).toEqual({ kind: 'none' });
    expect(kept.now).toBeUndefined();
  });

  test('waits for a tap where the browser wants the person’s word again', async () => {
    const { folder, world } = aFolder({ permission: 'prompt' });
    const opened = await openCopyFolder({ pick: async () => folder, kept: keptFolders(folder) });
    expect(opened.state.value).toEqual({ kind: 'asks', name: 'Shared' });
    world.permission = 'denied';
    expect(await opened.ask()).toBe(false);
    expect(opened.state.value.kind).toBe('asks');
    world.permission = 'granted';
    expect(await opened.ask()).toBe(true);
    expect(opened.state.value).toEqual({ kind: 'open', name: 'Shared' });
  });

  test('that the person did not choose after all leaves everything as it was', async () => {
    const pick = () => Promise.reject(new DOMException('called off', 'AbortError'));
    const opened = await openCopyFolder({ pick, kept: keptFolders() });
    expect(await opened.choose()).toBe(false);
    expect(opened.state.value).toEqual({ kind: 'none' });
  });

  test('is not spoken of where no page can choose one, nor missed where it cannot be remembered', async () => {
    const none = await openCopyFolder({ pick: undefined, kept: keptFolders(aFolder().folder) });
    expect(none.state.value).toEqual({ kind: 'no-way' });
    const refusing = { ...keptFolders(), load: () => Promise.reject(new Error('no database')) };
    const opened = await openCopyFolder({ pick: async () => aFolder().folder, kept: refusing });
    expect(opened.state.value).toEqual({ kind: 'none' });
  });
});

describe('a copy in the folder', () => {
  const whole = chained(foreignLog());
  const work = copyWork(null);
  const order = (entries = whole): CopyOrder => ({
    log: { kind: 'entries', entries },
    least: entries.length,
    about: { version: '1', wall: 0, zone: 'UTC', shop: 'Hafts & co' },
    day: '2026-03-02',
    kind: 'usual',
  });
  async function opened() {
    const { folder, files, world } = aFolder();
    const copies = await openCopyFolder({ pick: async () => folder, kept: keptFolders(folder) });
    const write = (entries = whole) => writeToFolder(copies, { work, order: order(entries), time: '17:30' });
    const counts = () =>
      [...files].map(([name, bytes]) => {
        const reading = readBackup(bytes);
        return [name, reading.kind === 'read' ? reading.entries.length : reading.why];
      });
    return { files, world, write, counts };
  }

  test('is named for its day, and a later one of the day with all of it takes its place', async () => {
    const { write, counts } = await opened();
    await write(whole.slice(0, 5));
    expect(await write()).toMatchObject({ entries: whole.length });
    expect(counts()).toEqual([['tallywright-hafts-co-2026-03-02.jsonl.gz', whole.length]]);
  });

  test('is never replaced by one that lacks something of it: both stay', async () => {
    const { write, counts } = await opened();
    await write();
    await write(whole.slice(0, 5));
    expect(counts()).toEqual([
      ['tallywright-hafts-co-2026-03-02.jsonl.gz', whole.length],
      ['tallywright-hafts-co-2026-03-02-1730.jsonl.gz', 5],
    ]);
  });

  test('does not take the place of a file that cannot be read', async () => {
    const { write, counts, files } = await opened();
    files.set('tallywright-hafts-co-2026-03-02.jsonl.gz', new TextEncoder().encode('somebody’s notes'));
    await write();
    expect(counts()).toEqual([
      ['tallywright-hafts-co-2026-03-02.jsonl.gz', 'not-a-backup'],
      ['tallywright-hafts-co-2026-03-02-1730.jsonl.gz', whole.length],
    ]);
  });

  test('is read back: one that came out wrong is not called good', async () => {
    const { write, world } = await opened();
    world.spoil = (bytes) => bytes.slice(0, -100);
    await expect(write()).rejects.toThrow('not what was written');
  });
});
