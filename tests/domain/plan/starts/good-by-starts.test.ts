import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cases } from '../../../../shared/check-values/pooling.json' with { type: 'json' };
import { seededRandom } from '../../../../src/domain/chance/seeded-random.ts';
import { goodByStarts, type StageAhead } from '../../../../src/domain/plan/starts/good-by-starts.ts';
import { betaBinomial } from '../../../../src/domain/statistics/beta-binomial.ts';
import { drawRate, drawThrough, known } from './rates.ts';

const newBatch = (rates: readonly StageAhead['rate'][]) => rates.map((rate) => ({ rate, standing: 0 }));

describe('published values', () => {
  test('one stage is beta-binomial: ten starts at Beta(2, 3) (tabled chances, multiples of 1/1001)', () => {
    const { inputs, expected, tolerance } = cases['lot-bb-table'];
    for (const k of inputs.k) {
      const rate = { alpha: inputs.a, beta: inputs.b };
      const { chance } = goodByStarts({ wanted: k, finished: 0, stages: newBatch([rate]) })(inputs.n);
      const tail = expected.pmf.slice(k).reduce((sum, each) => sum + each, 0);
      expect(Math.abs(chance - tail)).toBeLessThanOrEqual(11 * tolerance);
    }
  });

  test('with a known rate it is binomial: 12 good of 13 to 16 at 0.9 (binomial tables)', () => {
    const { inputs, expected } = cases['lot-binomial-tail'];
    const comesTo = goodByStarts({ wanted: inputs.d, finished: 0, stages: newBatch([known(inputs.p)]) });
    for (const [at, n] of inputs.n.entries()) {
      expect(comesTo(n).chance).toBeCloseTo(expected.P[at] ?? Number.NaN, 6);
    }
  });

  test('stages in a row whose shapes follow on are one beta: Beta(a + b, c) times Beta(a, b) is Beta(a, b + c)', () => {
    // Exact (product of independent betas; N. L. Johnson, S. Kotz, Continuous Univariate Distributions 2; from memory).
    const chain = [
      { alpha: 9, beta: 1.5 },
      { alpha: 5, beta: 4 },
    ];
    const comesTo = goodByStarts({ wanted: 20, finished: 0, stages: newBatch(chain) });
    for (const n of [20, 33, 60]) {
      expect(comesTo(n).chance).toBeCloseTo(1 - betaBinomial.cdf(19, n, 5, 5.5), 12);
    }
  });
});

/** Draws rates, then pieces, stage by stage, and counts. */
function simulate(
  question: { wanted: number; finished: number; stages: readonly StageAhead[] },
  { starts, runs, seed }: { starts: number; runs: number; seed: number },
) {
  const random = seededRandom(seed);
  const sums = { reached: 0, short: 0, over: 0, good: 0 };
  for (let run = 0; run < runs; run += 1) {
    let pieces = starts;
    for (const { rate, standing } of question.stages) {
      pieces = drawThrough(Math.max(0, pieces + standing), drawRate(rate, random), random);
    }
    const good = pieces + question.finished;
    if (good >= question.wanted) sums.reached += 1;
    sums.short += Math.max(0, question.wanted - good);
    sums.over += Math.max(0, good - question.wanted);
    sums.good += good;
  }
  return {
    chance: sums.reached / runs,
    short: sums.short / runs,
    over: sums.over / runs,
    good: sums.good / runs,
  };
}

describe('against simulation', () => {
  // Standard error of a chance of 20,000 runs is at most 0.0035: four of them are allowed.
  const runs = 20_000;
  const stages: readonly StageAhead[] = [
    { rate: { alpha: 18, beta: 1.2 }, standing: 4 },
    { rate: { alpha: 30, beta: 3 }, standing: 0 },
    { rate: { alpha: 6, beta: 0.5 }, standing: 11 },
    { rate: { alpha: 40, beta: 2 }, standing: 3 },
  ];

  test('pieces in flight share the rates ahead of them with new ones', () => {
    const question = { wanted: 30, finished: 6, stages };
    const drawn = simulate(question, { starts: 14, runs, seed: 11 });
    const point = goodByStarts(question)(14);
    expect(Math.abs(point.chance - drawn.chance)).toBeLessThan(0.014);
    expect(Math.abs(point.good - drawn.good)).toBeLessThan(0.15);
    expect(Math.abs(point.short - drawn.short)).toBeLessThan(0.1);
    expect(Math.abs(point.over - drawn.over)).toBeLessThan(0.1);
  });

  test('with the mean rates taken for known the chance would be off by more than that error', () => {
    const question = { wanted: 30, finished: 6, stages };
    const sure = stages.map(({ rate, standing }) => ({
      rate: known(rate.alpha / (rate.alpha + rate.beta)),
      standing,
    }));
    const off = goodByStarts({ ...question, stages: sure })(14).chance - goodByStarts(question)(14).chance;
    expect(Math.abs(off)).toBeGreaterThan(0.03);
  });
});

