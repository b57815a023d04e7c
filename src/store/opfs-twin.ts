import * as v from 'valibot';
import type { Entry } from '../domain/log/chain.ts';
import { entryLine } from '../domain/log/journal-line.ts';
import { readEntry } from '../domain/log/read-entry.ts';
import { type PackedRun, runHeadSchema } from '../domain/packed/packed-run.ts';
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
    async add({ runs, entries }) {
      for (const some of inParts(runs, ofRun)) await ask('add-runs', { runs: some });
      for (const some of inParts(entries)) await ask('add', { texts: some.map(entryLine) });
    },
    keepAct: (act) => ask('keep-act', { json: JSON.stringify(act) }),
    settleAct: (act) => ask('settle-act', { act }),
    // What is taken here was flushed.
    freshen: async () => undefined,
    heads: () => ask('heads', {}),
    async parcel(heads) {
      const runs: PackedRun[] = [];
      const entries: Entry[] = [];
      for (const some of inParts(heads, ofRun)) {
        const found = await ask('parcel', { heads: some });
        runs.push(...found.runs.filter(isRun));
        for (const text of found.texts) {
          const read = readEntry(JSON.parse(text));
          if (read.kind === 'sound') entries.push(read.entry);
        }
      }
      return { runs, entries };
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

const isRun = (run: unknown): run is PackedRun => v.is(runHeadSchema, run);

/** A run takes less than its entries would one by one. */
const ofRun = ({ entries }: { readonly entries: number }) => Math.ceil(entries / 32);

/** Items in their order, as many at a time as weigh no more than so many entries; a heavy one alone. */
function* inParts<Item>(items: readonly Item[], weightOf: (item: Item) => number = () => 1) {
  let part: Item[] = [];
  let weight = 0;
  for (const item of items) {
    if (part.length > 0 && weight + weightOf(item) > atATime) {
      yield part;
      part = [];
      weight = 0;
    }
    part.push(item);
    weight += weightOf(item);
  }
  if (part.length > 0) yield part;
}
