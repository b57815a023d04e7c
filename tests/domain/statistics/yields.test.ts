import { describe, expect, test } from 'vitest';
import { cases } from '../../../shared/check-values/yield.json' with { type: 'json' };
import {
  firstPassYield,
  normalizedYield,
  rolledThroughputYield,
} from '../../../src/domain/statistics/yields.ts';

describe('the published yields', () => {
  test('three steps with 0.1, 0.05 and 0.008 defects per unit roll to 0.85385 (M. Harry, 2004)', () => {
    const { inputs, expected, tolerance } = cases['yield-harry'];
    const rolled = rolledThroughputYield(inputs.dpu.map((defects) => Math.exp(-defects))) ?? Number.NaN;
    expect(Math.abs(rolled - expected.RTY)).toBeLessThanOrEqual(tolerance);
  });

  test('steps of 0.98, 0.95, 0.90 and 0.99 roll to 0.829521 and average 0.954348 (Six Sigma body of knowledge)', () => {
    const { inputs, expected, tolerance } = cases['yield-rty-vs-fpy'];
    const rolled = rolledThroughputYield(inputs.fpy) ?? Number.NaN;
    const average = normalizedYield(rolled, inputs.fpy.length) ?? Number.NaN;
    expect(Math.abs(rolled - expected.RTY)).toBeLessThanOrEqual(tolerance);
    expect(Math.abs(average - expected.normalised_yield_geometric_mean)).toBeLessThanOrEqual(tolerance);
  });

  test('102 parts good at first of 120 inspected is a first-pass yield of 0.85 (ISO 22400-2)', () => {
    const { inputs, expected, tolerance } = cases['yield-iso22400-defs'];
    const found = firstPassYield(inputs.good_first_time, inputs.inspected) ?? Number.NaN;
    expect(Math.abs(found - expected.first_pass_yield)).toBeLessThanOrEqual(tolerance);
  });
});

test('what is not yet known is absent', () => {
  expect(firstPassYield(0, 0)).toBeUndefined();
  expect(rolledThroughputYield([])).toBeUndefined();
  expect(normalizedYield(1, 0)).toBeUndefined();
  expect(normalizedYield(-0.1, 3)).toBeUndefined();
});

test('nothing good is a yield of 0, and counts that disagree show as more than 1', () => {
  expect(firstPassYield(0, 4)).toBe(0);
  expect(firstPassYield(5, 4)).toBe(1.25);
  expect(normalizedYield(0, 3)).toBe(0);
});

test.each([
  () => firstPassYield(Number.NaN, 4),
  () => firstPassYield(1, Number.POSITIVE_INFINITY),
  () => rolledThroughputYield([0.9, Number.NaN]),
  () => normalizedYield(Number.NaN, 2),
  () => normalizedYield(0.9, 1.5),
  () => normalizedYield(0.9, -1),
])('what is no number is refused: %s', (ask) => {
  expect(ask).toThrow(RangeError);
});
