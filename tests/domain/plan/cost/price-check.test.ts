import fc from 'fast-check';
import { expect, test } from 'vitest';
import { known, notKnown } from '../../../../src/domain/plan/cost/amount.ts';
import { finishSecond, type SecondQuestion } from '../../../../src/domain/plan/cost/finish-second.ts';
import { priceCheck } from '../../../../src/domain/plan/cost/price-check.ts';
import { parts, stages } from './makers.ts';

test('a margin is a share of the price (by hand)', () => {
  expect(priceCheck({ price: 4500, cost: 3000, margin: 0.4 })).toEqual({
    margin: 1 / 3,
    leastPrice: 5000,
    verdict: 'below-margin',
  });
  expect(priceCheck({ price: 5000, cost: 3000, margin: 0.4 }).verdict).toBe('enough');
  expect(priceCheck({ price: 2999, cost: 3000, margin: 0 }).verdict).toBe('below-cost');
  expect(priceCheck({ price: 0, cost: 0, margin: 0 })).toEqual({
    margin: undefined,
    leastPrice: 0,
    verdict: 'enough',
  });
});

test('the least price is the least: a unit less is below the margin', () => {
  const money = fc.integer({ min: 1, max: 1e7 });
  fc.assert(
    fc.property(money, fc.integer({ min: 0, max: 90 }), (cost, percent) => {
      const { leastPrice } = priceCheck({ price: cost, cost, margin: percent / 100 });
      // In whole numbers: price × (100 − percent) ≥ 100 × cost.
      expect(leastPrice * (100 - percent)).toBeGreaterThanOrEqual(100 * cost);
      expect((leastPrice - 1) * (100 - percent)).toBeLessThan(100 * cost);
    }),
  );
});

test('what is no price, cost or margin is refused', () => {
  expect(() => priceCheck({ price: -1, cost: 0, margin: 0 })).toThrow(RangeError);
  expect(() => priceCheck({ price: 1, cost: Number.NaN, margin: 0 })).toThrow(RangeError);
  expect(() => priceCheck({ price: 1, cost: 1, margin: 1 })).toThrow(RangeError);
});

const { sand, wax } = stages;
const question: SecondQuestion = {
  ahead: [
    { stage: sand, minutes: 6, parts: [], chance: 0.8 },
    { stage: wax, minutes: 3, parts: [{ part: parts.oil, pieces: 1, unitCost: 25 }], chance: 1 },
  ],
  hourlyRate: 3000,
  secondPrice: 2000,
  saved: known(400),
};

test('a blemished piece is finished where the price times its chance beats what is to come and what a scrap saves', () => {
  // By hand: 300 for sanding, then for four of five 150 + 25; (440 + 400) ÷ 0.8 = 1050.
  const verdict = finishSecond(question);
  if (verdict.kind !== 'known') throw new Error(verdict.kind);
  expect(verdict.chance).toBeCloseTo(0.8, 12);
  expect(verdict.toCome).toBeCloseTo(440, 9);
  expect(verdict.gain).toBeCloseTo(760, 9);
  expect(verdict.breakEvenPrice).toBe(1050);
  expect(finishSecond({ ...question, secondPrice: 1050 })).toMatchObject({ gain: expect.closeTo(0, 9) });
});

test('what cannot come through, or is not known, has no verdict', () => {
  const [first] = question.ahead;
  if (!first) throw new Error('no stage');
  expect(finishSecond({ ...question, ahead: [{ ...first, chance: 0 }] })).toEqual({ kind: 'no-chance' });
  expect(finishSecond({ ...question, secondPrice: null, saved: notKnown({ what: 'hourly-rate' }) })).toEqual({
    kind: 'not-known',
    missing: [{ what: 'hourly-rate' }, { what: 'price', grade: 'second' }],
  });
  expect(finishSecond({ ...question, ahead: [] })).toMatchObject({
    toCome: 0,
    gain: 1600,
    breakEvenPrice: 400,
  });
  expect(() => finishSecond({ ...question, ahead: [{ ...first, chance: 1.2 }] })).toThrow(RangeError);
});
