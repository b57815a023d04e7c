/** A page that has nothing but a journal and a shelf: what a test asks of them is asked from outside. */

import type { Entry } from '../../../src/domain/log/chain.ts';
import { packLong } from '../../../src/domain/packed/pack-long.ts';
import { entriesIn } from '../../../src/domain/packed/parcel.ts';
import type { FileShelf } from '../../../src/store/file-shelf.ts';
import { filesWorker } from '../../../src/store/files-worker.ts';
import { opfsShelf, opfsTwin } from '../../../src/store/opfs-twin.ts';
import type { Twin } from '../../../src/store/twin.ts';
import { allowOwnScripts } from '../../../src/worker/own-scripts.ts';

export interface JournalPage {
  readonly twin: Twin;
  readonly shelf: FileShelf;
  /** All entries that the journal has, one by one. */
  readonly entries: () => Promise<readonly Entry[]>;
  readonly addPacked: (entries: readonly Entry[]) => Promise<void>;
  /** The files of the journal, as a page sees them without the worker. */
  readonly files: () => Promise<readonly string[]>;
  /** Writes a file of the journal anew, with its bytes changed. */
  readonly change: (
    name: string,
    change: (bytes: Uint8Array<ArrayBuffer>) => Uint8Array<ArrayBuffer>,
  ) => Promise<void>;
}

declare global {
  interface Window {
    journal: JournalPage;
  }
}

allowOwnScripts();

const files = filesWorker({
  store: 'tallywright',
  start: () =>
    new Worker(new URL('../../../src/worker/journal-worker.ts', import.meta.url), { type: 'module' }),
  after(ms, run) {
    const handle = setTimeout(run, ms);
    return () => clearTimeout(handle);
  },
});
const folder = async () =>
  (await navigator.storage.getDirectory()).getDirectoryHandle('tallywright', { create: true });

const twin = opfsTwin(files);

window.journal = {
  twin,
  shelf: opfsShelf(files),
  entries: async () => entriesIn(await twin.parcel(await twin.heads())),
  addPacked: (entries) => twin.add(packLong(entries)),
  async files() {
    const names: string[] = [];
    for await (const name of (await folder()).keys()) names.push(name);
    return names.toSorted();
  },
  async change(name, change) {
    const handle = await (await folder()).getFileHandle(name);
    const bytes = new Uint8Array(await (await handle.getFile()).arrayBuffer());
    const out = await handle.createWritable();
    await out.write(change(bytes));
    await out.close();
  },
};
