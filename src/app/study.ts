import { type ReadonlySignal, signal } from '@preact/signals';
import type { Answered, QuestionsOf, StudyOrder, StudySubject } from '../domain/study/study-desk.ts';
import type { StudyJob } from '../store/study-job.ts';
import type { FromWorker, ToWorker } from '../worker/log-protocol.ts';
import { type StartWorker, startWorker } from './copy-work.ts';
import { linesOf } from './log-lines.ts';
import { logSize } from './log-size.ts';
import type { Session } from './session.ts';

/** Answers with the questions that they are to. */
export interface Studied<Subject extends StudySubject> extends Answered<Subject> {
  readonly questions: QuestionsOf<Subject>;
}

/** `last` is the newest that was ever found: it may be shown, as of its time, while there is nothing newer. */
export type StudyState<Subject extends StudySubject = 'study'> =
  | { readonly kind: 'none' }
  | { readonly kind: 'working'; readonly last: Studied<Subject> | null }
  | { readonly kind: 'ready'; readonly last: Studied<Subject> }
  | { readonly kind: 'failed'; readonly problem: string; readonly last: Studied<Subject> | null };

/** What judges the whole log for a screen, beside the window where there are workers. */
export interface StudyDoor<Subject extends StudySubject> {
  readonly state: ReadonlySignal<StudyState<Subject>>;
  /**
   * Asks, unless the last answer is to the same questions and no entry has come since. Of questions that come while others
   * are worked on the last are asked next. Resolves when nothing is left to do; never rejects.
   */
  readonly ask: (questions: QuestionsOf<Subject>) => Promise<void>;
  /** Ends the work, and gives back the memory that it takes. */
  readonly close: () => void;
}

export interface StudyParts<Subject extends StudySubject> {
  readonly subject: Subject;
  readonly session: Pick<Session, 'view' | 'allEvents'>;
  /** The name of the database that has the log; null where the log is held in memory. */
  readonly store: string | null;
  readonly start?: StartWorker | undefined;
}

export function openStudy<Subject extends StudySubject>({
  subject,
  session,
  store,
  start = startWorker,
}: StudyParts<Subject>): StudyDoor<Subject> {
  const state = signal<StudyState<Subject>>({ kind: 'none' });
  const asking = start ? askWorker(start) : askHere();
  let last: Studied<Subject> | null = null;
  let next: QuestionsOf<Subject> | null = null;
  let working = Promise.resolve();
  let isBusy = false;
  let answered = '';
  let closed = false;

  async function workOff(): Promise<void> {
    isBusy = true;
    while (next && !closed) {
      const questions = next;
      next = null;
      const size = logSize(session);
      const name = nameOf(questions, size);
      if (name !== answered) await answer(questions, size);
    }
    isBusy = false;
  }

  async function answer(questions: QuestionsOf<Subject>, size: number): Promise<void> {
    state.value = { kind: 'working', last };
    try {
      const lines = store === null ? await linesOf(await session.allEvents()) : [];
      if (closed) return;
      // An order of a subject is answered by that subject; the compiler cannot see that through the desk.
      const order = { subject, questions, size } as StudyOrder;
      const found = (await asking.ask(order, { store, lines })) as Answered<Subject>;
      if (closed) return;
      last = { ...found, questions };
      answered = nameOf(questions, size);
      state.value = { kind: 'ready', last };
    } catch (error) {
      answered = '';
      asking.end();
      if (!closed) state.value = { kind: 'failed', problem: String(error), last };
    }
  }

  return {
    state,
    ask(questions) {
      next = questions;
      if (!isBusy) working = workOff();
      return working;
    },
    close() {
      closed = true;
      asking.end();
    },
  };
}

/** The same text for the same questions on the same log. */
function nameOf(questions: object, size: number): string {
  return JSON.stringify([size, questions], (_, value: unknown) =>
    value instanceof Map ? [...value] : value,
  );
}

interface Log {
  readonly store: string | null;
  readonly lines: readonly (readonly string[])[];
}

interface Asking {
  readonly ask: (order: StudyOrder, log: Log) => Promise<Answered>;
  readonly end: () => void;
}

function askHere(): Asking {
  let job: Promise<StudyJob> | undefined;
  return {
    async ask(order, { store, lines }) {
      job ??= import('../store/study-job.ts').then(({ studyJob }) => studyJob());
      const log = store === null ? ({ kind: 'lines', lines: lines.flat() } as const) : inStore(store);
      return (await job)(order, log);
    },
    end() {
      job = undefined;
    },
  };
}

const inStore = (name: string) => ({ kind: 'store', name }) as const;

/** One worker answers all questions, one after the other, and keeps what it has read between them. */
function askWorker(start: StartWorker): Asking {
  let worker: ReturnType<StartWorker> | undefined;
  let settle: { resolve: (answered: Answered) => void; reject: (problem: Error) => void } | undefined;

  function started(): ReturnType<StartWorker> {
    const fresh = start();
    fresh.addEventListener('error', ({ message }) =>
      settle?.reject(new Error(`the worker failed: ${message}`)),
    );
    fresh.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => {
      if (data.kind === 'done') settle?.resolve(data.result as Answered);
      if (data.kind === 'failed') settle?.reject(new Error(data.problem));
    });
    return fresh;
  }

  return {
    ask: (order, { store, lines }) =>
      new Promise<Answered>((resolve, reject) => {
        settle = { resolve, reject };
        worker ??= started();
        for (const part of lines) worker.postMessage({ kind: 'lines', lines: part } satisfies ToWorker);
        const log = store === null ? ({ kind: 'lines', lines: [] } as const) : inStore(store);
        worker.postMessage({ kind: 'study', order, log } satisfies ToWorker);
      }),
    end() {
      worker?.terminate();
      worker = undefined;
      settle?.reject(new Error('the study was ended'));
    },
  };
}
