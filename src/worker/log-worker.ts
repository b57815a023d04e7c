/**
 * Does one job on the log beside the window, which then ends it: it seals old records, or packs, reads or locks up a copy,
 * or answers questions on it for as long as there are any. Each takes seconds that a tap must not wait for. The jobs share
 * a file because they share most of their code; that of the study is loaded with its first question.
 */
import { buffersOf } from '../domain/packed/run-buffers.ts';
import { copyJobs } from '../store/copy-jobs.ts';
import type { FileShelf } from '../store/file-shelf.ts';
import type { FilesReading } from '../store/read-files.ts';
import { sealOldRecords } from '../store/sealing.ts';
import { openShopDatabase } from '../store/shop-database.ts';
import type { StudyJob } from '../store/study-job.ts';
import type { FromWorker, ToWorker } from './log-protocol.ts';

const worker = globalThis as unknown as DedicatedWorkerGlobalScope;
const say = (message: FromWorker, handOver: readonly ArrayBuffer[] = []) =>
  worker.postMessage(message, [...handOver]);

interface Waiting {
  readonly resolve: (result: unknown) => void;
  readonly reject: (problem: Error) => void;
}

const lines: string[] = [];
const waiting = new Map<number, Waiting>();
let calls = 0;

function ask(method: keyof FileShelf, ...args: readonly unknown[]): Promise<never> {
  calls += 1;
  const call = calls;
  return new Promise((resolve, reject) => {
    waiting.set(call, { resolve: resolve as Waiting['resolve'], reject });
    say({ kind: 'shelf', call, method, args });
  });
}

/** The window's shelf, as seen from here. */
const shelf: FileShelf = {
  names: () => ask('names'),
  read: (name) => ask('read', name),
  write: (name, bytes) => ask('write', name, bytes),
  remove: (name) => ask('remove', name),
};

type JobInput = Extract<ToWorker, { kind: 'job' }>['input'];

async function run({ name, input }: Extract<ToWorker, { kind: 'job' }>): Promise<void> {
  try {
    // Name and input belong together by the type of the message; a look-up cannot carry that through.
    const job = copyJobs(shelf)[name] as (input: unknown) => Promise<unknown>;
    const result = await job(withLines(input));
    say({ kind: 'done', result }, name === 'read' ? runsIn(result as FilesReading) : []);
  } catch (error) {
    say({ kind: 'failed', problem: String(error) });
  }
}

/** A long log that was read goes over without being copied. */
function runsIn(reading: FilesReading): readonly ArrayBuffer[] {
  return reading.kind === 'read' ? buffersOf(reading.parcel.runs) : [];
}

/** The lines of a log that was not left to be read here came before the job. */
function withLines(input: JobInput): JobInput {
  return 'log' in input && input.log.kind === 'lines' ? { ...input, log: { kind: 'lines', lines } } : input;
}

/** What was not sealed is read as before, and tried the next time. */
async function seal(name: string): Promise<void> {
  const nobody = () => undefined;
  try {
    const db = await openShopDatabase(name, { blocked: nobody, outdated: nobody, lost: nobody });
    await sealOldRecords(db).finally(() => db.close());
  } finally {
    say({ kind: 'done', result: null });
  }
}

/** What answers questions on the log. */
let studying: Promise<StudyJob> | undefined;

async function study({ order, log }: Extract<ToWorker, { kind: 'study' }>): Promise<void> {
  try {
    studying ??= import('../store/study-job.ts').then(({ studyJob }) => studyJob());
    // The lines are of this question: the next one brings its own.
    const source = log.kind === 'lines' ? { kind: log.kind, lines: lines.splice(0) } : log;
    const answer = await studying;
    say({ kind: 'done', result: await answer(order, source) });
  } catch (error) {
    say({ kind: 'failed', problem: String(error) });
  }
}

async function dust({ question, log }: Extract<ToWorker, { kind: 'dust' }>): Promise<void> {
  try {
    const { dustJob } = await import('../store/dust-job.ts');
    const source = log.kind === 'lines' ? { kind: log.kind, lines: lines.splice(0) } : log;
    say({ kind: 'done', result: await dustJob(question, source) });
  } catch (error) {
    say({ kind: 'failed', problem: String(error) });
  }
}

worker.addEventListener('message', ({ data }: MessageEvent<ToWorker>) => {
  switch (data.kind) {
    case 'lines':
      for (const line of data.lines) lines.push(line);
      break;
    case 'job':
      void run(data);
      break;
    case 'seal':
      void seal(data.name).catch(() => undefined);
      break;
    case 'study':
      void study(data);
      break;
    case 'dust':
      void dust(data);
      break;
    case 'answer':
      waiting.get(data.call)?.resolve(data.result);
      break;
    case 'refusal':
      waiting.get(data.call)?.reject(new Error(data.problem));
      break;
  }
});
