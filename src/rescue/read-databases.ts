import { asJson, momentOf } from './as-json.ts';
import { type Found, laterOf, reasonOf, within } from './find.ts';

/** What every database of the app is called, or begins with. */
const ours = 'tallywright';
/** Tried whatever the browser lists: where its store is sick it may reject, or list nothing without a word. */
const knownNames = [ours, `${ours}-demo`];
/** Pictures would make the file too large to be made, and the log would be lost with it. */
const ofPhotos = '-photos';
const leftOut = (name: string): Found => ({
  ...{ title: name, lines: [], newest: null },
  unread: ['photos are left out of this file'],
});
/** A store that takes longer (ms) will not answer. */
const longest = 20_000;

/** Every record of every database of the app, as it lies there. Nothing is created, changed or brought up to date. */
export async function readDatabases(factory: IDBFactory | undefined): Promise<readonly Found[]> {
  if (!factory) return [{ title: 'Database', lines: [], newest: null, unread: ['this browser has none'] }];
  const found: Found[] = [];
  for (const name of await namesOf(factory)) {
    found.push(...(name.endsWith(ofPhotos) ? [leftOut(name)] : await readDatabase(factory, name)));
  }
  return found;
}

/** Older browsers have no list at all. */
const list = async (factory: IDBFactory) => factory.databases?.() ?? [];

async function namesOf(factory: IDBFactory): Promise<Iterable<string>> {
  const listed = await within(longest, list(factory)).catch(() => []);
  return new Set([...knownNames, ...listed.flatMap(({ name }) => (name?.startsWith(ours) ? [name] : []))]);
}

async function readDatabase(factory: IDBFactory, name: string): Promise<readonly Found[]> {
  let database: IDBDatabase | undefined;
  try {
    database = await within(longest, openAsItIs(factory, name));
  } catch (error) {
    return [{ title: name, lines: [], newest: null, unread: [`${name}: ${reasonOf(error)}`] }];
  }
  if (!database) return [];
  const stores: Found[] = [];
  for (const store of database.objectStoreNames) stores.push(await readStore(database, store));
  const { version } = database;
  database.close();
  const [line, newest] = [JSON.stringify({ database: name, version }), stores.map((each) => each.newest)];
  return [
    {
      title: name,
      lines: [line, ...stores.flatMap(({ lines }) => lines)],
      newest: newest.reduce(laterOf, null),
      unread: stores.flatMap(({ unread }) => unread),
    },
  ];
}

/** Opens whatever version is there; undefined when there is none, which then is not made either. */
function openAsItIs(factory: IDBFactory, name: string): Promise<IDBDatabase | undefined> {
  return new Promise((resolve, reject) => {
    const request = factory.open(name);
    let isNew = false;
    request.onupgradeneeded = () => {
      isNew = true;
      request.transaction?.abort();
    };
    request.onsuccess = () => {
      const database = request.result;
      database.onversionchange = () => database.close();
      resolve(database);
    };
    request.onerror = () => (isNew ? resolve(undefined) : reject(request.error));
  });
}

async function readStore(database: IDBDatabase, store: string): Promise<Found> {
  const lines: string[] = [];
  const unread: string[] = [];
  let newest: number | null = null;
  const from = { database: database.name, store };
  try {
    const records = await within(longest, recordsOf(database, store, unread));
    for (const { key, value } of records) {
      newest = laterOf(newest, momentOf(value));
      lines.push(JSON.stringify({ ...from, key: await asJson(key), value: await asJson(value) }));
    }
  } catch (error) {
    unread.push(`${database.name}, ${store}: ${reasonOf(error)}`);
  }
  return { title: store, lines, newest, unread };
}

interface Stored {
  readonly key: IDBValidKey;
  readonly value: unknown;
}

/** Walks a store. When the walk breaks off, what was read is kept and the break is told in `unread`. */
function recordsOf(database: IDBDatabase, store: string, unread: string[]): Promise<readonly Stored[]> {
  return new Promise((resolve) => {
    const records: Stored[] = [];
    const broken = (error: unknown) => {
      unread.push(`${database.name}, ${store}, after ${records.length} records: ${reasonOf(error)}`);
      resolve(records);
    };
    try {
      const transaction = database.transaction(store, 'readonly');
      transaction.onabort = () => broken(transaction.error);
      const request = transaction.objectStore(store).openCursor();
      request.onerror = () => broken(request.error);
      request.onsuccess = () => {
        const cursor = request.result;
        if (!cursor) return resolve(records);
        records.push({ key: cursor.primaryKey, value: cursor.value });
        cursor.continue();
      };
    } catch (error) {
      broken(error);
    }
  });
}
