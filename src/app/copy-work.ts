import type { Entry } from '../domain/log/chain.ts';
import type { CopyJobs } from '../store/copy-jobs.ts';
import type { FileShelf } from '../store/file-shelf.ts';
import type { FromWorker, JobName, ShelfCall, ToWorker } from '../worker/log-protocol.ts';
import { linesOf } from './log-lines.ts';

type Job<Name extends JobName> = Parameters<CopyJobs[Name]>[0];
type Result<Name extends JobName> = Awaited<ReturnType<CopyJobs[Name]>>;

/** The log that is to be copied, or that a copy is held against: what is in the store of this name, which the work opens for itself, or these entries. */
export type LogToCopy =
  | { readonly kind: 'store'; readonly name: string }
  | { readonly kind: 'entries'; readonly entries: readonly Entry[] };

/** A job on the log. */
type On<Name extends 'keep' | 'write' | 'take' | 'read'> = Omit<Job<Name>, 'log'> & {
  readonly log: LogToCopy;
};

/** The heavy work on copies, done beside the window where there are workers. */
export interface CopyWork {
  /** Has the worker of the next job stand ready while a person still chooses; gives how to let it go. */
  readonly ahead: () => () => void;
  readonly keep: (job: On<'keep'>) => Promise<Result<'keep'>>;
  readonly write: (job: On<'write'>) => Promise<Result<'write'>>;
  readonly look: CopyJobs['look'];
  readonly covers: CopyJobs['covers'];
  readonly take: (job: On<'take'>) => Promise<Result<'take'>>;
  readonly read: (job: On<'read'>) => Promise<Result<'read'>>;
  readonly open: CopyJobs['open'];
}

/** Starts a worker that does one job. */
export type StartWorker = () => Pick<Worker, 'postMessage' | 'terminate' | 'addEventListener'>;

/** Undefined where the browser has no workers. */
export const startWorker: StartWorker | undefined =
  typeof Worker === 'undefined'
    ? undefined
    : () => new Worker(new URL('../worker/log-worker.ts', import.meta.url), { type: 'module' });

export function copyWork(shelf: FileShelf | null, start = startWorker): CopyWork {
  let ready: ReturnType<StartWorker> | undefined;
  async function run<Name extends JobName>(
    name: Name,
    input: object,
    lines: readonly (readonly string[])[] = [],
  ): Promise<Result<Name>> {
    if (start) {
      const worker = ready ?? start();
      ready = undefined;
      return inWorker<Result<Name>>(worker, { name, input, lines, shelf });
    }
    const { copyJobs } = await import('../store/copy-jobs.ts');
    const job = copyJobs(shelf)[name] as (input: unknown) => Promise<unknown>;
    return (await job(input)) as Result<Name>;
  }
  async function runOn<Name extends 'keep' | 'write' | 'take' | 'read'>(
    name: Name,
    { log, ...job }: { readonly log: LogToCopy },
  ): Promise<Result<Name>> {
    if (log.kind === 'store') return run(name, { ...job, log });
    const lines = await linesOf(log.entries);
    // To a worker they go before the job, piece by piece.
    return run(name, { ...job, log: { kind: 'lines', lines: start ? [] : lines.flat() } }, lines);
  }
  return {
    ahead() {
      if (!start) return () => {};
      ready ??= start();
      const started = ready;
      const forget = () => {
        if (ready !== started) return false;
        ready = undefined;
        return true;
      };
      // One that could not start would never answer the job.
      started.addEventListener('error', forget);
      return () => {
        if (forget()) started.terminate();
      };
    },
    keep: (job) => runOn('keep', job),
    write: (job) => runOn('write', job),
    look: (job) => run('look', job),
    covers: (job) => run('covers', job),
    take: (job) => runOn('take', job),
    read: (job) => runOn('read', job),
    open: (job) => run('open', job),
  };
}

interface Order {
  readonly name: JobName;
  readonly input: object;
  readonly lines: readonly (readonly string[])[];
  readonly shelf: FileShelf | null;
}

function inWorker<R>(worker: ReturnType<StartWorker>, { name, input, lines, shelf }: Order): Promise<R> {
  const say = (message: ToWorker) => worker.postMessage(message);
  return new Promise<R>((resolve, reject) => {
    worker.addEventListener('error', (event) => reject(new Error(`the worker failed: ${event.message}`)));
    worker.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => {
      if (data.kind === 'done') resolve(data.result as R);
      else if (data.kind === 'failed') reject(new Error(data.problem));
      else void answer(shelf, data).then(say);
    });
    for (const part of lines) say({ kind: 'lines', lines: part });
    worker.postMessage({ kind: 'job', name, input });
  }).finally(() => worker.terminate());
}

async function answer(shelf: FileShelf | null, { call, method, args }: ShelfCall): Promise<ToWorker> {
  try {
    if (!shelf) throw new Error('the tablet has no shelf');
    const ask = shelf[method] as (...args: readonly unknown[]) => Promise<unknown>;
    return { kind: 'answer', call, result: await ask(...args) };
  } catch (error) {
    return { kind: 'refusal', call, problem: String(error) };
  }
}
