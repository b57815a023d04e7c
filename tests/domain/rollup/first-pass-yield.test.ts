import { describe, expect, test } from 'vitest';
import { cases } from '../../../shared/check-values/yield.json' with { type: 'json' };
import {
  firstPassYield,
  normalizedYield,
  rolledThroughputYield,
  shareValue,
} from '../../../src/domain/rollup/first-pass-yield.ts';

/** Within the tolerance that stands beside a published value. */
function expectNear(found: number | null, { value, within }: { value: number; within: number }): void {
  expect(found).not.toBeNull();
  expect(Math.abs((found ?? Number.NaN) - value)).toBeLessThanOrEqual(within);
}

describe('the published yields', () => {
  test('three steps with 0.1, 0.05 and 0.008 defects per unit roll to 0.85385 (M. Harry, 2004)', () => {
    const { inputs, expected, tolerance } = cases['yield-harry'];
    const steps = inputs.dpu.map((defects) => Math.exp(-defects));
    for (const [step, found] of steps.entries()) {
      expectNear(found, { value: expected.step_yield[step] ?? Number.NaN, within: tolerance });
    }
    expectNear(rolledThroughputYield(steps), { value: expected.RTY, within: tolerance });
  });

  test('steps of 0.98, 0.95, 0.90 and 0.99 roll to 0.829521 and average 0.954348 (Six Sigma body of knowledge)', () => {
    const { inputs, expected, tolerance } = cases['yield-rty-vs-fpy'];
    expectNear(rolledThroughputYield(inputs.fpy), { value: expected.RTY, within: tolerance });
    expectNear(normalizedYield(inputs.fpy), {
      value: expected.normalised_yield_geometric_mean,
      within: tolerance,
    });
  });

  test('102 parts good at first of 120 inspected is a first-pass yield of 0.85 (ISO 22400-2)', () => {
    const { inputs, expected, tolerance } = cases['yield-iso22400-defs'];
    const found = firstPassYield({ good: inputs.good_first_time, judged: inputs.inspected });
    expectNear(found, { value: expected.first_pass_yield, within: tolerance });
  });
});

describe('the laws of rolled yield', () => {
  test('it is never above the worst step, and never above the mean', () => {
    const { fpy } = cases['yield-rty-vs-fpy'].inputs;
    const rolled = rolledThroughputYield(fpy) ?? Number.NaN;
    expect(rolled).toBeLessThan(Math.min(...fpy));
    expect(normalizedYield(fpy) ?? Number.NaN).toBeLessThan(fpy.reduce((a, b) => a + b) / fpy.length);
  });

  test('one step rolls to itself, and a step that nothing passes brings it to nought', () => {
    expect(rolledThroughputYield([0.85])).toBe(0.85);
    expect(rolledThroughputYield([0.98, 0, 0.99])).toBe(0);
    expect(normalizedYield([0.98, 0])).toBe(0);
  });
});

describe('not yet known is not nought', () => {
  test('a yield without a judged piece is unknown', () => {
    expect(firstPassYield({ good: 0, judged: 0 })).toBeNull();
    expect(shareValue({ of: 0, out: 0 })).toBeNull();
    expect(rolledThroughputYield([])).toBeNull();
    expect(normalizedYield([])).toBeNull();
  });

  test('a yield of which nothing was good is nought', () => {
    expect(firstPassYield({ good: 0, judged: 4 })).toBe(0);
  });
});
