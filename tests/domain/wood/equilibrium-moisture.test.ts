import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cases } from '../../../shared/check-values/wood.json' with { type: 'json' };
import { climateBounds, equilibriumMoistureContent } from '../../../src/domain/wood/equilibrium-moisture.ts';

const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;

function percentAt(fahrenheit: number, humidity: number): number {
  const found = equilibriumMoistureContent({ celsius: celsius(fahrenheit), humidity });
  return found.kind === 'known' ? found.percent : Number.NaN;
}

test('five climates of the Wood Handbook’s equation 4-5, the first as printed in an encyclopedia', () => {
  const { inputs, expected, tolerance } = cases['wood-emc-equation'];
  const found = inputs.T_F.map((t, at) => percentAt(t, 100 * (inputs.rh[at] ?? Number.NaN)));
  const away = found.map((percent, at) => Math.abs(percent - (expected.emc_pct[at] ?? Number.NaN)));
  expect(away.filter((each) => !(each <= tolerance))).toEqual([]);
});

test('the row of 70 °F of the Wood Handbook’s table 4-2 (from memory)', () => {
  const { inputs, expected, tolerance } = cases['wood-emc-table'];
  const found = inputs.rh_pct.map((humidity) => percentAt(inputs.T_F, humidity));
  const away = found.map((percent, at) => Math.abs(percent - (expected.emc_pct[at] ?? Number.NaN)));
  expect(away.filter((each) => !(each <= tolerance))).toEqual([]);
});

test('the handbook’s constants for °F give the same as those for °C', () => {
  const inFahrenheit = (t: number, h: number) => {
    const w = 330 + 0.452 * t + 0.00415 * t ** 2;
    const k = 0.791 + 4.63e-4 * t - 8.44e-7 * t ** 2;
    const k1 = 6.34 + 7.75e-4 * t - 9.35e-5 * t ** 2;
    const k2 = 1.09 + 2.84e-2 * t - 9.04e-5 * t ** 2;
    const kh = k * h;
    return (
      (1800 / w) * (kh / (1 - kh) + (k1 * kh + 2 * k1 * k2 * kh ** 2) / (1 + k1 * kh + k1 * k2 * kh ** 2))
    );
  };
  fc.assert(
    fc.property(fc.integer({ min: 30, max: 200 }), fc.integer({ min: 5, max: 95 }), (t, humidity) => {
      expect(Math.abs(percentAt(t, humidity) - inFahrenheit(t, humidity / 100))).toBeLessThan(0.1);
    }),
  );
});

test('damper air makes damper wood, and warmer air drier wood', () => {
  fc.assert(
    fc.property(fc.integer({ min: 40, max: 140 }), fc.integer({ min: 5, max: 94 }), (t, humidity) => {
      expect(percentAt(t, humidity + 1)).toBeGreaterThan(percentAt(t, humidity));
      expect(percentAt(t + 10, humidity)).toBeLessThan(percentAt(t, humidity));
    }),
  );
});

test('air that the table has not gives a problem and never a number', () => {
  const { celsius: warmth, humidity: damp } = climateBounds;
  const at = (c: number, h: number) => equilibriumMoistureContent({ celsius: c, humidity: h });
  expect(at(warmth.most + 0.1, 50)).toEqual({ kind: 'out-of-range', which: 'celsius' });
  expect(at(warmth.least - 0.1, 50)).toEqual({ kind: 'out-of-range', which: 'celsius' });
  expect(at(20, damp.least - 0.1)).toEqual({ kind: 'out-of-range', which: 'humidity' });
  expect(at(20, damp.most + 0.1)).toEqual({ kind: 'out-of-range', which: 'humidity' });
  expect(at(Number.NaN, 50)).toEqual({ kind: 'out-of-range', which: 'celsius' });
  expect(at(20, Number.NaN)).toEqual({ kind: 'out-of-range', which: 'humidity' });
  expect(at(20, 50).kind).toBe('known');
});
