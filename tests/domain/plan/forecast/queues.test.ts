/** A person at a stage is a server of a queue: the simulation is held to the formulas of queueing theory. */
import { expect, test } from 'vitest';
import { cases } from '../../../../shared/check-values/flow.json' with { type: 'json' };
import { type Random, seededRandom } from '../../../../src/domain/chance/seeded-random.ts';
import { replicator } from '../../../../src/domain/plan/forecast/replicator.ts';
import { littlesLaw } from '../../../../src/domain/statistics/littles-law.ts';
import { aLot, aPlan, aStep, hour, takes } from './plans.ts';

interface Queue {
  /** An hour. */
  readonly lambda: number;
  readonly mu: number;
  readonly servers: number;
  /** Of the service: 1 is exponential, 0 always the same. */
  readonly cv: number;
}

const [jobs, days] = [2500, 80];

/**
 * Jobs in the system, looked at 2,000 times on each of 80 long days between the first tenth of it and the last; mean and
 * standard error of that.
 */
function inSystem({ lambda, mu, servers, cv }: Queue): readonly [mean: number, error: number] {
  const random = seededRandom(Number(process.env.SEED));
  const people = Array.from({ length: servers }, () => ({ hours: [{ from: 0, to: 1e6 * hour }] }));
  const means = Array.from({ length: days }, (_, seed) => {
    const came = arrivals(lambda, random);
    const last = came.at(-1) ?? 0;
    const marks = Array.from({ length: 2000 }, (_, at) => last * (0.1 + 0.8 * ((at + 0.5) / 2000)));
    const plan = aPlan([aStep(0, 0, { minutes: takes(60 / mu, cv) })], {
      people,
      lots: came.map((ready) => aLot(1, { ready })),
    });
    const { good } = replicator({ plan, marks, seed, replications: 1 })(0, 1);
    let at = 0;
    let sum = 0;
    for (const [mark, when] of marks.entries()) {
      while ((came[at] ?? Number.POSITIVE_INFINITY) <= when) at += 1;
      sum += at - (good[mark] ?? 0);
    }
    return sum / marks.length;
  });
  const mean = means.reduce((sum, each) => sum + each, 0) / days;
  const squares = means.reduce((sum, each) => sum + (each - mean) ** 2, 0);
  return [mean, Math.sqrt(squares / (days - 1) / days)];
}

/** Moments of a Poisson process, in whole ms. */
function arrivals(lambda: number, random: Random): readonly number[] {
  let now = 0;
  return Array.from({ length: jobs }, () => {
    now -= (Math.log(1 - random()) / lambda) * hour;
    return Math.ceil(now);
  });
}

/** The gamma variate that stands for an exponential one has its mean and, to 0.4 %, its variance. */
const approximate = 0.006;

const isNear = ([mean, error]: readonly [number, number], value: number) =>
  Math.abs(mean - value) < 4 * error + approximate * value;

test('M/M/1 with 2 arrivals and 3 services an hour has 2 in the system for 1 hour (Hillier and Lieberman, County Hospital)', () => {
  const { inputs, expected } = cases['flow-mm1'];
  const found = inSystem({ ...inputs, servers: 1, cv: 1 });
  expect(isNear(found, expected.L)).toBe(true);
  // Little's law.
  const leadTime = littlesLaw({ wip: found[0], throughput: inputs.lambda })?.leadTime ?? 0;
  expect(isNear([leadTime, found[1] / inputs.lambda], expected.W)).toBe(true);
});

test('M/M/2 with the same rates has 0.75 in the system (Erlang C; ibid.)', () => {
  const { inputs, expected } = cases['flow-mm2'];
  expect(isNear(inSystem({ ...inputs, servers: inputs.c, cv: 1 }), expected.L)).toBe(true);
});

test('M/D/1 waits half as long as M/M/1 (Heizer and Render, Garcia-Golding Recycling)', () => {
  const { inputs, expected } = cases['flow-md1'];
  const served = inputs.lambda / inputs.mu;
  const system = (wait: number) => inputs.lambda * wait + served;
  expect(isNear(inSystem({ ...inputs, servers: 1, cv: 0 }), system(expected.Wq_MD1))).toBe(true);
  expect(isNear(inSystem({ ...inputs, servers: 1, cv: 1 }), system(expected.Wq_MM1))).toBe(true);
});

test('M/G/1 waits by its coefficient of variation (Pollaczek and Khinchine: Wq = ρ (1 + c²) ÷ 2 (μ − λ))', () => {
  const [lambda, mu, cv] = [2, 3, 0.5];
  const wait = ((lambda / mu) * (1 + cv ** 2)) / (2 * (mu - lambda));
  expect(isNear(inSystem({ lambda, mu, servers: 1, cv }), lambda * wait + lambda / mu)).toBe(true);
});
