/** One object store of IndexedDB as it is without any library: what a peer keeps its records in. */

interface PlainStore {
  readonly name: string;
  readonly keyPath?: string[];
}

/** Opens the database `name` with one object store, `kept`. */
export function openPlainStore({ name, keyPath }: PlainStore): Promise<IDBDatabase> {
  const opening = indexedDB.open(name);
  opening.onupgradeneeded = () => opening.result.createObjectStore('kept', { keyPath: keyPath ?? null });
  return answered(opening);
}

/** What a request is answered with. Rejects with its error. */
export function answered<Result>(request: IDBRequest<Result>): Promise<Result> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

/** Writes all in one transaction; resolved when the browser calls it complete. */
export function putAll(
  db: IDBDatabase,
  records: Iterable<unknown>,
  durability: IDBTransactionDurability,
): Promise<void> {
  const tx = db.transaction('kept', 'readwrite', { durability });
  const store = tx.objectStore('kept');
  for (const record of records) store.put(record);
  return completed(tx);
}

/** Resolved when all of a transaction is kept. Rejects when it is not. */
export function completed(tx: IDBTransaction): Promise<void> {
  return new Promise((resolve, reject) => {
    tx.oncomplete = () => resolve();
    tx.onabort = () => reject(tx.error);
  });
}
