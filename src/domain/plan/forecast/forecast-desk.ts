import { type Forecast, type ForecastQuestion, forecastOf } from './forecast.ts';
import { planProblem } from './plan-model.ts';
import { replicator } from './replicator.ts';
import type { Part, Runs } from './runs.ts';

/** Replications between two looks at whether anybody still wants them: some hundredths of a second. */
const together = 50;

/**
 * Works off a part of the replications in slices; yields how many are done after each, and gives the runs in the end. Who
 * does not ask for the next slice has cancelled it.
 */
export function* runsInSlices(
  question: ForecastQuestion,
  { from, to }: Part,
): Generator<number, readonly Runs[], void> {
  // What can be seen not to come to an end is not tried.
  if (planProblem(question.plan)) return [];
  const run = replicator(question);
  const parts: Runs[] = [];
  for (let at = from; at < to; at += together) {
    const end = Math.min(at + together, to);
    parts.push(run(at, end));
    yield end - from;
  }
  return parts;
}

/** All replications here and now: for tests, and for small plans. */
export function forecast(question: ForecastQuestion): Forecast {
  const slices = runsInSlices(question, { from: 0, to: question.replications });
  for (;;) {
    const slice = slices.next();
    if (slice.done) return forecastOf(question, slice.value);
  }
}
