import { type Forecast, type ForecastQuestion, forecastOf } from './forecast.ts';
import { slicesOf } from './forecast-desk.ts';
import { joinedRuns, type Part, type Runs } from './runs.ts';

/** Replications from one word of progress to the next: each is drawn by a window that has other things to do. */
const tellEach = 50;

interface ForecastListener {
  readonly progress: (done: number) => void;
  readonly runs: (runs: Runs) => void;
  readonly failed: (problem: string) => void;
}

/** A part of a question that is to be worked off. `call` names the question: its other parts cost no getting ready. */
interface PartAsked {
  readonly call: number;
  readonly question: ForecastQuestion;
  readonly part: Part;
}

export interface ForecastServer {
  /** Works off a part, a slice a turn; what was worked on before is given up. Resolves when it is done or given up. */
  readonly run: (asked: PartAsked, listener: ForecastListener) => Promise<void>;
  readonly cancel: () => void;
  readonly sum: (question: ForecastQuestion, runs: readonly Runs[]) => Forecast;
}

/** @param turn lets others have their turn: a message that cancels is heard, and a window answers its fingers */
export function forecastServer(turn: () => Promise<void>): ForecastServer {
  let current = 0;
  let ready: { readonly call: number; readonly slices: ReturnType<typeof slicesOf> } | undefined;
  return {
    async run({ call, question, part }, { progress, runs, failed }) {
      current += 1;
      const mine = current;
      try {
        if (ready?.call !== call) ready = { call, slices: slicesOf(question) };
        const slices = ready.slices(part);
        let told = 0;
        for (;;) {
          const slice = slices.next();
          if (slice.done) {
            runs(slice.value[0] ?? joinedRuns([]));
            return;
          }
          if (slice.value >= told + tellEach || slice.value === part.to - part.from) {
            told = slice.value;
            progress(told);
          }
          await turn();
          if (current !== mine) return;
        }
      } catch (error) {
        failed(String(error));
      }
    },
    cancel() {
      current += 1;
    },
    sum: forecastOf,
  };
}
