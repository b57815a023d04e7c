import * as v from 'valibot';
import { type AnswerTo, answers, type Input, type Question, replySchema } from './files-protocol.ts';

export interface FilesWorkerParts {
  readonly store: string;
  readonly start: () => Worker;
  /** Runs something later (ms); returns how to call it off. */
  readonly after: (ms: number, run: () => void) => () => void;
}

export interface FilesWorker {
  /** Rejects when the worker fails, dies, or does not answer in time; the next question then starts a new one. */
  readonly ask: <Name extends Question>(name: Name, input: Input[Name]) => Promise<AnswerTo<Name>>;
  readonly end: () => void;
}

/** A worker that does not answer for so long (ms) is ended; the first answer may have to wait for old files. */
const longestWait = 10_000;

interface Waiting {
  readonly resolve: (answer: unknown) => void;
  readonly reject: (problem: Error) => void;
}

/** The window's side of the worker that keeps the files of one store. */
export function filesWorker({ store, start, after }: FilesWorkerParts): FilesWorker {
  const waiting = new Map<number, Waiting>();
  let worker: Worker | undefined;
  let asked = 0;

  function end(problem: string): void {
    worker?.terminate();
    worker = undefined;
    for (const { reject } of waiting.values()) reject(new Error(problem));
    waiting.clear();
  }

  function running(): Worker {
    if (worker) return worker;
    const started = start();
    started.onerror = () => end('the worker died');
    started.onmessageerror = () => end('the worker spoke gibberish');
    started.onmessage = ({ data }: MessageEvent<unknown>) => {
      const reply = v.parse(replySchema, data);
      const who = waiting.get(reply.id);
      waiting.delete(reply.id);
      if (reply.kind === 'done') who?.resolve(reply.answer);
      else who?.reject(new Error(reply.problem));
    };
    started.postMessage({ begin: store });
    worker = started;
    return started;
  }

  return {
    async ask(name, input) {
      asked += 1;
      const id = asked;
      const callOff = after(longestWait, () => end('the worker does not answer'));
      try {
        const answer = await new Promise<unknown>((resolve, reject) => {
          waiting.set(id, { resolve, reject });
          running().postMessage({ id, ask: name, input });
        });
        return v.parse(answers[name], answer) as AnswerTo<typeof name>;
      } finally {
        callOff();
        waiting.delete(id);
      }
    },
    end: () => end('closed'),
  };
}
