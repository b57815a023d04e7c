/** Reads a whole log into columns: from the app's store, from one record an event, and from one buffer. */
import { logColumns } from '../../../src/domain/packed/log-columns.ts';
import { storedRun } from '../../../src/domain/packed/packed-run.ts';
import { longLog, longRuns } from '../../support/long-log.ts';
import { inPieces } from './in-pieces.ts';
import { openLog } from './open-log.ts';
import { answered, completed, openPlainStore, putAll } from './plain-store.ts';

interface Log {
  readonly events: number;
  readonly until: number;
}

interface WasRead {
  /** How many events (of a buffer: bytes) were read. */
  readonly found: number;
  /** Works out what each event does, as a question about the whole log needs it. */
  readonly makeReady?: () => unknown;
}

/** Ways to keep a log, and to read it. */
interface Keeper {
  readonly fill: (log: Log) => Promise<void>;
  readonly read: () => Promise<WasRead>;
}

const name = 'log';
/** Records written, and read, at a time. */
const piece = 100_000;

const keepers: Readonly<Record<'ours' | 'records' | 'buffer', Keeper>> = {
  ours: {
    async fill(log) {
      const store = await openLog(name);
      for (const run of longRuns(log)) await store.merge({ runs: [run], now: log.until });
      store.close();
    },
    async read() {
      const store = await openLog(name);
      const { runs, entries } = await store.parcel();
      return {
        found: runs.reduce((sum, run) => sum + run.entries, entries.length),
        makeReady: () => logColumns(runs.map((run) => ({ run }))),
      };
    },
  },
  records: {
    async fill(log) {
      const db = await openPlainStore({ name, keyPath: ['station', 'seq'] });
      for (const events of inPieces(longLog(log), piece)) await putAll(db, events, 'relaxed');
      db.close();
    },
    // Its columns are not even made.
    async read() {
      const db = await openPlainStore({ name, keyPath: ['station', 'seq'] });
      const store = db.transaction('kept').objectStore('kept');
      let count = 0;
      let rest: IDBKeyRange | null = null;
      for (;;) {
        const records: { station: string; seq: number }[] = await answered(store.getAll(rest, piece));
        count += records.length;
        const last = records.at(-1);
        if (!last || records.length < piece) return { found: count };
        rest = IDBKeyRange.lowerBound([last.station, last.seq], true);
      }
    },
  },
  buffer: {
    async fill(log) {
      const db = await openPlainStore({ name });
      const parts = [...longRuns(log)].flatMap((run) => {
        const { bytes, ...texts } = storedRun(run);
        return [bytes, JSON.stringify(texts)];
      });
      const buffer = await new Blob(parts).arrayBuffer();
      const tx = db.transaction('kept', 'readwrite', { durability: 'strict' });
      tx.objectStore('kept').put(buffer, name);
      await completed(tx);
      db.close();
    },
    async read() {
      const db = await openPlainStore({ name });
      const buffer: ArrayBuffer = await answered(db.transaction('kept').objectStore('kept').get(name));
      return { found: new Uint8Array(buffer).length };
    },
  },
};
export type KeeperName = keyof typeof keepers;

export async function fill({ keeper, ...log }: Log & { keeper: KeeperName }): Promise<void> {
  await keepers[keeper].fill(log);
}

/** Milliseconds from before the database is opened until all is there, and until it is ready for questions; how much it is. */
export async function read({ keeper }: { keeper: KeeperName }) {
  const start = performance.now();
  const { found, makeReady } = await keepers[keeper].read();
  const took = performance.now() - start;
  makeReady?.();
  return { took, ready: performance.now() - start, found };
}
