import { type ReadonlySignal, signal } from '@preact/signals';
import type { Forecast, ForecastQuestion } from '../domain/plan/forecast/forecast.ts';
import { buffersOfRuns, partsFor, type Runs } from '../domain/plan/forecast/runs.ts';
import type { FromForecastWorker, ToForecastWorker } from '../worker/forecast-protocol.ts';

/** A forecast with the question that it answers. */
interface Forecasted {
  readonly question: ForecastQuestion;
  readonly forecast: Forecast;
}

/** `last` is the newest that was ever worked out: it may be shown while there is nothing newer. */
export type ForecastState =
  | { readonly kind: 'none'; readonly last: Forecasted | null }
  | { readonly kind: 'working'; readonly done: number; readonly of: number; readonly last: Forecasted | null }
  | { readonly kind: 'ready'; readonly last: Forecasted }
  | { readonly kind: 'failed'; readonly problem: string; readonly last: Forecasted | null };

/** What works out forecasts for a screen, beside the window where there are workers. */
export interface ForecastDoor {
  readonly state: ReadonlySignal<ForecastState>;
  /**
   * Asks; what was asked before and is not answered yet is given up. Resolves with the forecast, with null when it was given
   * up or failed; never rejects.
   */
  readonly ask: (question: ForecastQuestion) => Promise<Forecast | null>;
  /** Gives up what is worked on. */
  readonly cancel: () => void;
  /** Ends the workers, and gives back their memory. */
  readonly close: () => void;
}

/** Starts a worker that works out forecasts. */
export type StartForecastWorker = () => Pick<Worker, 'postMessage' | 'terminate' | 'addEventListener'>;

/** Undefined where the browser has no workers. */
const startForecastWorker: StartForecastWorker | undefined =
  typeof Worker === 'undefined'
    ? undefined
    : () => new Worker(new URL('../worker/forecast-worker.ts', import.meta.url), { type: 'module' });

export interface ForecastParts {
  readonly start?: StartForecastWorker | undefined;
  /** How many workers share the replications; the answer does not depend on it. */
  readonly workers?: number;
}

/** One core is left to the window, and more than two workers would only warm the tablet. */
const usualWorkers = (cores: number): number => (cores > 2 ? 2 : 1);

export function openForecast({
  start = startForecastWorker,
  workers = usualWorkers(navigator.hardwareConcurrency),
}: ForecastParts = {}): ForecastDoor {
  const state = signal<ForecastState>({ kind: 'none', last: null });
  const crew = start ? workersOf(start, workers) : crewHere();
  let last: Forecasted | null = null;
  let calls = 0;
  let isClosed = false;

  function giveUp(): void {
    calls += 1;
    crew.cancel();
  }

  return {
    state,
    async ask(question) {
      if (isClosed) return null;
      giveUp();
      const mine = calls;
      const isMine = () => mine === calls;
      const of = question.replications;
      const progress = (done: number) => {
        if (isMine()) state.value = { kind: 'working', done, of, last };
      };
      progress(0);
      try {
        const forecast = await crew.work(question, progress);
        if (!isMine() || forecast === null) return null;
        last = { question, forecast };
        state.value = { kind: 'ready', last };
        return forecast;
      } catch (error) {
        if (isMine()) {
          crew.end();
          state.value = { kind: 'failed', problem: String(error), last };
        }
        return null;
      }
    },
    cancel() {
      if (state.value.kind !== 'working') return;
      giveUp();
      state.value = last ? { kind: 'ready', last } : { kind: 'none', last: null };
    },
    close() {
      isClosed = true;
      giveUp();
      crew.end();
    },
  };
}

interface Crew {
  /** null when it was given up. */
  readonly work: (question: ForecastQuestion, progress: (done: number) => void) => Promise<Forecast | null>;
  readonly cancel: () => void;
  readonly end: () => void;
}

