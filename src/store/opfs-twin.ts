import type { Entry } from '../domain/log/chain.ts';
import { entryLine } from '../domain/log/journal-line.ts';
import { readEntry } from '../domain/log/read-entry.ts';
import { type FileShelf, isShelfName } from './file-shelf.ts';
import type { FilesWorker } from './files-worker.ts';
import { readAct } from './kept-act.ts';
import type { Twin } from './twin.ts';

/** So many entries go to the worker, or come from it, at a time: the page stays quick. */
const atATime = 500;

/** The second copy in the origin private file system, kept by a worker. */
export function opfsTwin({ ask, close }: FilesWorker): Twin {
  return {
    async look() {
      const { unsettled, ...report } = await ask('look', {});
      return { reach: 'all', ...report, unsettled: unsettled.flatMap(readAct) };
    },
    async add(entries) {
      for (const some of inParts(entries)) await ask('add', { texts: some.map(entryLine) });
    },
    keepAct: (act) => ask('keep-act', { json: JSON.stringify(act) }),
    settleAct: (act) => ask('settle-act', { act }),
    links: () => ask('links', {}),
    async entries(links) {
      const found: Entry[] = [];
      for (const some of inParts(links)) {
        for (const text of await ask('texts', { links: some })) {
          const read = readEntry(JSON.parse(text));
          if (read.kind === 'sound') found.push(read.entry);
        }
      }
      return found;
    },
    close,
  };
}

/** The shelf of files that the same worker keeps. */
export function opfsShelf({ ask }: FilesWorker): FileShelf {
  return {
    names: () => ask('file-names', {}),
    read: (file) => ask('read-file', { file }),
    async write(file, bytes) {
      if (!isShelfName(file)) throw new Error(`no file can be named ${JSON.stringify(file)}`);
      await ask('write-file', { file, bytes });
    },
    remove: (file) => ask('remove-file', { file }),
  };
}

function* inParts<Item>(items: readonly Item[]): Generator<readonly Item[]> {
  for (let at = 0; at < items.length; at += atATime) yield items.slice(at, at + atATime);
}
