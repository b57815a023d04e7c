/** Charts, chains, curves and scans beside what R, scipy and statsmodels compute: see the folder reference. */
import { describe, expect, test } from 'vitest';
import { changeScan } from '../../../src/domain/signals/change-scan.ts';
import { newestRun } from '../../../src/domain/signals/tally.ts';
import type { ControlChart } from '../../../src/domain/statistics/control-chart.ts';
import {
  bernoulliCusumAlarm,
  bernoulliCusumArl,
  cChart,
  cusum,
  ewmaChart,
  falseDiscovery,
  flawWeight,
  gChart,
  holm,
  individualsChart,
  learningCurve,
  pChart,
  runRules,
  shewhartArl,
  uChart,
} from '../../../src/domain/statistics/index.ts';
import type { RunRule } from '../../../src/domain/statistics/run-rules.ts';
import { theilSen } from '../../../src/domain/statistics/straight-line.ts';
import { near, referenceCases } from './reference/read-reference.ts';

type Ends = readonly [number, number];
type Numbers = readonly number[];
const indexes = ({ signals }: Pick<ControlChart, 'signals'>) => signals.map(({ index }) => index);

function nearEnds({ points }: ControlChart, { low, high, scale }: { low?: Ends; high: Ends; scale: number }) {
  const [first, last] = [points[0], points.at(-1)];
  if (low) near(first?.low, low[0], scale);
  if (low) near(last?.low, low[1], scale);
  near(first?.high, high[0], scale);
  near(last?.high, high[1], scale);
}

describe('charts, as the textbook formulas in R', () => {
  test.each([
    ['pChart', pChart],
    ['uChart', uChart],
  ] as const)('%s', (name, chartOf) => {
    for (const [counts, sizes, laney, centre, low, high, signals] of referenceCases<
      [Numbers, Numbers, 0 | 1, number, Ends, Ends, Numbers]
    >('charts-reference', name)) {
      const chart = chartOf(counts, sizes, { laney: laney === 1 });
      near(chart.centre, centre);
      nearEnds(chart, { low, high, scale: centre });
      expect(indexes(chart)).toEqual(signals);
    }
  });

  test('cChart', () => {
    for (const [counts, centre, low, high, signals] of referenceCases<
      [Numbers, number, number, number, Numbers]
    >('charts-reference', 'cChart')) {
      const chart = cChart(counts);
      near(chart.centre, centre);
      nearEnds(chart, { low: [low, low], high: [high, high], scale: centre });
      expect(indexes(chart)).toEqual(signals);
    }
  });

  test('gChart, by 3 sigma and by the tails of the geometric distribution', () => {
    for (const [gaps, falseAlarm, centre, high, bySigma, byChance] of referenceCases<
      [Numbers, number, number, number, Numbers, Numbers]
    >('charts-reference', 'gChart')) {
      const chart = gChart(gaps);
      near(chart.centre, centre);
      nearEnds(chart, { low: [0, 0], high: [high, high], scale: 0 });
      expect(indexes(chart)).toEqual(bySigma);
      expect(indexes(gChart(gaps, { falseAlarm }))).toEqual(byChance);
    }
  });

  test('individualsChart', () => {
    for (const [values, centre, range, low, high, signals] of referenceCases<
      [Numbers, number, number, number, number, Numbers]
    >('charts-reference', 'individualsChart')) {
      const chart = individualsChart(values);
      const scale = Math.max(...values.map(Math.abs));
      near(chart.centre, centre, scale);
      near(chart.meanRange, range, scale);
      nearEnds(chart, { low: [low, low], high: [high, high], scale });
      expect(indexes(chart)).toEqual(signals);
    }
  });

  test('ewmaChart', () => {
    for (const [values, lambda, k, averages, high, asymptotic, signals] of referenceCases<
      [Numbers, number, number, Numbers, Ends, number, Numbers]
    >('charts-reference', 'ewmaChart')) {
      const chart = ewmaChart(values, { lambda, k, target: 50, sigma: 2 });
      for (const [at, average] of averages.entries()) near(chart.points[at]?.value, average);
      nearEnds(chart, { high, scale: 0 });
      near(chart.asymptotic?.high, asymptotic);
      expect(indexes(chart)).toEqual(signals);
    }
  });

  test('cusum', () => {
    for (const [values, k, highs, lows] of referenceCases<[Numbers, number, Numbers, Numbers]>(
      'charts-reference',
      'cusum',
    )) {
      const { sums } = cusum(values, { k, target: 50, sigma: 2 });
      // Sums of some tens are differences of longer ones there.
      for (const [at, high] of highs.entries()) near(sums[at]?.high, high, 50);
      for (const [at, low] of lows.entries()) near(sums[at]?.low, low, 50);
    }
  });

  test('runRules', () => {
    const rules: readonly RunRule[] = [
      'beyond-limits',
      'two-of-three-beyond-two-sigma',
      'four-of-five-beyond-one-sigma',
      'eight-on-one-side',
      'nine-on-one-side',
      'six-rising-or-falling',
      'fourteen-alternating',
      'fifteen-within-one-sigma',
      'eight-beyond-one-sigma',
    ];
    const seen = new Set<RunRule>();
    for (const [deviations, ...hits] of referenceCases<[Numbers, ...Numbers[]]>(
      'charts-reference',
      'runRules',
    )) {
      for (const [at, rule] of rules.entries()) {
        const found = runRules(deviations, [rule]).map(({ index }) => index);
        expect([rule, found]).toEqual([rule, hits[at]]);
        if (found.length > 0) seen.add(rule);
      }
    }
    expect([...seen].sort()).toEqual(rules.toSorted());
  });
});

