import { compiledPlan } from './compiled-plan.ts';
import { demandPlan } from './demand-plan.ts';
import { type Floor, newFloor } from './floor.ts';
import { replicate } from './replicate.ts';
import type { ForecastOrder, Part, Runs } from './runs.ts';

/** A part that is worked off step by step, into tables that are made once. */
export interface Steps {
  /** The next so many replications; false when the part is done. */
  readonly next: (count: number) => boolean;
  readonly done: () => number;
  /** What came of those that are done; whole when the part is. */
  readonly runs: Runs;
}

/**
 * Gets a plan ready to be worked off; the function that is given does so for a part of the replications, in steps. One part
 * at a time: they share a floor.
 *
 * @throws {RangeError} see `demandPlan`; for marks that do not ascend
 */
export function stepper({ plan, marks, seed }: ForecastOrder): (part: Part) => Steps {
  demandPlan(plan);
  if (marks.some((mark, at) => !(mark > (marks[at - 1] ?? Number.NEGATIVE_INFINITY))))
    throw new RangeError('Marks ascend');
  const floor = newFloor(compiledPlan(plan), marks);
  return ({ from, to }) => {
    const runs = emptyRuns({ from, count: to - from }, floor);
    floor.workedMs.fill(0);
    floor.pieceVisits.fill(0);
    let [worked, done] = [0, 0];
    return {
      runs,
      done: () => done,
      next(count) {
        for (const end = Math.min(done + count, runs.count); done < end; done += 1) {
          replicate(floor, { seed, replication: from + done });
          keep(runs, done, floor);
          const now = floor.workedMs.reduce((sum, ms) => sum + ms, 0);
          runs.handsMs[done] = now - worked;
          worked = now;
        }
        runs.workedMs.set(floor.workedMs);
        runs.pieceVisits.set(floor.pieceVisits);
        return done < runs.count;
      },
    };
  };
}

/** The same in one step: the runs from `from` on, before `to`. */
export function replicator(order: ForecastOrder): (from: number, to: number) => Runs {
  const steps = stepper(order);
  return (from, to) => {
    const { next, runs } = steps({ from, to });
    next(runs.count);
    return runs;
  };
}

function emptyRuns({ from, count }: Pick<Runs, 'from' | 'count'>, { plan, marks }: Floor): Runs {
  return {
    ...{ from, count, doneAt: new Float64Array(count), enoughAt: new Float64Array(count) },
    handsMs: new Float64Array(count),
    good: new Int32Array(count * plan.variants * marks.length),
    seconds: new Int32Array(count * plan.variants),
    scrapped: new Int32Array(count * plan.variants),
    workedMs: new Float64Array(plan.stages),
    pieceVisits: new Float64Array(plan.stages),
  };
}

function keep(runs: Runs, at: number, floor: Floor): void {
  const { plan, marks, goodAt } = floor;
  runs.doneAt[at] = floor.doneAt;
  runs.enoughAt[at] = floor.enoughAt;
  runs.seconds.set(floor.asSeconds, at * plan.variants);
  runs.scrapped.set(floor.scrapped, at * plan.variants);
  let place = at * plan.variants * marks.length;
  for (let variant = 0; variant < plan.variants; variant += 1) {
    let sum = plan.finished[variant] ?? 0;
    for (let mark = 0; mark < marks.length; mark += 1) {
      sum += goodAt[variant * (marks.length + 1) + mark] ?? 0;
      runs.good[place] = sum;
      place += 1;
    }
  }
}
