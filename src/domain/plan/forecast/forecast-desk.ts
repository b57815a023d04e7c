import { type Forecast, type ForecastQuestion, forecastOf } from './forecast.ts';
import { planProblem } from './plan-model.ts';
import { stepper } from './replicator.ts';
import type { Part, Runs } from './runs.ts';

/** Replications between two looks at whether anybody still wants them: some thousandths of a second, as a tap may wait for one. */
const together = 10;

/**
 * Gets a question ready; the function that is given works off a part of its replications in slices. It yields how many are done
 * after each, and gives the runs in the end. Who does not ask for the next slice has cancelled it, and may go on with another part.
 */
export function slicesOf(
  question: ForecastQuestion,
): (part: Part) => Generator<number, readonly Runs[], void> {
  // What can be seen not to come to an end is not tried.
  const steps = planProblem(question.plan) ? undefined : stepper(question);
  return function* (part) {
    if (!steps) return [];
    const { next, done, runs } = steps(part);
    for (let goesOn = part.to > part.from; goesOn; ) {
      goesOn = next(together);
      yield done();
    }
    return [runs];
  };
}

/** All replications here and now: for tests, and for small plans. */
export function forecast(question: ForecastQuestion): Forecast {
  const slices = slicesOf(question)({ from: 0, to: question.replications });
  for (;;) {
    const slice = slices.next();
    if (slice.done) return forecastOf(question, slice.value);
  }
}