describe('chances', () => {
  test('shewhartArl, as pnorm', () => {
    for (const [shift, sigmas, arl] of referenceCases<[number, number, number]>(
      'charts-reference',
      'shewhartArl',
    )) {
      near(shewhartArl(shift, { sigmas }), arl);
    }
  });

  test('the chain of a Bernoulli CUSUM, as matrices', () => {
    for (const [p0, p1, threshold, flawed, within, weight, arl, alarm] of referenceCases<
      [number, number, number, number, number, number, number, number]
    >('charts-reference', 'bernoulliCusum')) {
      expect(flawWeight({ p0, p1 })).toBe(weight);
      const chain = { p0, p1, threshold, flawed };
      near(bernoulliCusumAlarm(chain, within), alarm);
      // A matrix solved for a run of 10^k pieces has lost k of its 16 digits; the recursion loses none.
      const found = bernoulliCusumArl(chain);
      expect(Math.abs(found / arl - 1)).toBeLessThan(Math.max(1e-9, found * 1e-14));
    }
  });

  test('changeScan, as all orders and phyper', () => {
    for (const [counts, sizes, tail, p, leastP] of referenceCases<[Numbers, Numbers, number, number, number]>(
      'charts-reference',
      'changeScan',
    )) {
      const found = changeScan(newestRun({ counts, sizes }, 3000));
      near(found?.tail, tail);
      near(found?.p, p);
      near(found?.leastP, leastP);
    }
  });

  test('falseDiscovery and holm, as statsmodels', () => {
    for (const [p, shares, whole] of referenceCases<[Numbers, Numbers, Numbers]>(
      'robust-reference',
      'adjusted',
    )) {
      for (const [at, share] of falseDiscovery(p).entries()) near(share, shares[at]);
      for (const [at, each] of holm(p).entries()) near(each, whole[at]);
    }
  });
});

describe('curves', () => {
  test('learningCurve, as lm and confint', () => {
    for (const [times, average, level, exponent, rate, firstUnit, bounds] of referenceCases<
      [Numbers, 0 | 1, number, number, number, number, readonly (number | null)[]]
    >('charts-reference', 'learningCurve')) {
      const curve = learningCurve(times, { model: average === 1 ? 'cumulativeAverage' : 'unit', level });
      near(curve?.exponent, exponent, 1);
      near(curve?.rate, rate);
      near(curve?.firstUnit, firstUnit);
      const [low = null, high = null] = bounds;
      expect(curve?.rateInterval === undefined).toBe(low === null);
      if (low === null || high === null) continue;
      near(curve?.rateInterval?.[0], low);
      near(curve?.rateInterval?.[1], high);
    }
  });

  test('theilSen, as scipy', () => {
    for (const [times, level, slope, intercept, low, high] of referenceCases<
      [Numbers, number, number, number, number, number]
    >('robust-reference', 'theilSen')) {
      const points = times.map((time, at) => ({ x: Math.log(at + 1), y: Math.log(time) }));
      const line = theilSen(points, level);
      near(line?.slope, slope, 1);
      near(line?.intercept, intercept, 1);
      if (!line?.interval) continue;
      near(line.interval[0], low, 1);
      near(line.interval[1], high, 1);
    }
  });
});
