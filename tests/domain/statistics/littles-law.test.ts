import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cases } from '../../../shared/check-values/flow.json' with { type: 'json' };
import { littlesLaw } from '../../../src/domain/statistics/littles-law.ts';

test('160 bottles and 8 a month: 20 months in the rack (Little and Graves 2008, pp. 81-82)', () => {
  const { inputs, expected } = cases['flow-little-wine'];
  expect(littlesLaw({ wip: inputs.L, throughput: inputs.lambda_per_month })?.leadTime).toBe(
    expected.W_months,
  );
});

test('37,000 panels and 1,100 a day: 33.6 days (Hopp and Spearman, the HAL case)', () => {
  const { inputs, expected, tolerance } = cases['flow-little-hal'];
  const flow = littlesLaw({ wip: inputs.WIP, throughput: inputs.throughput_per_day });
  expect(Math.abs((flow?.leadTime ?? 0) - expected.cycle_time_days)).toBeLessThanOrEqual(tolerance);
});

test('any two give the third, and the third gives them back', () => {
  const measure = fc.double({ min: 1e-6, max: 1e6, noNaN: true });
  fc.assert(
    fc.property(measure, measure, (throughput, leadTime) => {
      const flow = littlesLaw({ throughput, leadTime });
      const wip = flow?.wip ?? 0;
      expect(littlesLaw({ wip, leadTime })?.throughput).toBeCloseTo(throughput, 5);
      expect((littlesLaw({ wip, throughput })?.leadTime ?? 0) / leadTime).toBeCloseTo(1, 12);
    }),
  );
});

test('an empty shop that makes nothing tells nothing of lead time', () => {
  expect(littlesLaw({ wip: 0, throughput: 0 })).toBeUndefined();
  expect(littlesLaw({ wip: 5, leadTime: 0 })).toBeUndefined();
  expect(littlesLaw({ wip: 5 })).toBeUndefined();
  expect(littlesLaw({ wip: 6, throughput: 2, leadTime: 3 })).toBeUndefined();
  expect(littlesLaw({ throughput: 0, leadTime: 3 })?.wip).toBe(0);
  expect(() => littlesLaw({ wip: -1, throughput: 2 })).toThrow(RangeError);
});
