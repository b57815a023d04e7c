/** What passes between a window and a worker that works out a forecast for it. Types only. */
import type { Forecast, ForecastQuestion } from '../domain/plan/forecast/forecast.ts';
import type { Part, Runs } from '../domain/plan/forecast/runs.ts';

/** `call` names what is asked, and comes back with each answer. */
export type ToForecastWorker =
  /** Work off a part of the replications; whatever was worked on before is given up, and not answered. */
  | { readonly kind: 'run'; readonly call: number; readonly question: ForecastQuestion; readonly part: Part }
  /** Say what all runs come to. */
  | {
      readonly kind: 'sum';
      readonly call: number;
      readonly question: ForecastQuestion;
      readonly runs: readonly Runs[];
    }
  /** Give up what is worked on. */
  | { readonly kind: 'cancel' };

export type FromForecastWorker =
  /** So many replications of the part are done. */
  | { readonly kind: 'progress'; readonly call: number; readonly done: number }
  | { readonly kind: 'runs'; readonly call: number; readonly runs: Runs }
  | { readonly kind: 'forecast'; readonly call: number; readonly forecast: Forecast }
  | { readonly kind: 'failed'; readonly call: number; readonly problem: string };
