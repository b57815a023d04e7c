/** Keeps the journal and the copies of one store in the origin private file system, for one window. */
import * as v from 'valibot';
import { linkText } from '../domain/log/chain.ts';
import { askSchema, beginSchema, type Question } from '../store/files-protocol.ts';
import { compact } from './journal/compaction.ts';
import { openJournal } from './journal/journal.ts';
import { opfsFolder } from './journal/opfs-folder.ts';
import { wholeFiles } from './journal/whole-files.ts';

declare const self: DedicatedWorkerGlobalScope;

const lines = v.array(v.object({ link: linkText, line: v.string() }));
const file = v.object({ name: v.string(), bytes: v.instance(Uint8Array) });

const newName = () => crypto.randomUUID();

async function open(store: string) {
  const folder = await opfsFolder(store);
  // A folder that cannot be tidied up can still be read and added to.
  await compact(folder, newName).catch(() => undefined);
  return { journal: openJournal(folder, newName), files: wholeFiles(await opfsFolder(`${store}-copies`)) };
}

type Opened = Awaited<ReturnType<typeof open>>;

const work: Readonly<Record<Question, (opened: Opened, input: unknown) => unknown>> = {
  look: ({ journal }) => journal.look(),
  add: ({ journal }, input) => journal.add(v.parse(lines, input)),
  keepAct: ({ journal }, input) => journal.keepAct(v.parse(v.string(), input)),
  settleAct: ({ journal }, input) => journal.settleAct(v.parse(v.string(), input)),
  links: ({ journal }) => journal.links(),
  lines: ({ journal }, input) => journal.lines(v.parse(v.array(linkText), input)),
  fileNames: ({ files }) => files.fileNames(),
  readFile: ({ files }, input) => files.readFile(v.parse(v.string(), input)),
  writeFile: ({ files }, input) => files.writeFile(v.parse(file, input)),
  removeFile: ({ files }, input) => files.removeFile(v.parse(v.string(), input)),
};

let opened: Promise<Opened> | undefined;
/** One thing after another: the answers come in the order of the questions. */
let queue: Promise<unknown> = Promise.resolve();

self.onmessage = ({ data }: MessageEvent<unknown>) => {
  if (v.is(beginSchema, data)) {
    opened = open(data.begin);
    opened.catch(() => undefined);
    return;
  }
  const { id, ask, input } = v.parse(askSchema, data);
  queue = queue.then(async () => {
    try {
      if (!opened) throw new Error('asked before it was begun');
      const answer = await work[ask](await opened, input);
      self.postMessage({ id, kind: 'done', answer });
    } catch (error) {
      self.postMessage({ id, kind: 'failed', problem: String(error) });
    }
  });
};
