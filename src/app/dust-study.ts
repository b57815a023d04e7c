import type { DustMinutes, DustQuestion } from '../domain/study/dust-minutes.ts';
import type { FromWorker, ToWorker } from '../worker/log-protocol.ts';
import { type StartWorker, startWorker } from './copy-work.ts';
import { linesOf } from './log-lines.ts';
import type { Session } from './session.ts';

export interface DustParts {
  readonly session: Pick<Session, 'allEvents'>;
  /** The name of the database that has the log; null where the log is held in memory. */
  readonly store: string | null;
  readonly start?: StartWorker | undefined;
}

/** Asks the whole log for minutes of dust, beside the window where there are workers. Rejects when it cannot be read. */
export async function askDust(
  { session, store, start = startWorker }: DustParts,
  question: DustQuestion,
): Promise<readonly DustMinutes[]> {
  const lines = store === null ? await linesOf(await session.allEvents()) : [];
  if (start) return inWorker(start(), { question, store, lines });
  const { dustJob } = await import('../store/dust-job.ts');
  return dustJob(
    question,
    store === null ? { kind: 'lines', lines: lines.flat() } : { kind: 'store', name: store },
  );
}

interface Order {
  readonly question: DustQuestion;
  readonly store: string | null;
  readonly lines: readonly (readonly string[])[];
}

function inWorker(
  worker: ReturnType<StartWorker>,
  { question, store, lines }: Order,
): Promise<readonly DustMinutes[]> {
  return new Promise<readonly DustMinutes[]>((resolve, reject) => {
    worker.addEventListener('error', ({ message }) => reject(new Error(`the worker failed: ${message}`)));
    worker.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => {
      if (data.kind === 'done') resolve(data.result as readonly DustMinutes[]);
      if (data.kind === 'failed') reject(new Error(data.problem));
    });
    const say = (message: ToWorker) => worker.postMessage(message);
    for (const part of lines) say({ kind: 'lines', lines: part });
    const log =
      store === null ? ({ kind: 'lines', lines: [] } as const) : ({ kind: 'store', name: store } as const);
    say({ kind: 'dust', question, log });
  }).finally(() => worker.terminate());
}