describe('edges', () => {
  const one = newBatch([{ alpha: 3, beta: 1 }]);

  test('nothing wanted is certain, and what is started is left over', () => {
    expect(goodByStarts({ wanted: 0, finished: 0, stages: one })(4)).toEqual({
      starts: 4,
      chance: 1,
      good: 3,
      short: 0,
      over: 3,
    });
  });

  test('enough finished is certain', () => {
    expect(goodByStarts({ wanted: 5, finished: 7, stages: one })(0)).toMatchObject({
      chance: 1,
      good: 7,
      over: 2,
    });
  });

  test('no start and nothing in flight leaves all missing', () => {
    expect(goodByStarts({ wanted: 5, finished: 2, stages: one })(0)).toMatchObject({
      chance: 0,
      short: 3,
      over: 0,
    });
  });

  test('a route without stages loses none', () => {
    const comesTo = goodByStarts({ wanted: 5, finished: 2, stages: [] });
    expect([comesTo(2).chance, comesTo(3).chance]).toEqual([0, 1]);
  });

  test('a count below nothing takes back a piece that arrives', () => {
    const stages = [
      { rate: known(0.9999999), standing: 0 },
      { rate: known(0.9999999), standing: -1 },
    ];
    const comesTo = goodByStarts({ wanted: 3, finished: 0, stages });
    expect(comesTo(3).chance).toBeCloseTo(0, 4);
    expect(comesTo(4).chance).toBeCloseTo(1, 4);
    expect(comesTo(0)).toMatchObject({ chance: 0, short: 3 });
  });

  test('what is no count or no rate is refused', () => {
    expect(() => goodByStarts({ wanted: 1.5, finished: 0, stages: one })).toThrow(RangeError);
    expect(() => goodByStarts({ wanted: -1, finished: 0, stages: one })).toThrow(RangeError);
    expect(() => goodByStarts({ wanted: 1, finished: Number.NaN, stages: one })).toThrow(RangeError);
    expect(() => goodByStarts({ wanted: 1, finished: 0, stages: one })(-1)).toThrow(RangeError);
    expect(() => goodByStarts({ wanted: 1, finished: 0, stages: newBatch([{ alpha: 0, beta: 1 }]) })).toThrow(
      RangeError,
    );
  });
});

describe('laws', () => {
  const shape = fc.double({ min: 0.05, max: 300, noNaN: true });
  const stage = fc.record({
    rate: fc.record({ alpha: shape, beta: shape }),
    standing: fc.integer({ min: -2, max: 12 }),
  });
  const question = fc.record({
    wanted: fc.integer({ min: 0, max: 25 }),
    finished: fc.integer({ min: 0, max: 8 }),
    stages: fc.array(stage, { maxLength: 4 }),
  });

  test('more starts never do worse, and no figure is ever without a number', () => {
    fc.assert(
      fc.property(question, (each) => {
        const comesTo = goodByStarts(each);
        let before = comesTo(0);
        for (let starts = 0; starts < 40; starts += 1) {
          const point = comesTo(starts);
          for (const figure of Object.values(point)) expect(Number.isFinite(figure)).toBe(true);
          expect(point.chance).toBeGreaterThanOrEqual(before.chance - 1e-12);
          expect(point.short).toBeLessThanOrEqual(before.short + 1e-10);
          expect(point.over).toBeGreaterThanOrEqual(before.over - 1e-10);
          before = point;
        }
      }),
      { numRuns: 40 },
    );
  });

  test('the order of asking changes nothing', () => {
    fc.assert(
      fc.property(question, (each) => {
        const [forward, at] = [goodByStarts(each), goodByStarts(each)(30)];
        for (let starts = 0; starts <= 30; starts += 1) forward(starts);
        expect(forward(30)).toEqual(at);
      }),
      { numRuns: 20 },
    );
  });
});
