/** Takes a backup in: as the app restores it, as one record an event, and as rows of SQLite. */
import { copyWork } from '../../../src/app/copy-work.ts';
import { openRestore } from '../../../src/app/restore.ts';
import { mergeInto } from '../../../src/app/session-errands.ts';
import { type Entry, entryAfter, type Link, noLink } from '../../../src/domain/log/chain.ts';
import { writeBackup } from '../../../src/store/backup/write-backup.ts';
import { longLog } from '../../support/long-log.ts';
import { openLog } from './open-log.ts';
import { openPlainStore, putAll } from './plain-store.ts';

export const importers = ['ours', 'oneRecordEach', 'SQLite'] as const;
/** Milliseconds from the file to everything on disk, the stores being open; of ours those, too, until it was read and judged. */
export type Took = Record<(typeof importers)[number] | 'oursRead', number>;

interface Backup {
  readonly events: number;
  /** The file, and its lines as they are once it is unpacked, which is spared the others. */
  readonly packed: Uint8Array;
  readonly lines: Uint8Array;
}

export async function importInTurns(log: { events: number; until: number; turn: number }): Promise<Took> {
  const backup = backupOf(log);
  const took: Took = { ours: 0, oursRead: 0, oneRecordEach: 0, SQLite: 0 };
  const works = {
    ours: await restoreOf(backup, {
      now: log.until,
      onRead(ms) {
        took.oursRead = ms;
      },
    }),
    oneRecordEach: await recordsOf(backup),
    SQLite: await sqliteImport(backup),
  };
  for (let each = 0; each < importers.length; each += 1) {
    const name = importers[(each + log.turn) % importers.length] ?? 'ours';
    // What the one before has left to the disk, or a worker whose code is still coming, is not to be measured with it.
    await new Promise((resolve) => setTimeout(resolve, 3000));
    const start = performance.now();
    await works[name]();
    took[name] = performance.now() - start;
  }
  return took;
}

function backupOf({ events, until }: { events: number; until: number }): Backup {
  const links = new Map<string, Link>();
  const entries: Entry[] = [];
  for (const event of longLog({ events, until })) {
    const entry = entryAfter(links.get(event.station) ?? noLink, event);
    links.set(event.station, entry.link);
    entries.push(entry);
  }
  const about = { version: '0.0.0', wall: until, zone: 'Europe/London', shop: null };
  const lines = entries.map((entry) => `${JSON.stringify(entry)}\n`).join('');
  return { events, packed: writeBackup({ entries, about }), lines: new TextEncoder().encode(lines) };
}

/** Restores into an empty store that is open, as the app's is; the worker stands ready since the person began to choose a file. */
async function restoreOf(
  { packed, events }: Backup,
  { now, onRead }: { now: number; onRead: (ms: number) => void },
): Promise<() => Promise<void>> {
  const log = await openLog('restored');
  const work = copyWork(null);
  work.ahead();
  let added = 0;
  const restoring = openRestore({
    session: { entries: log.entries, restore: (parcel) => mergeInto(log, { ...parcel, now }) },
    work,
    log: async () => ({ kind: 'store', name: 'restored' }),
    keepBefore: () => Promise.reject(new Error('there is nothing to keep')),
    photos: null,
    onDone(restored) {
      added = restored.added;
    },
    onPhotos() {},
  });
  const file = new Blob([Uint8Array.from(packed)]);
  return async () => {
    const start = performance.now();
    await restoring.read([{ name: 'backup', size: packed.length, content: async () => file }]);
    onRead(performance.now() - start);
    await restoring.add();
    log.close();
    if (added !== events) throw new Error(`${added} of ${events} were restored`);
  };
}

async function recordsOf({ lines, events }: Backup): Promise<() => Promise<void>> {
  const db = await openPlainStore({ name: 'records', keyPath: ['station', 'seq'] });
  return async () => {
    const all = new TextDecoder().decode(lines).split('\n').slice(0, events);
    await putAll(
      db,
      all.values().map((line) => (JSON.parse(line) as Entry).event),
      'strict',
    );
    db.close();
  };
}

/** Its worker is open and its table made before anything is measured. */
async function sqliteImport({ lines, events }: Backup): Promise<() => Promise<void>> {
  const worker = new Worker(new URL('./sqlite-worker.ts', import.meta.url), { type: 'module' });
  const answer = () =>
    new Promise<number>((resolve, reject) => {
      worker.onmessage = ({ data }: MessageEvent<number>) => resolve(data);
      worker.onerror = ({ message }) => reject(new Error(message));
    });
  await answer();
  return async () => {
    worker.postMessage(lines);
    const rows = await answer();
    worker.terminate();
    if (rows !== events) throw new Error(`SQLite has ${rows} of ${events}`);
  };
}
