import * as v from 'valibot';
import { editionSchema } from './edition.ts';
import type { SnapshotToSave } from './log-store.ts';
import type { ShopDatabase } from './shop-schema.ts';

const pagePrefix = 'page ';
const allPages = IDBKeyRange.bound(pagePrefix, `${pagePrefix}\uffff`);

const editionOf = (about: unknown): number => {
  const read = v.safeParse(editionSchema, about);
  return read.success ? read.output.edition : 0;
};

/** Pages come in one transaction, so all are of one edition; between two of them other work gets its turn. */
export async function loadPages(
  db: ShopDatabase,
  { edition, take }: { edition: number; take: (page: unknown) => void },
): Promise<boolean> {
  const { store } = db.transaction('snapshots');
  if (editionOf(await store.get('edition')) !== edition) return false;
  for (const key of await store.getAllKeys(allPages)) take(await store.get(key));
  return true;
}

export async function saveSnapshot(
  db: ShopDatabase,
  { over, make }: SnapshotToSave,
): Promise<number | undefined> {
  const tx = db.transaction('snapshots', 'readwrite', { durability: 'relaxed' });
  const { store } = tx;
  const held = new Set(await store.getAllKeys(allPages));
  const before = editionOf(await store.get('edition'));
  if (over !== null && before !== over) return undefined;
  const { format, shop, pages } = make();
  const writes: Promise<unknown>[] = [];
  if (over === null && held.size > 0) {
    writes.push(store.delete(allPages));
    held.clear();
  }
  for (const [name, page] of pages) {
    held.add(pagePrefix + name);
    writes.push(store.put(page, pagePrefix + name));
  }
  const edition = before + 1;
  writes.push(store.put({ format, edition, pages: held.size }, 'edition'), store.put(shop, 'shop'));
  await Promise.all([...writes, tx.done]);
  return edition;
}
