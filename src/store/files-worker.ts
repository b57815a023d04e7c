import * as v from 'valibot';
import {
  type Answer,
  type Ask,
  type Asked,
  answers,
  type Begin,
  type Reply,
  replySchema,
} from './files-protocol.ts';

/** As much of a worker as is needed of it. */
export interface PlainWorker {
  readonly postMessage: (message: unknown) => void;
  readonly terminate: () => void;
  readonly addEventListener: (
    type: 'message' | 'error' | 'messageerror',
    listener: (event: Event) => void,
  ) => void;
}

export interface FilesWorkerParts {
  /** The name of the store: its folder bears it. */
  readonly store: string;
  readonly start: () => PlainWorker;
  /** Runs something after so many ms, unless it is called off. */
  readonly after: (ms: number, run: () => void) => () => void;
}

export interface FilesWorker {
  readonly ask: <A extends Ask>(ask: A, what: Asked[A]) => Promise<Answer<A>>;
  readonly close: () => void;
}

/** The browser keeps no files for a worker, now or later. */
export class NoFilesKept extends Error {}

interface Waiting {
  readonly ask: Ask;
  readonly resolve: (value: unknown) => void;
  readonly reject: (why: Error) => void;
}

/** A worker from which nothing is heard for so many seconds is ended. */
const longestSilence = 5;

/**
 * Asks a worker, which is made at the first request. When it is silent for too long, dies, or says what no worker of
 * this version says, all that waits is rejected, and the next request makes a new one.
 */
export function filesWorker({ store, start, after }: FilesWorkerParts): FilesWorker {
  const waiting = new Map<number, Waiting>();
  let running: PlainWorker | undefined;
  let ids = 0;
  let silence = 0;
  let stopWatch: (() => void) | undefined;
  let closed = false;

  function end(why: string): void {
    running?.terminate();
    running = undefined;
    stopWatch?.();
    stopWatch = undefined;
    for (const { reject } of waiting.values()) reject(new Error(why));
    waiting.clear();
  }

  /** Counted second by second: to a window that was frozen, one long second is no silence of its worker. */
  function watch(): void {
    stopWatch = after(1000, () => {
      stopWatch = undefined;
      if (waiting.size === 0) return;
      silence += 1;
      if (silence >= longestSilence) end('the journal worker is silent');
      else watch();
    });
  }

  function begin(): PlainWorker {
    const started = start();
    const ifRunning = (act: (event: Event) => void) => (event: Event) => {
      if (running === started) act(event);
    };
    started.addEventListener('message', ifRunning(hear));
    started.addEventListener(
      'error',
      ifRunning(() => end('the journal worker has died')),
    );
    started.addEventListener(
      'messageerror',
      ifRunning(() => end('the journal worker cannot be understood')),
    );
    const first: Begin = { ask: 'begin', store };
    started.postMessage(first);
    return started;
  }

  function hear(event: Event): void {
    silence = 0;
    const reply = v.safeParse(replySchema, 'data' in event ? event.data : undefined);
    if (!reply.success) end('the journal worker cannot be understood');
    else if (reply.output.kind !== 'busy') answered(reply.output);
  }

  function answered(reply: Exclude<Reply, { kind: 'busy' }>): void {
    const asked = waiting.get(reply.id);
    waiting.delete(reply.id);
    if (waiting.size === 0) letRest();
    if (!asked) return;
    if (reply.kind === 'nowhere') asked.reject(new NoFilesKept('no files are kept here'));
    else if (reply.kind === 'failed') asked.reject(new Error(reply.why));
    else {
      const answer = v.safeParse(answers[asked.ask], reply.value);
      if (answer.success) asked.resolve(answer.output);
      else asked.reject(new Error('the journal worker cannot be understood'));
    }
  }

  function letRest(): void {
    stopWatch?.();
    stopWatch = undefined;
    if (closed) end('the journal is closed');
  }

  return {
    ask(ask, what) {
      return new Promise((resolve, reject) => {
        if (closed) throw new Error('the journal is closed');
        running ??= begin();
        ids += 1;
        running.postMessage({ ...what, ask, id: ids });
        // The answer has passed the schema of what was asked.
        waiting.set(ids, { ask, resolve: resolve as (value: unknown) => void, reject });
        if (stopWatch) return;
        silence = 0;
        watch();
      });
    },
    /** What was asked before is still answered. */
    close() {
      closed = true;
      if (waiting.size === 0) end('the journal is closed');
    },
  };
}
