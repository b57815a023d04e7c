import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

/** What a tablet that has joined keeps; its reader judges it. */
interface ReplicaSchema extends DBSchema {
  joined: { key: string; value: unknown };
}

/**
 * A database of its own, whose name begins as no other of the app does: what is in it is secret, and the rescue page saves
 * every database that is named after the app.
 */
const replicaDatabase = 'joined-broker';

async function withReplica<Result>(
  work: (db: IDBPDatabase<ReplicaSchema>) => Promise<Result>,
): Promise<Result> {
  const db = await openDB<ReplicaSchema>(replicaDatabase, 1, {
    upgrade: (fresh) => void fresh.createObjectStore('joined'),
  });
  try {
    return await work(db);
  } finally {
    db.close();
  }
}

/** There is one shop of the maker's own on a tablet, and so one place for it. */
const own = 'own';

export function loadJoined(): Promise<unknown> {
  return withReplica((db) => db.get('joined', own));
}

export async function keepJoined(joined: object): Promise<void> {
  await withReplica((db) => db.put('joined', joined, own));
}

export async function forgetJoined(): Promise<void> {
  await withReplica((db) => db.delete('joined', own));
}
