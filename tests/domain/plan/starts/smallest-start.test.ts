import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cases } from '../../../../shared/check-values/pooling.json' with { type: 'json' };
import { mostStarts, smallestStart } from '../../../../src/domain/plan/starts/smallest-start.ts';
import { startsCurve } from '../../../../src/domain/plan/starts/starts-curve.ts';
import { known } from './rates.ts';

const oneStage = (wanted: number, rate: { alpha: number; beta: number }, standing = 0) => ({
  wanted,
  finished: 0,
  stages: [{ rate, standing }],
});

describe('published values', () => {
  test('reject allowance at a known rate (binomial tables)', () => {
    const { inputs, expected } = cases['lot-binomial-start'];
    const found = inputs.cases.map(({ d, p, gamma }) => {
      const start = smallestStart(oneStage(d, known(p)), { confidence: gamma });
      return start.kind === 'starts' ? start.point.starts : start.kind;
    });
    expect(found).toEqual(expected.n);
  });

  test('success runs: one flawed piece among n (S. S. Wilks, Annals of Mathematical Statistics 12 (1941) 91-96)', () => {
    const { inputs, expected } = cases['lot-success-run'];
    const found = inputs.pairs_CR.map(([confidence = 0, share = 0]) => {
      const start = smallestStart(oneStage(1, known(1 - share)), { confidence, most: 1000 });
      return start.kind === 'starts' ? start.point.starts : start.kind;
    });
    expect(found).toEqual(expected.n);
  });
});

describe('answers that are no number of starts', () => {
  test('out of reach: the most starts and what they come to', () => {
    const start = smallestStart(oneStage(10, { alpha: 1, beta: 1 }), { confidence: 0.95, most: 100 });
    // Of a rate that may be anything all numbers of good ones from 0 to 100 are alike.
    expect(start).toMatchObject({ kind: 'out-of-reach', point: { starts: 100 } });
    expect(start.kind === 'out-of-reach' && start.point.chance).toBeCloseTo(91 / 101, 12);
  });

  test('certainty is not to be had', () => {
    expect(smallestStart(oneStage(10, { alpha: 99, beta: 1 }), { confidence: 1 })).toEqual({
      kind: 'never-certain',
    });
  });
});

describe('edges', () => {
  test('nothing wanted, or no confidence, wants no start', () => {
    const rate = { alpha: 9, beta: 1 };
    expect(smallestStart(oneStage(0, rate), { confidence: 1 })).toMatchObject({
      kind: 'starts',
      point: { starts: 0 },
    });
    expect(smallestStart(oneStage(9, rate), { confidence: 0 })).toMatchObject({
      kind: 'starts',
      point: { starts: 0 },
    });
  });

  test('one piece', () => {
    expect(smallestStart(oneStage(1, { alpha: 9, beta: 1 }), { confidence: 0.9 })).toMatchObject({
      kind: 'starts',
      point: { starts: 1, chance: expect.closeTo(0.9, 12) },
    });
  });

  test('what is no confidence is refused', () => {
    for (const confidence of [-0.1, 1.1, Number.NaN]) {
      expect(() => smallestStart(oneStage(1, known(0.9)), { confidence })).toThrow(RangeError);
    }
  });

  test('without a history a few are still within reach', () => {
    const start = smallestStart(oneStage(10, { alpha: 1, beta: 1 }), { confidence: 0.9 });
    expect(start.kind).toBe('starts');
    expect(mostStarts(10)).toBe(150);
  });
});

describe('laws', () => {
  const question = fc.record({
    wanted: fc.integer({ min: 1, max: 20 }),
    rate: fc.record({
      alpha: fc.double({ min: 1, max: 60, noNaN: true }),
      beta: fc.double({ min: 0.1, max: 9, noNaN: true }),
    }),
    standing: fc.integer({ min: 0, max: 15 }),
  });
  const startsOf = (
    each: { wanted: number; rate: { alpha: number; beta: number }; standing: number },
    confidence: number,
  ) => {
    const start = smallestStart(oneStage(each.wanted, each.rate, each.standing), { confidence });
    return start.kind === 'starts' ? start.point.starts : Number.POSITIVE_INFINITY;
  };

  test('more confidence, and more wanted, never want fewer starts; more in flight never more', () => {
    fc.assert(
      fc.property(question, fc.double({ min: 0.3, max: 0.9, noNaN: true }), (each, confidence) => {
        const starts = startsOf(each, confidence);
        expect(startsOf(each, confidence + 0.05)).toBeGreaterThanOrEqual(starts);
        expect(startsOf({ ...each, standing: each.standing + 1 }, confidence)).toBeLessThanOrEqual(starts);
        if (starts < Number.POSITIVE_INFINITY) {
          expect(startsOf({ ...each, wanted: each.wanted + 1 }, confidence)).toBeGreaterThanOrEqual(starts);
        }
      }),
      { numRuns: 50 },
    );
  });

  test('pieces before the first stage are starts that were made', () => {
    const rate = { alpha: 30, beta: 3 };
    expect(startsOf({ wanted: 20, rate, standing: 0 }, 0.9)).toBe(
      7 + startsOf({ wanted: 20, rate, standing: 7 }, 0.9),
    );
  });
});

test('a curve has its ends and so many points', () => {
  const question = oneStage(50, { alpha: 45, beta: 5 });
  const curve = startsCurve(question, { from: 40, to: 90, points: 11 });
  expect(curve.map(({ starts }) => starts)).toEqual([40, 45, 50, 55, 60, 65, 70, 75, 80, 85, 90]);
  expect(startsCurve(question, { from: 3, to: 5 }).map(({ starts }) => starts)).toEqual([3, 4, 5]);
  expect(startsCurve(question, { from: 3, to: 3 })).toHaveLength(1);
  expect(() => startsCurve(question, { from: 5, to: 3 })).toThrow(RangeError);
});
