import type { Begin, Reply, Request } from '../../store/files-protocol.ts';
import type { Folder } from './folder.ts';
import { type Journal, openJournal } from './journal.ts';
import { type WholeFiles, wholeFiles } from './whole-files.ts';

export interface ServeOptions {
  /** The folder of this name; undefined where the browser keeps none. */
  readonly openFolder: (name: string) => Promise<Folder | undefined>;
  readonly say: (reply: Reply) => void;
  /** Names the segments of this worker; no other may have it. */
  readonly newName: () => string;
  readonly turn: () => Promise<void>;
  readonly chance: () => number;
}

interface Kept {
  readonly journal: Journal;
  readonly shelf: WholeFiles;
}

/** Serves one page: hears its messages one by one, and answers each request once, in whatever order they are done. */
export function serve({
  openFolder,
  say,
  newName,
  turn,
  chance,
}: ServeOptions): (message: Begin | Request) => Promise<void> {
  let first: Begin | undefined;
  let kept: Promise<Kept | undefined> | undefined;
  let tidied = false;
  const alive = () => say({ kind: 'busy' });

  async function begin({ store }: Begin): Promise<Kept | undefined> {
    const folder = await openFolder(store);
    const copies = await openFolder(`${store}-copies`);
    if (!folder || !copies) return undefined;
    return {
      journal: openJournal({ folder, writer: newName(), turn, alive, chance }),
      shelf: wholeFiles(copies, alive),
    };
  }

  /** Begun once; a beginning that failed is tried again at the next request. */
  async function begun(): Promise<Kept | undefined> {
    if (!first) throw new Error('nobody said which store this is');
    kept ??= begin(first);
    try {
      return await kept;
    } catch (error) {
      kept = undefined;
      throw error;
    }
  }

  async function answer({ journal, shelf }: Kept, request: Request): Promise<unknown> {
    switch (request.ask) {
      case 'look':
        return journal.look();
      case 'add':
        return journal.add(request.texts);
      case 'add-runs':
        return journal.addRuns(request.runs);
      case 'keep-act':
        return journal.keepAct(request.json);
      case 'settle-act':
        return journal.settleAct(request.act);
      case 'heads':
        return journal.heads();
      case 'parcel':
        return journal.parcel(request.heads);
      case 'file-names':
        return shelf.names();
      case 'read-file':
        return shelf.read(request.file);
      case 'write-file':
        return shelf.write(request.file, request.bytes);
      case 'remove-file':
        return shelf.remove(request.file);
    }
  }

  /** Once, after the first look is answered. What cannot be done today is tried at the next start. */
  async function tidyOnce({ journal }: Kept): Promise<void> {
    if (tidied) return;
    tidied = true;
    await journal.tidy().catch(() => undefined);
    await journal.verify().catch(() => undefined);
  }

  return async (message) => {
    if (message.ask === 'begin') {
      first = message;
      return;
    }
    try {
      const opened = await begun();
      if (!opened) {
        say({ kind: 'nowhere', id: message.id });
        return;
      }
      say({ kind: 'done', id: message.id, value: await answer(opened, message) });
      if (message.ask === 'look') await tidyOnce(opened);
    } catch (error) {
      say({ kind: 'failed', id: message.id, why: String(error) });
    }
  };
}
