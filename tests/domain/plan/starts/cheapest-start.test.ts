import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cases } from '../../../../shared/check-values/lot-sizing.json' with { type: 'json' };
import { cheapestStart, type StartCosts } from '../../../../src/domain/plan/starts/cheapest-start.ts';
import { goodByStarts } from '../../../../src/domain/plan/starts/good-by-starts.ts';
import { mostStarts, smallestStart } from '../../../../src/domain/plan/starts/smallest-start.ts';
import { known } from './rates.ts';

const newBatch = (wanted: number, rate: { alpha: number; beta: number }) => ({
  wanted,
  finished: 0,
  stages: [{ rate, standing: 0 }],
});

test('three runs for one good piece, the last first (Hillier and Lieberman, Determining Reject Allowances)', () => {
  const { inputs, expected } = cases['lot-hitandmiss'];
  // A run that fails costs what the runs after it cost at best; a run that is made costs its set-up.
  const run = (whenShort: number) => {
    const costs = { perStart: inputs.unit_cost, perShort: 0, perOver: 0, whenShort };
    const found = cheapestStart(newBatch(inputs.needed, known(inputs.p_good)), costs);
    if (found.kind !== 'starts') throw new Error(found.kind);
    return { starts: found.point.starts, cost: found.cost + inputs.setup_cost };
  };
  const third = run(inputs.penalty);
  const second = run(third.cost);
  const first = run(second.cost);
  expect([third.cost, second.cost, first.cost].map((cost) => cost.toFixed(6))).toEqual(
    [expected.f3, expected.f2, expected.expected_cost].map((cost) => cost.toFixed(6)),
  );
  expect(expected.run3_lot_if_needed).toContain(third.starts);
  expect(expected.run2_lot_if_needed).toContain(second.starts);
  expect(expected.run1_lot).toContain(first.starts);
});

test("at a known rate it is the newsvendor's critical ratio (textbook result; e.g. Hillier and Lieberman, inventory theory)", () => {
  const rate = fc.double({ min: 0.3, max: 0.99, noNaN: true });
  const cost = fc.double({ min: 0.1, max: 50, noNaN: true });
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 15 }),
      rate,
      cost,
      cost,
      cost,
      (wanted, p, perStart, perShort, perOver) => {
        const question = newBatch(wanted, known(p));
        const ratio = (perShort - perStart / p) / (perShort + perOver);
        const found = cheapestStart(question, { perStart, perShort, perOver });
        if (found.kind !== 'starts') throw new Error(found.kind);
        // At a tie of two numbers either is cheapest: the ratio is taken a little to both sides.
        const near = [-1e-9, 1e-9].map((off) => {
          const start = smallestStart(question, {
            confidence: Math.min(0.9999999, Math.max(0, ratio + off)),
          });
          return start.kind === 'starts' ? start.point.starts : Number.NaN;
        });
        expect(near).toContain(found.point.starts);
      },
    ),
    { numRuns: 60 },
  );
});

test('no other number of starts is cheaper, also with a penalty for being short at all', () => {
  const costs = fc.record({
    perStart: fc.double({ min: 0.5, max: 10, noNaN: true }),
    perShort: fc.double({ min: 0, max: 40, noNaN: true }),
    perOver: fc.double({ min: -0.4, max: 5, noNaN: true }),
    whenShort: fc.double({ min: 0, max: 300, noNaN: true }),
  });
  const shape = fc.double({ min: 0.2, max: 40, noNaN: true });
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 12 }), shape, shape, costs, (wanted, alpha, beta, each) => {
      const question = newBatch(wanted, { alpha, beta });
      const found = cheapestStart(question, each);
      if (found.kind === 'the-more-the-better') throw new Error(found.kind);
      const comesTo = goodByStarts(question);
      let least = Number.POSITIVE_INFINITY;
      for (let starts = 0; starts <= mostStarts(wanted); starts += 1) {
        const { short, over, chance } = comesTo(starts);
        const cost =
          each.perStart * starts +
          each.perShort * short +
          each.perOver * over +
          each.whenShort * (1 - chance);
        least = Math.min(least, cost);
      }
      expect(found.cost).toBeCloseTo(least, 8);
    }),
    { numRuns: 60 },
  );
});

describe('answers that are no least cost', () => {
  const question = newBatch(10, { alpha: 9, beta: 1 });
  const kindAt = (costs: Partial<StartCosts>) =>
    cheapestStart(question, { perStart: 0, perShort: 5, perOver: 0, ...costs }, { most: 20 }).kind;

  test('a start that costs nothing, or pays even when left over', () => {
    expect(kindAt({})).toBe('the-more-the-better');
    expect(kindAt({ perStart: 1, perOver: -2 })).toBe('the-more-the-better');
  });

  test('a least cost that may lie beyond what was looked at', () => {
    expect(kindAt({ perStart: 0.0001, perShort: 1000 })).toBe('best-so-far');
  });

  test('what is no cost is refused', () => {
    expect(() => kindAt({ perStart: -1 })).toThrow(RangeError);
    expect(() => kindAt({ perStart: 1, perOver: Number.NaN })).toThrow(RangeError);
    expect(() => kindAt({ perStart: 1, perShort: Number.POSITIVE_INFINITY })).toThrow(RangeError);
  });
});
