import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { beforeEach, expect, test } from 'vitest';
import { readDatabases } from '../../src/rescue/read-databases.ts';

let factory: IDBFactory;
beforeEach(() => {
  factory = new IDBFactory();
  globalThis.indexedDB = factory;
});

/** A database of three records as some later version might keep them. */
async function aDatabase(name: string, version = 7): Promise<void> {
  const database = await openDB(name, version, {
    upgrade(db) {
      db.createObjectStore('events', { keyPath: ['station', 'seq'] });
      db.createObjectStore('heads');
    },
  });
  await database.put('events', { station: 'a', seq: 1, event: { stamp: { wall: 1000, tick: 0 } } });
  await database.put('events', { station: 'a', seq: 2, event: { stamp: { wall: 3000, tick: 0 } } });
  await database.put('heads', new Map([['a', 2]]), 'head');
  database.close();
}

const parsed = (lines: readonly string[]) => lines.map((line): unknown => JSON.parse(line));

test('every record of every store is read, whatever the version, and the newest moment is told', async () => {
  await aDatabase('tallywright');
  const [found] = await readDatabases(factory);
  expect(parsed(found?.lines ?? [])).toEqual([
    { database: 'tallywright', version: 7 },
    {
      database: 'tallywright',
      store: 'events',
      key: ['a', 1],
      value: { station: 'a', seq: 1, event: { stamp: { wall: 1000, tick: 0 } } },
    },
    {
      database: 'tallywright',
      store: 'events',
      key: ['a', 2],
      value: { station: 'a', seq: 2, event: { stamp: { wall: 3000, tick: 0 } } },
    },
    { database: 'tallywright', store: 'heads', key: 'head', value: { $map: [['a', 2]] } },
  ]);
  expect(found?.newest).toBe(3000);
  expect(found?.unread).toEqual([]);
});

test('the databases of others at the same address are left alone', async () => {
  await aDatabase('tallywright-demo');
  await aDatabase('other');
  expect((await readDatabases(factory)).map(({ title }) => title)).toEqual(['tallywright-demo']);
});

test('photos are left out of the file, and that is said', async () => {
  await aDatabase('tallywright-photos');
  expect(await readDatabases(factory)).toEqual([
    { title: 'tallywright-photos', lines: [], newest: null, unread: ['photos are left out of this file'] },
  ]);
});

test.each<[string, () => Promise<IDBDatabaseInfo[]>]>([
  ['fails', () => Promise.reject(new Error('broken list'))],
  ['is empty without a word', async () => []],
])(
  'where the list of databases %s the known ones are tried, and none is made by the look',
  async (_, list) => {
    await aDatabase('tallywright');
    const databases = factory.databases.bind(factory);
    factory.databases = list;
    expect((await readDatabases(factory)).map(({ title }) => title)).toEqual(['tallywright']);
    expect((await databases()).map(({ name }) => name)).toEqual(['tallywright']);
  },
);

test('a store that breaks off keeps what was read, and the others are read all the same', async () => {
  await aDatabase('tallywright');
  const cursor = IDBCursor.prototype.continue;
  let steps = 0;
  IDBCursor.prototype.continue = function broken(...key: [IDBValidKey?]) {
    steps += 1;
    if (steps === 1) throw new DOMException('torn block', 'UnknownError');
    cursor.apply(this, key);
  };
  try {
    const [found] = await readDatabases(factory);
    expect(found?.lines).toHaveLength(3);
    expect(found?.unread).toHaveLength(1);
    expect(found?.unread[0]).toMatch(/tallywright, events, after 1 records/);
  } finally {
    IDBCursor.prototype.continue = cursor;
  }
});

test('a database that cannot be opened is told, and the next one is read', async () => {
  await aDatabase('tallywright');
  await aDatabase('tallywright-demo');
  const open = factory.open.bind(factory);
  factory.open = (name: string) => {
    if (name === 'tallywright')
      throw new DOMException('Internal error opening backing store.', 'UnknownError');
    return open(name);
  };
  const found = await readDatabases(factory);
  expect(found.map(({ title, lines }) => [title, lines.length])).toEqual([
    ['tallywright', 0],
    ['tallywright-demo', 4],
  ]);
  expect(found[0]?.unread[0]).toContain('Internal error opening backing store');
});

test('a browser without databases says so', async () => {
  expect((await readDatabases(undefined))[0]?.unread).toHaveLength(1);
});
