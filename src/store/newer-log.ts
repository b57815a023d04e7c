import * as v from 'valibot';
import { headSchema } from './head.ts';
import { readsOf } from './indexeddb-reads.ts';
import type { LogStore } from './log-store.ts';
import { openToRead } from './open-to-read.ts';
import type { DatabaseNews } from './shop-database.ts';

/**
 * A log whose layout is of a newer version of the app: it is read, as far as it can be, and never written to. Rejects
 * when even its head cannot be understood.
 */
export async function openNewerLog(name: string, news: DatabaseNews): Promise<LogStore> {
  const db = await openToRead(name, news);
  const { station } = v.parse(headSchema, await db.get('heads', 'head'));
  const refuse = () => Promise.reject(new DOMException('This store is only read here.', 'ReadOnlyError'));
  return {
    ...readsOf((work) => work(db)),
    station: () => station,
    append: refuse,
    merge: refuse,
    saveSnapshot: refuse,
    freshen: refuse,
    revive: () => undefined,
    close: () => db.close(),
  };
}
