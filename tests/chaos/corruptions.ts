/** What can befall the files of a browser's database while the browser is shut. */
import { readdirSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Random } from '../../src/domain/chance/seeded-random.ts';

/** The folder in which Chromium keeps IndexedDB of the app at `url`; the profile is of a browser that was shut. */
export function databaseFolder(profile: string, url: string): string {
  const { protocol, hostname, port } = new URL(url);
  const origin = `${protocol.replace(':', '')}_${hostname}_${port}`;
  return join(profile, 'Default', 'IndexedDB', `${origin}.indexeddb.leveldb`);
}

/** The newest write-ahead log: the numbers in the names rise. */
function logOf(folder: string): string {
  const newest = readdirSync(folder)
    .filter((name) => name.endsWith('.log'))
    .sort()
    .at(-1);
  if (!newest) throw new Error('The database has no log.');
  return join(folder, newest);
}

function rewrite(path: string, change: (bytes: Buffer) => void): void {
  const bytes = readFileSync(path);
  change(bytes);
  writeFileSync(path, bytes);
}

function manifestOf(folder: string): string {
  const name = readdirSync(folder).find((each) => each.startsWith('MANIFEST-'));
  if (!name) throw new Error('The database has no manifest.');
  return join(folder, name);
}

type Corruption = (folder: string, random: Random) => void;

export const corruptions: Readonly<Record<string, Corruption>> = {
  'log cut': (folder, random) => {
    const log = logOf(folder);
    truncateSync(log, Math.floor(readFileSync(log).length * (0.1 + 0.85 * random())));
  },
  'bit flipped': (folder, random) =>
    rewrite(logOf(folder), (bytes) => {
      const at = Math.floor(bytes.length * random());
      bytes.writeUInt8((bytes[at] ?? 0) ^ (1 << Math.floor(8 * random())), at);
    }),
  'folder deleted': (folder) => rmSync(folder, { recursive: true }),
  'manifest garbage': (folder, random) =>
    rewrite(manifestOf(folder), (bytes) => {
      for (let at = 0; at < bytes.length; at += 1) bytes.writeUInt8(Math.floor(256 * random()), at);
    }),
  'folder replaced by a file': (folder) => {
    rmSync(folder, { recursive: true });
    writeFileSync(folder, 'not a folder');
  },
  'CURRENT deleted': (folder) => rmSync(join(folder, 'CURRENT')),
};
