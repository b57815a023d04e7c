import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cases } from '../../../shared/check-values/wood.json' with { type: 'json' };
import woods from '../../../shared/species.json' with { type: 'json' };
import { dimensionChange, fittedDiameterChange } from '../../../src/domain/wood/dimension-change.ts';

function changeOf(question: Parameters<typeof dimensionChange>[0]): number {
  const found = dimensionChange(question);
  return found.kind === 'known' ? found.change : Number.NaN;
}

const moisture = fc.double({ min: 0, max: 30, noNaN: true });
const total = fc.double({ min: 0.5, max: 20, noNaN: true });

describe('a size across the grain', () => {
  test('of American beech shrinks from green as the Wood Handbook’s chapter 4 says', () => {
    const { inputs, expected, tolerance } = cases['wood-shrink-linear'];
    inputs.M_pct.forEach((to, at) => {
      const change = changeOf({ size: 100, total: inputs.S0_pct, from: 30, to });
      expect(Math.abs(-change - (expected.S_pct[at] ?? Number.NaN))).toBeLessThanOrEqual(tolerance);
    });
  });

  test('changes as the Wood Handbook’s chapter 13 says (formula from memory)', () => {
    const { inputs, expected, tolerance } = cases['wood-fit-change'];
    inputs.size.forEach((size, at) => {
      const [all, from, to] = [inputs.S_pct[at] ?? 0, inputs.from[at] ?? 0, inputs.to[at] ?? 0];
      const away = changeOf({ size, total: all, from, to }) - (expected.change[at] ?? Number.NaN);
      expect(Math.abs(away)).toBeLessThanOrEqual(tolerance);
    });
  });

  test('comes back to what it was when its moisture does', () => {
    fc.assert(
      fc.property(moisture, moisture, total, (from, to, all) => {
        const there = 100 + changeOf({ size: 100, total: all, from, to });
        expect(there + changeOf({ size: there, total: all, from: to, to: from })).toBeCloseTo(100, 8);
      }),
    );
  });

  test('does not move above fibre saturation', () => {
    expect(dimensionChange({ size: 2000, total: 8, from: 90, to: 30 })).toEqual({ kind: 'known', change: 0 });
    expect(changeOf({ size: 2000, total: 8, from: 90, to: 12 })).toBe(
      changeOf({ size: 2000, total: 8, from: 30, to: 12 }),
    );
    expect(Object.is(changeOf({ size: 2000, total: 8, from: 12, to: 12 }), 0)).toBe(true);
  });

  test('of a wood without a value is not known, and a moisture that cannot be is a problem', () => {
    expect(dimensionChange({ size: 1, total: null, from: 20, to: 8 })).toEqual({ kind: 'not-known' });
    for (const bad of [Number.NaN, -0.1, 200.1, Number.POSITIVE_INFINITY]) {
      expect(dimensionChange({ size: 1, total: 8, from: bad, to: 8 })).toEqual({
        kind: 'out-of-range',
        which: 'from',
      });
      expect(dimensionChange({ size: 1, total: 8, from: 8, to: bad })).toEqual({
        kind: 'out-of-range',
        which: 'to',
      });
    }
  });
});

describe('a fitted diameter', () => {
  test('goes oval: beech of 20 mm from 12 to 8 per cent loses more along the rings than across', () => {
    const beech = woods.find(({ id }) => id === 'beech-american')?.shrinkage_green_to_ovendry_pct;
    const { tangential, radial } = cases['wood-shrinkage'].expected;
    expect([beech?.tangential, beech?.radial]).toEqual([tangential[1], radial[1]]);
    const shrinkage = { tangential: beech?.tangential ?? null, radial: beech?.radial ?? null };
    const change = fittedDiameterChange({ diameter: 2000, shrinkage, from: 12, to: 8 });
    // By hand: 2000 × −4 ÷ (3000/11.9 − 18) and 2000 × −4 ÷ (3000/5.5 − 18).
    expect(change).toEqual({
      kind: 'known',
      tangential: expect.closeTo(-34.173, 3),
      radial: expect.closeTo(-15.167, 3),
    });
  });

  test('is not known for every wood of the list that lacks a value, and a number for every other', () => {
    const unknown = woods.filter(({ shrinkage_green_to_ovendry_pct: { radial, tangential } }) => {
      const change = fittedDiameterChange({
        diameter: 2000,
        shrinkage: { radial, tangential },
        from: 15,
        to: 8,
      });
      if (change.kind === 'known') expect(change.tangential).toBeLessThan(0);
      return change.kind === 'not-known';
    });
    expect(unknown.length).toBeGreaterThan(0);
    for (const { shrinkage_green_to_ovendry_pct: shrinkage } of unknown)
      expect([shrinkage.radial, shrinkage.tangential]).toContain(null);
  });

  test('says which moisture cannot be', () => {
    const shrinkage = { radial: 5, tangential: 8 };
    expect(fittedDiameterChange({ diameter: 2000, shrinkage, from: -1, to: 8 })).toEqual({
      kind: 'out-of-range',
      which: 'from',
    });
  });
});
