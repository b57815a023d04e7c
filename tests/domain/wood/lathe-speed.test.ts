import { describe, expect, test } from 'vitest';
import { cases } from '../../../shared/check-values/wood.json' with { type: 'json' };
import { latheSpeedRange, surfaceSpeed } from '../../../src/domain/wood/lathe-speed.ts';

const inch = 25.4;

test('diameter in inches times turns a minute lies between 6000 and 9000 (woodturners’ common practice)', () => {
  const { inputs, expected } = cases['lathe-rule'];
  inputs.diameter_in.forEach((diameter, at) => {
    const found = latheSpeedRange({ diameter: diameter * inch, length: null });
    expect(found).toMatchObject({
      low: expect.closeTo(expected.rpm_low[at] ?? Number.NaN, 6),
      high: expect.closeTo(expected.rpm_high[at] ?? Number.NaN, 6),
      isLimited: false,
    });
  });
});

test('that is 8 to 12 m/s at the surface, whatever the diameter (geometry)', () => {
  const { expected, tolerance } = cases['lathe-surface-speed'];
  const [low, high] = expected.m_per_s;
  for (const diameter of [12, 25.4, 60]) {
    const found = latheSpeedRange({ diameter, length: null });
    if (found.kind !== 'known') throw new Error('no speed');
    expect(Math.abs(found.lowSurface - (low ?? Number.NaN))).toBeLessThanOrEqual(tolerance.m_per_s);
    expect(Math.abs(found.highSurface - (high ?? Number.NaN))).toBeLessThanOrEqual(tolerance.m_per_s);
  }
  expect(surfaceSpeed({ diameter: 1000, turns: 60 })).toBeCloseTo(Math.PI, 12);
});

describe('what holds the speed down', () => {
  test('the machine’s own limit comes first', () => {
    const found = latheSpeedRange({ diameter: 30, length: 100, limit: 3200 });
    expect(found).toMatchObject({ low: 3200, high: 3200, isLimited: true });
    expect(latheSpeedRange({ diameter: 60, length: 100, limit: 3200 })).toMatchObject({
      low: expect.closeTo(2540, 6),
      high: 3200,
      isLimited: true,
    });
    expect(latheSpeedRange({ diameter: 100, length: 100, limit: 3200 })).toMatchObject({ isLimited: false });
  });

  test('a slender piece stays at the low end and wants a steady rest', () => {
    const found = latheSpeedRange({ diameter: 25, length: 251 });
    expect(found).toMatchObject({ needsSteady: true });
    if (found.kind === 'known') expect(found.high).toBe(found.low);
    expect(latheSpeedRange({ diameter: 25, length: 250 })).toMatchObject({ needsSteady: false });
  });
});

test('a size or a limit that no lathe has is a problem and never a number', () => {
  for (const diameter of [0, -1, 2.9, 1000.1, Number.NaN])
    expect(latheSpeedRange({ diameter, length: 100 })).toEqual({ kind: 'out-of-range', which: 'diameter' });
  for (const length of [0, -5, 5000.1, Number.NaN])
    expect(latheSpeedRange({ diameter: 30, length })).toEqual({ kind: 'out-of-range', which: 'length' });
  for (const limit of [0, -5, Number.NaN])
    expect(latheSpeedRange({ diameter: 30, length: 9, limit })).toEqual({
      kind: 'out-of-range',
      which: 'limit',
    });
});
