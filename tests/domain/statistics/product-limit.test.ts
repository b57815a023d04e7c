import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cases } from '../../../shared/check-values/product-limit.json' with { type: 'json' };
import {
  productLimit,
  type Survival,
  type SurvivalStep,
} from '../../../src/domain/statistics/product-limit.ts';
import { clopperPearson } from '../../../src/domain/statistics/proportion-intervals.ts';
import { farthest, referenceCases } from './reference/read-reference.ts';

test('the 6-MP arm of Freireich et al. (1963) has the survival and standard errors of most survival texts', () => {
  const { inputs, expected, tolerance } = cases['surv-6mp'];
  const steps = expected.time.map((time, index) => ({
    atRisk: inputs.time.filter((each) => each >= time).length,
    lost: inputs.time.filter((each, at) => each === time && inputs.event[at] === 1).length,
    index,
  }));
  expect(steps.map(({ atRisk }) => atRisk)).toEqual(expected.at_risk);
  for (const [index, found] of productLimit(steps).entries()) {
    const { survival = Number.NaN, standardError = Number.NaN } = found;
    expect(Math.abs(survival - (expected.survival[index] ?? Number.NaN))).toBeLessThanOrEqual(tolerance);
    expect(Math.abs(standardError - (expected.greenwood_se[index] ?? Number.NaN))).toBeLessThanOrEqual(
      tolerance,
    );
  }
});

test('it agrees with survfit of R: survival, Greenwood, plain and log-log limits', () => {
  type Column = readonly (number | null)[];
  type Row = readonly [
    atRisk: readonly number[],
    lost: readonly number[],
    level: number,
    survival: Column,
    error: Column,
    ...limits: [Column, Column, Column, Column],
  ];
  const pairs: [number, number][] = [];
  for (const [atRisk, lost, level, ...columns] of referenceCases<Row>('r-reference', 'survival')) {
    const steps = atRisk.map((each, index) => ({ atRisk: each, lost: lost[index] ?? 0 }));
    for (const [index, found] of productLimit(steps, level).entries()) {
      const [plainLow, plainHigh] = found.greenwood ?? [];
      const [low, high] = found.logLog ?? [];
      const all = [found.survival, found.standardError, plainLow, plainHigh, low, high];
      for (const [column, value] of all.entries()) {
        const expected = columns[column]?.[index];
        // Where R gives a width of 0 or none, at survival 1 and 0, ours are absent.
        if (value !== undefined) pairs.push([value, expected ?? Number.NaN]);
        else expect([null, 0, 1]).toContain(expected);
      }
    }
  }
  expect(farthest(pairs)).toBeLessThan(1e-9);
});

const step = fc
  .integer({ min: 0, max: 60 })
  .chain((atRisk) => fc.record({ atRisk: fc.constant(atRisk), lost: fc.nat({ max: atRisk }) }));
const steps = fc.array(step, { maxLength: 14 });

describe('the laws of the product limit', () => {
  test('survival only falls, and every limit lies on its side of it within 0 and 1', () => {
    fc.assert(
      fc.property(steps, fc.double({ min: 0.5, max: 0.99, noNaN: true }), (route, level) => {
        let before = 1;
        for (const each of productLimit(route, level)) {
          const { survival, interval } = each;
          expect(interval === undefined).toBe(survival === undefined);
          if (survival === undefined) continue;
          expect(survival).toBeLessThanOrEqual(before);
          before = survival;
          for (const limits of [each.greenwood, each.logLog, interval]) expectAround(survival, limits);
        }
      }),
      { numRuns: 500 },
    );
  });

  test('without a piece in flight it is the share that came through', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), fc.array(fc.nat({ max: 20 })), (pieces, losses) => {
        const route: SurvivalStep[] = [];
        let left = pieces;
        for (const loss of losses.filter((each) => each < pieces / (losses.length + 1))) {
          const lost = Math.min(loss, left);
          route.push({ atRisk: left, lost });
          left -= lost;
        }
        const { survival } = productLimit(route).at(-1) ?? { survival: 1 };
        expect(survival).toBeCloseTo(left / pieces, 12);
      }),
    );
  });

  test('no number that comes out is NaN', () => {
    fc.assert(
      fc.property(steps, (route) => {
        const numbers = productLimit(route).flatMap((each) => Object.values(each).flat());
        for (const each of numbers) expect(each).not.toBeNaN();
      }),
    );
  });
});

function expectAround(survival: number, limits: Survival['interval']): void {
  if (limits === undefined) return;
  const [low, high] = limits;
  expect(low).toBeGreaterThanOrEqual(0);
  expect(low).toBeLessThanOrEqual(survival);
  expect(high).toBeGreaterThanOrEqual(survival);
  expect(high).toBeLessThanOrEqual(1);
}

describe('the edges', () => {
  const nothing = {
    survival: undefined,
    variance: undefined,
    standardError: undefined,
    greenwood: undefined,
    logLog: undefined,
    interval: undefined,
  };

  test('a stage that nothing has tried leaves the rest unknown', () => {
    const [first, ...rest] = productLimit([
      { atRisk: 20, lost: 2 },
      { atRisk: 0, lost: 0 },
      { atRisk: 5, lost: 1 },
    ]);
    expect(first?.survival).toBe(0.9);
    expect(rest).toEqual([nothing, nothing]);
  });

  test('while nothing is lost the limit is that of the stage with the fewest pieces', () => {
    const found = productLimit(
      [
        { atRisk: 40, lost: 0 },
        { atRisk: 12, lost: 0 },
        { atRisk: 15, lost: 0 },
      ],
      0.9,
    );
    expect(found.at(-1)).toEqual({
      ...nothing,
      survival: 1,
      variance: 0,
      standardError: 0,
      interval: [expect.closeTo(0.05 ** (1 / 12), 12), 1],
    });
  });

  test('after a stage that took all, survival is 0 and stays it', () => {
    const found = productLimit(
      [
        { atRisk: 9, lost: 3 },
        { atRisk: 6, lost: 6 },
        { atRisk: 0, lost: 0 },
      ],
      0.9,
    );
    const gone = { ...nothing, survival: 0, interval: clopperPearson(0, 6, 0.9) };
    expect(found.slice(1)).toEqual([gone, gone]);
  });

  test('no stage has no survival', () => {
    expect(productLimit([])).toEqual([]);
  });

  test.each([
    [[{ atRisk: 3, lost: 4 }], 0.9],
    [[{ atRisk: -1, lost: 0 }], 0.9],
    [[{ atRisk: 3, lost: 0.5 }], 0.9],
    [[{ atRisk: 3, lost: 1 }], 1],
  ])('%j at %d is refused', (route, level) => {
    expect(() => productLimit(route, level)).toThrow(RangeError);
  });
});
