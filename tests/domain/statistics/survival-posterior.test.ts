import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SurvivalStep } from '../../../src/domain/statistics/product-limit.ts';
import { betaQuantile } from '../../../src/domain/statistics/special-functions.ts';
import { survivalPosterior } from '../../../src/domain/statistics/survival-posterior.ts';

const step = fc
  .integer({ min: 0, max: 60 })
  .chain((atRisk) => fc.record({ atRisk: fc.constant(atRisk), lost: fc.nat({ max: atRisk }) }));
const steps = fc.array(step, { minLength: 1, maxLength: 14 });

/** A route that all pieces have been through, with these losses stage by stage. */
function finished(pieces: number, losses: readonly number[]): { route: SurvivalStep[]; left: number } {
  const route: SurvivalStep[] = [];
  let left = pieces;
  for (const loss of losses) {
    const lost = Math.min(loss, left);
    route.push({ atRisk: left, lost });
    left -= lost;
  }
  return { route, left };
}

describe('the laws of the posterior of survival', () => {
  test('without a piece in flight it is that of the plain share under a uniform prior', () => {
    const losses = fc.array(fc.nat({ max: 20 }), { minLength: 1, maxLength: 14 });
    fc.assert(
      fc.property(fc.nat({ max: 200 }), losses, (pieces, each) => {
        const { route, left } = finished(pieces, each);
        const { mean, interval, worth } = survivalPosterior(route, 0.9);
        expect(mean).toBeCloseTo((left + 1) / (pieces + 2), 10);
        for (const [index, p] of [0.05, 0.95].entries()) {
          expect(interval[index]).toBeCloseTo(betaQuantile(p, left + 1, pieces - left + 1), 8);
        }
        expect(worth.k).toBeCloseTo(left, 6);
        expect(worth.n).toBeCloseTo(pieces, 6);
      }),
    );
  });

  test('the interval holds the mean within 0 and 1, and the worth is a share', () => {
    fc.assert(
      fc.property(steps, fc.double({ min: 0.8, max: 0.99, noNaN: true }), (route, level) => {
        const { mean, interval, worth } = survivalPosterior(route, level);
        expect(interval[0]).toBeGreaterThanOrEqual(0);
        expect(interval[0]).toBeLessThan(mean);
        expect(interval[1]).toBeGreaterThan(mean);
        expect(interval[1]).toBeLessThanOrEqual(1);
        expect(worth.k).toBeGreaterThanOrEqual(0);
        expect(worth.n).toBeGreaterThanOrEqual(worth.k);
      }),
    );
  });

  test('a piece more that comes through a stage raises it, one more that is lost lowers it', () => {
    fc.assert(
      fc.property(steps, fc.nat(), (route, draw) => {
        const { mean } = survivalPosterior(route);
        const at = draw % route.length;
        const withOne = (lost: number) =>
          survivalPosterior(
            route.map((each, index) =>
              index === at ? { atRisk: each.atRisk + 1, lost: each.lost + lost } : each,
            ),
          ).mean;
        expect(withOne(0)).toBeGreaterThan(mean);
        expect(withOne(1)).toBeLessThan(mean);
      }),
    );
  });

  test('a stage that fewer pieces have tried leaves it wider', () => {
    const width = (atRisk: number) => {
      const { interval } = survivalPosterior([
        { atRisk: 40, lost: 4 },
        { atRisk, lost: 0 },
      ]);
      return interval[1] - interval[0];
    };
    expect(width(0)).toBeGreaterThan(width(5));
    expect(width(5)).toBeGreaterThan(width(30));
  });
});

describe('the edges', () => {
  test('before a piece was tried survival may be anything', () => {
    const untried = Array.from({ length: 14 }, () => ({ atRisk: 0, lost: 0 }));
    const { mean, interval, worth } = survivalPosterior(untried, 0.9);
    expect(mean).toBeCloseTo(0.5, 12);
    expect(interval).toEqual([expect.closeTo(0.05, 9), expect.closeTo(0.95, 9)]);
    expect(worth.n).toBeCloseTo(0, 9);
  });

  test('a route without a stage is survived', () => {
    expect(survivalPosterior([])).toEqual({ mean: 1, interval: [1, 1], worth: { k: 0, n: 0 } });
  });

  test.each([
    [[{ atRisk: 3, lost: 4 }], 0.9],
    [[{ atRisk: 3.5, lost: 1 }], 0.9],
    [[{ atRisk: 3, lost: 1 }], 1],
  ])('%j at %d is refused', (route, level) => {
    expect(() => survivalPosterior(route, level)).toThrow(RangeError);
  });
});
