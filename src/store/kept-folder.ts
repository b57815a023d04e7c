import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

/** A database beside the shop's: what is wrong with the one must not reach the other. */
interface FolderSchema extends DBSchema {
  /** The folder that the maker has chosen for copies of a shop, under the name of the shop's store. */
  folders: { key: string; value: FileSystemDirectoryHandle };
}

async function withFolders<Result>(
  work: (db: IDBPDatabase<FolderSchema>) => Promise<Result>,
): Promise<Result> {
  const db = await openDB<FolderSchema>('tallywright-folder', 1, {
    upgrade: (fresh) => void fresh.createObjectStore('folders'),
  });
  try {
    return await work(db);
  } finally {
    db.close();
  }
}

/** The folder chosen for a shop's copies; undefined when none was. */
export function loadFolder(shop: string): Promise<FileSystemDirectoryHandle | undefined> {
  return withFolders((db) => db.get('folders', shop));
}

export async function keepFolder(shop: string, folder: FileSystemDirectoryHandle): Promise<void> {
  await withFolders((db) => db.put('folders', folder, shop));
}

export async function forgetFolder(shop: string): Promise<void> {
  await withFolders((db) => db.delete('folders', shop));
}
