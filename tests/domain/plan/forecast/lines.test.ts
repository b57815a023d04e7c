import { expect, test } from 'vitest';
import { cases } from '../../../../shared/check-values/flow.json' with { type: 'json' };
import type { PlanModel } from '../../../../src/domain/plan/forecast/plan-model.ts';
import { replicator } from '../../../../src/domain/plan/forecast/replicator.ts';
import { meanOf } from '../../../calibration/row.ts';
import { aLot, aPlan, aStep, hour, known, takes } from './plans.ts';

interface Line {
  /** Hours that a job takes at each station, and machines there. */
  readonly times: readonly number[];
  readonly machines: readonly number[];
  readonly cv?: number;
}

/** A line with a constant number of jobs: what has left it begins anew at once. A hand for each job, so none waits for one. */
function closedLine({ times, machines, cv = 0 }: Line, lots: readonly number[]): PlanModel {
  const jobs = lots.reduce((sum, pieces) => sum + pieces, 0);
  const last = times.length - 1;
  const steps = times.map((hours, stage) =>
    aStep(stage, 0, {
      minutes: takes(60 * hours, cv),
      ...(stage === last && { back: known(1), backTo: [{ step: 0, weight: 1 }] }),
    }),
  );
  return aPlan(steps, {
    stages: times.map((_, stage) => ({ kind: 'work', resource: stage })),
    resources: machines.map((capacity, at) => ({ name: `station ${at + 1}`, capacity })),
    people: Array.from({ length: jobs }, () => ({ hours: [{ from: 0, to: 1 }] })),
    lots: lots.map((pieces) => aLot(pieces)),
  });
}

/** Jobs an hour that come to the last station between 400 h and the end; one figure for each replication. */
function throughput(plan: PlanModel, { until, replications = 1 }: { until: number; replications?: number }) {
  const begun = (hours: number) => {
    const people = plan.people.map(() => ({ hours: [{ from: 0, to: hours * hour }] }));
    const run = replicator({ plan: { ...plan, people }, marks: [], seed: 3, replications });
    return Array.from({ length: replications }, (_, at) => run(at, at + 1).pieceVisits.at(-1) ?? 0);
  };
  const [early, late] = [begun(400), begun(until)];
  return late.map((jobs, at) => (jobs - (early[at] ?? 0)) / (until - 400));
}

test('Penny Fab One at its best makes min(w ÷ T0, rb), at its worst 1 ÷ T0 (Hopp and Spearman, Factory Physics, ch. 7)', () => {
  const best = cases['flow-pennyfab1-best'];
  const line = { times: [2, 2, 2, 2], machines: [1, 1, 1, 1] };
  for (const [at, jobs] of best.inputs.w.entries()) {
    const plan = closedLine(
      line,
      Array.from({ length: jobs }, () => 1),
    );
    expect(throughput(plan, { until: 2000 })[0]).toBeCloseTo(best.expected.TH[at] ?? 0, 2);
  }
  // All jobs on one pallet: the worst case.
  const worst = cases['flow-pennyfab1-worst'];
  for (const [at, jobs] of worst.inputs.w.entries()) {
    expect(throughput(closedLine(line, [jobs]), { until: 2000 })[0]).toBeCloseTo(
      worst.expected.TH[at] ?? 0,
      2,
    );
  }
});

test('Penny Fab Two reaches its bottleneck rate with its critical work in progress (ibid.)', () => {
  const { inputs, expected } = cases['flow-pennyfab2'];
  const line = { times: inputs.times_h, machines: inputs.machines };
  const made = (jobs: number) =>
    throughput(
      closedLine(
        line,
        Array.from({ length: jobs }, () => 1),
      ),
      { until: 2400 },
    )[0];
  expect(made(expected.W0 / 2)).toBeCloseTo(expected.rb / 2, 2);
  expect(made(expected.W0)).toBeCloseTo(expected.rb, 2);
  expect(made(2 * expected.W0)).toBeCloseTo(expected.rb, 2);
});

test('with exponential times Penny Fab One is the practical worst case: rb w ÷ (W0 + w − 1) (ibid.)', () => {
  const { rb, W0 } = cases['flow-pennyfab1-best'].inputs;
  for (const jobs of [1, 3, 4, 8]) {
    const plan = closedLine(
      { times: [2, 2, 2, 2], machines: [1, 1, 1, 1], cv: 1 },
      Array.from({ length: jobs }, () => 1),
    );
    const figures = throughput(plan, { until: 3400, replications: 60 });
    const [mean, error] = meanAndError(figures);
    expect(Math.abs(mean - (rb * jobs) / (W0 + jobs - 1))).toBeLessThan(4 * error + approximate * rb);
  }
});

/** The gamma variate of `timeTogether` is off by this share where it is exponential. */
const approximate = 0.004;

function meanAndError(figures: readonly number[]): readonly [mean: number, error: number] {
  const mean = meanOf(figures);
  const squares = figures.reduce((sum, figure) => sum + (figure - mean) ** 2, 0);
  return [mean, Math.sqrt(squares / (figures.length - 1) / figures.length)];
}

test('two stations in line take as long as the recursion of the flow shop says, in all orders; the least is Johnson’s', () => {
  const { inputs, expected } = cases['flow-johnson-lacrosse'];
  const jobs = Object.entries(inputs.jobs);
  const spans = ordersOf(jobs).map((order) => {
    let [first, second] = [0, 0];
    for (const [, [a = 0, b = 0]] of order) {
      first += a;
      second = Math.max(first, second) + b;
    }
    const plan = aPlan([aStep(0, 1), aStep(1, 1)], {
      stages: [0, 1].map((resource) => ({ kind: 'work', resource })),
      resources: [0, 1].map((at) => ({ name: `work centre ${at + 1}`, capacity: 1 })),
      people: Array.from({ length: 2 }, () => ({ hours: [{ from: 0, to: 99 * hour }] })),
      variants: order.map(([, [a = 0, b = 0]]) => ({
        ...{ wanted: 1, finished: 0, due: null },
        steps: [aStep(0, 60 * a), aStep(1, 60 * b)],
      })),
      lots: order.map((_, variant) => aLot(1, { variant })),
    });
    const [done = 0] = replicator({ plan, marks: [], seed: 1, replications: 1 })(0, 1).doneAt;
    expect(done).toBe(second * hour);
    return { span: second, name: order.map(([name]) => name).join('') };
  });
  expect(spans).toHaveLength(120);
  expect(Math.min(...spans.map(({ span }) => span))).toBe(expected.makespan);
  expect(spans).toContainEqual({ span: expected.makespan, name: expected.sequence.join('') });
});

function ordersOf<Item>(items: readonly Item[]): readonly (readonly Item[])[] {
  if (items.length < 2) return [items];
  return items.flatMap((item, at) => ordersOf(items.toSpliced(at, 1)).map((rest) => [item, ...rest]));
}