/** In the window, a slice at a time: a finger is answered between two of them. */
function crewHere(): Crew {
  let giveUp = () => {};
  return {
    work: (question, progress) =>
      new Promise((resolve, reject) => {
        // It may be given up while the code is still on its way.
        let isGivenUp = false;
        let cancel = () => {};
        giveUp = () => {
          isGivenUp = true;
          cancel();
          resolve(null);
        };
        void import('../domain/plan/forecast/serve-forecast.ts').then(({ forecastServer }) => {
          if (isGivenUp) return;
          const server = forecastServer(() => new Promise((turn) => setTimeout(turn)));
          cancel = server.cancel;
          void server.run(
            { call: 0, question, part: { from: 0, to: question.replications } },
            {
              progress,
              runs: (runs) => resolve(server.sum(question, [runs])),
              failed: (problem) => reject(new Error(problem)),
            },
          );
        }, reject);
      }),
    cancel: () => giveUp(),
    end: () => giveUp(),
  };
}

/** Workers that share the replications; the first one says what all of them come to. */
function workersOf(start: StartForecastWorker, many: number): Crew {
  let crew: Hand[] = [];
  let call = 0;
  let giveUp = () => {};
  return {
    async work(question, progress) {
      while (crew.length < many) crew.push(hand(start()));
      call += 1;
      const mine = call;
      const parts = partsFor(question.replications, many);
      const done = parts.map(() => 0);
      const givenUp = new Promise<null>((resolve) => {
        giveUp = () => resolve(null);
      });
      const found: Runs[] = [];
      let next = 0;
      /** One part after another, as long as there are any. */
      const workOff = async ({ ask }: Hand): Promise<void> => {
        for (let part = parts[next]; part && call === mine; part = parts[next]) {
          const at = next;
          next += 1;
          const answer = await ask({ kind: 'run', call: mine, question, part }, [], (count) => {
            done[at] = count;
            progress(done.reduce((sum, each) => sum + each, 0));
          });
          if (answer.kind === 'runs') found.push(answer.runs);
        }
      };
      const runs = Promise.all(crew.map(workOff));
      const all = await Promise.race([runs, givenUp]);
      if (all === null) return null;
      const summed = crew[0]?.ask(
        { kind: 'sum', call: mine, question, runs: found },
        found.flatMap((each: Runs) => [...buffersOfRuns(each)]),
      );
      const answer = await Promise.race([summed, givenUp]);
      return answer?.kind === 'forecast' ? answer.forecast : null;
    },
    cancel() {
      giveUp();
      for (const { say } of crew) say({ kind: 'cancel' });
    },
    end() {
      giveUp();
      for (const { end } of crew) end();
      crew = [];
    },
  };
}

type Answer = Exclude<FromForecastWorker, { kind: 'progress' | 'failed' }>;

interface Hand {
  readonly say: (message: ToForecastWorker) => void;
  readonly ask: (
    message: Extract<ToForecastWorker, { readonly call: number }>,
    handOver: readonly ArrayBuffer[],
    progress?: (done: number) => void,
  ) => Promise<Answer>;
  readonly end: () => void;
}

function hand(worker: ReturnType<StartForecastWorker>): Hand {
  let waiting:
    | {
        call: number;
        resolve: (answer: Answer) => void;
        reject: (problem: Error) => void;
        progress: (done: number) => void;
      }
    | undefined;
  worker.addEventListener('error', ({ message }) =>
    waiting?.reject(new Error(`the worker failed: ${message}`)),
  );
  worker.addEventListener('message', ({ data }: MessageEvent<FromForecastWorker>) => {
    // Of what was given up an answer may still be on its way.
    if (data.call !== waiting?.call) return;
    if (data.kind === 'progress') waiting.progress(data.done);
    else if (data.kind === 'failed') waiting.reject(new Error(data.problem));
    else waiting.resolve(data);
  });
  return {
    say: (message) => worker.postMessage(message),
    ask: (message, handOver, progress = () => {}) =>
      new Promise((resolve, reject) => {
        waiting = { call: message.call, resolve, reject, progress };
        worker.postMessage(message, [...handOver]);
      }),
    end: () => worker.terminate(),
  };
}
