import { type Forecast, type ForecastQuestion, forecastOf } from './forecast.ts';
import { runsInSlices } from './forecast-desk.ts';
import { joinedRuns, type Part, type Runs } from './runs.ts';

interface ForecastListener {
  readonly progress: (done: number) => void;
  readonly runs: (runs: Runs) => void;
  readonly failed: (problem: string) => void;
}

export interface ForecastServer {
  /** Works off a part, a slice a turn; what was worked on before is given up. Resolves when it is done or given up. */
  readonly run: (question: ForecastQuestion, part: Part, listener: ForecastListener) => Promise<void>;
  readonly cancel: () => void;
  readonly sum: (question: ForecastQuestion, runs: readonly Runs[]) => Forecast;
}

/** @param turn lets others have their turn: a message that cancels is heard, and a window answers its fingers */
export function forecastServer(turn: () => Promise<void>): ForecastServer {
  let current = 0;
  return {
    async run(question, part, { progress, runs, failed }) {
      current += 1;
      const mine = current;
      try {
        const slices = runsInSlices(question, part);
        for (;;) {
          const slice = slices.next();
          if (slice.done) {
            runs(joinedRuns(slice.value));
            return;
          }
          progress(slice.value);
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
