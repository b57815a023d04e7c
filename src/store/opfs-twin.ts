import { readEntry } from '../domain/log/read-entry.ts';
import { type FileShelf, isShelfName } from './file-shelf.ts';
import type { FilesWorker } from './files-worker.ts';
import { readAct } from './kept-act.ts';
import type { Twin } from './twin.ts';

/** The second copy in the origin private file system, kept by a worker. */
export function opfsTwin({ ask, end }: FilesWorker): Twin {
  return {
    async look() {
      const { holding, unreadable, unsettled } = await ask('look', undefined);
      return { reach: 'all', holding, unreadable, unsettled: unsettled.flatMap(readAct) };
    },
    async add(entries) {
      await ask(
        'add',
        entries.map(({ prev, link, event }) => ({ link, line: JSON.stringify({ prev, link, event }) })),
      );
    },
    async keepAct(act) {
      await ask('keepAct', JSON.stringify(act));
    },
    async settleAct(act) {
      await ask('settleAct', act);
    },
    links: () => ask('links', undefined),
    async entries(links) {
      const lines = await ask('lines', links);
      return lines.flatMap(({ line }) => {
        const read = readEntry(JSON.parse(line));
        return read.kind === 'sound' ? [read.entry] : [];
      });
    },
    close: end,
  };
}

/** The shelf of files that the same worker keeps. */
export function opfsShelf({ ask }: FilesWorker): FileShelf {
  return {
    names: () => ask('fileNames', undefined),
    read: (name) => ask('readFile', name),
    async write(name, bytes) {
      if (!isShelfName(name)) throw new Error(`no file can be named ${JSON.stringify(name)}`);
      await ask('writeFile', { name, bytes });
    },
    async remove(name) {
      await ask('removeFile', name);
    },
  };
}
