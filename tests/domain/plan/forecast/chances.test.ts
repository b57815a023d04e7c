/** What comes of chances: held to sums over all that can happen, within four standard errors. */
import { expect, test } from 'vitest';
import type { PlanModel } from '../../../../src/domain/plan/forecast/plan-model.ts';
import { replicator } from '../../../../src/domain/plan/forecast/replicator.ts';
import type { Runs } from '../../../../src/domain/plan/forecast/runs.ts';
import { betaBinomial } from '../../../../src/domain/statistics/beta-binomial.ts';
import { aLot, aPlan, aStep, day, known, minute } from './plans.ts';

const replications = 40_000;
const runsOf = (plan: PlanModel): Runs =>
  replicator({ plan, marks: [day], seed: Number(process.env.SEED), replications })(0, replications);

/** Share of the replications for which it holds is what it ought to be. */
function expectShare(isSo: (run: number) => boolean, chance: number): void {
  let found = 0;
  for (let run = 0; run < replications; run += 1) if (isSo(run)) found += 1;
  const error = Math.sqrt((chance * (1 - chance)) / replications);
  expect(Math.abs(found / replications - chance)).toBeLessThanOrEqual(4 * error + 1e-12);
}

test('each of three pieces has its own luck at two stages: all ends are as likely as their sum over all paths', () => {
  const [lost, lowered] = [0.2, 0.3];
  const steps = [
    aStep(0, 1, { lost: known(lost), lowered: known(lowered) }),
    aStep(1, 1, { lost: known(lost) }),
  ];
  const runs = runsOf(aPlan(steps, { lots: [aLot(3)] }));
  // A piece ends as a first, a second or scrap.
  const first = (1 - lost) * (1 - lowered) * (1 - lost);
  const second = (1 - lost) * lowered * (1 - lost);
  const chances = [first, second, 1 - first - second];
  const ends = new Map<string, number>();
  for (const a of [0, 1, 2])
    for (const b of [0, 1, 2])
      for (const c of [0, 1, 2]) {
        const [firsts, seconds] = [0, 1].map((end) => [a, b, c].filter((each) => each === end).length);
        const chance = [a, b, c].reduce((product, end) => product * (chances[end] ?? 0), 1);
        ends.set(`${firsts} ${seconds}`, (ends.get(`${firsts} ${seconds}`) ?? 0) + chance);
      }
  expect(ends.size).toBe(10);
  for (const [end, chance] of ends)
    expectShare((run) => `${runs.good[run]} ${runs.seconds[run]}` === end, chance);
});

test('a piece that may be sent back is done after k rounds with the chance of the geometric distribution', () => {
  const back = 0.4;
  const steps = [
    aStep(0, 2),
    aStep(1, 3, { back: known(back), backTo: [{ step: 0, weight: 1 }] }),
    aStep(2, 1),
  ];
  const runs = runsOf(aPlan(steps, { lots: [aLot(1)] }));
  for (const rounds of [1, 2, 3, 4])
    expectShare((run) => runs.doneAt[run] === (5 * rounds + 1) * minute, back ** (rounds - 1) * (1 - back));
});

test('pieces are sent back to several stages by their weights', () => {
  const backTo = [
    { step: 0, weight: 3 },
    { step: 1, weight: 1 },
  ];
  const steps = [aStep(0, 10), aStep(1, 1), aStep(2, 1, { back: known(0.5), backTo })];
  const runs = runsOf(aPlan(steps, { lots: [aLot(1, { step: 2 })] }));
  expectShare((run) => runs.doneAt[run] === 13 * minute, 0.5 * 0.75 * 0.5);
  expectShare((run) => runs.doneAt[run] === 3 * minute, 0.5 * 0.25 * 0.5);
});

test('pieces share a chance that is not known: what comes through is beta-binomial', () => {
  const [alpha, beta, pieces] = [7.5, 2, 12];
  const lost = { kind: 'beta', alpha: beta, beta: alpha, shared: 0.5 } as const;
  const runs = runsOf(aPlan([aStep(0, 1, { lost })], { lots: [aLot(7), aLot(5)] }));
  for (let good = 3; good <= pieces; good += 1) {
    const chance = betaBinomial.pmf(good, pieces, alpha, beta);
    const error = Math.sqrt((chance * (1 - chance)) / replications);
    const share = runs.good.filter((each) => each === good).length / replications;
    // The chance is read off a table, with straight lines between eighths of a standard deviation.
    expect(Math.abs(share - chance)).toBeLessThan(4 * error + 0.001);
  }
});

test('variants that share all their luck at a stage do well and badly together', () => {
  const correlation = (shared: number) => {
    const lost = { kind: 'beta', alpha: 2, beta: 6, shared } as const;
    const variant = { wanted: 0, finished: 0, due: null, steps: [aStep(0, 1, { lost })] };
    const lots = [0, 1].map((variant) => aLot(500, { variant }));
    const { scrapped } = fewRuns(aPlan([], { ...oneStage, variants: [variant, variant], lots }));
    return correlationOf(scrapped);
  };
  expect(correlation(1)).toBeGreaterThan(0.97);
  expect(correlation(0.5)).toBeGreaterThan(0.38);
  expect(correlation(0.5)).toBeLessThan(0.6);
  expect(Math.abs(correlation(0))).toBeLessThan(0.12);
});

const oneStage = { stages: [{ kind: 'work', resource: null }] } as const;
const few = 2000;
const fewRuns = (plan: PlanModel) =>
  replicator({ plan, marks: [], seed: Number(process.env.SEED), replications: few })(0, few);

function correlationOf(pairs: Int32Array): number {
  let [x, y, xx, yy, xy] = [0, 0, 0, 0, 0];
  for (let at = 0; at < pairs.length; at += 2) {
    const [a, b] = [pairs[at] ?? 0, pairs[at + 1] ?? 0];
    x += a;
    y += b;
    xx += a * a;
    yy += b * b;
    xy += a * b;
  }
  const n = pairs.length / 2;
  return (n * xy - x * y) / Math.sqrt((n * xx - x * x) * (n * yy - y * y));
}
