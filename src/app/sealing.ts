import type { ToWorker } from '../worker/log-protocol.ts';
import type { Timer } from './saver.ts';

export interface SealingParts {
  readonly timer: Timer;
  /** The name of the store that is open; null when there is none that may be written to. */
  readonly store: () => string | null;
  readonly start?: (() => Pick<Worker, 'postMessage' | 'terminate' | 'addEventListener'>) | undefined;
}

/** The first screen has its time before (ms). */
const afterStart = 15_000;
/** Between two times (ms): at the quickest tapping some thousand records. */
const between = 20 * 60_000;

const startWorker =
  typeof Worker === 'undefined'
    ? undefined
    : () => new Worker(new URL('../worker/log-worker.ts', import.meta.url), { type: 'module' });

/** Lets a worker seal the old records of the open store: soon after the start, and now and then. */
export function sealNowAndThen({ timer, store, start = startWorker }: SealingParts): void {
  function sealOnce(): void {
    const name = store();
    timer.after(between, sealOnce);
    if (name === null || !start) return;
    const worker = start();
    worker.addEventListener('message', () => worker.terminate());
    worker.addEventListener('error', () => worker.terminate());
    worker.postMessage({ kind: 'seal', name } satisfies ToWorker);
  }
  timer.after(afterStart, sealOnce);
}
