/** Judgements of which no package has a ready function, beside what R computes from their definitions. */
import { describe, expect, test } from 'vitest';
import {
  bernoulliCusum,
  bernoulliCusumThreshold,
  betaMoments,
  bonferroniThreshold,
  cumulativeTotal,
  firstPassYield,
  learningCurveThrough,
  learningExponent,
  littlesLaw,
  minutesPerPiece,
  normalizedYield,
  predictUnit,
  rolledThroughputYield,
  survivalPosterior,
  taroneHolm,
  unitsToReach,
} from '../../../src/domain/statistics/index.ts';
import { near, referenceCases } from './reference/read-reference.ts';

type Numbers = readonly number[];
const cases = <Row>(block: string) => referenceCases<Row>('formulas-reference', block);
const counts = (k: Numbers, n: Numbers) => k.map((each, at) => ({ k: each, n: n[at] ?? 0 }));

describe('yields and flow', () => {
  test('firstPassYield, rolledThroughputYield and normalizedYield', () => {
    for (const [entered, good, shares, rolled, average] of cases<[Numbers, Numbers, Numbers, number, number]>(
      'yields',
    )) {
      for (const { k, n, at } of counts(good, entered).map((each, at) => ({ ...each, at })))
        near(firstPassYield(k, n), shares[at]);
      near(rolledThroughputYield(shares), rolled);
      near(normalizedYield(rolled, shares.length), average);
    }
  });

  test('littlesLaw, whichever of the three is asked for', () => {
    for (const [wip, throughput, leadTime] of cases<[number, number, number]>('littlesLaw')) {
      near(littlesLaw({ wip, throughput })?.leadTime, leadTime);
      near(littlesLaw({ wip, leadTime })?.throughput, throughput);
      near(littlesLaw({ throughput, leadTime })?.wip, wip);
    }
  });

  test('survivalPosterior', () => {
    for (const [atRisk, lost, level, mean, low, high, k, n] of cases<
      [Numbers, Numbers, number, number, number, number, number, number]
    >('survivalPosterior')) {
      const steps = counts(lost, atRisk).map((each) => ({ atRisk: each.n, lost: each.k }));
      const found = survivalPosterior(steps, level);
      near(found.mean, mean);
      near(found.interval[0], low);
      near(found.interval[1], high);
      // The worth is what is left of the shapes without the prior, so of a piece at least.
      near(found.worth.k, k, 1);
      near(found.worth.n, n, 1);
    }
  });
});

describe('time', () => {
  test('learningExponent, predictUnit, cumulativeTotal and unitsToReach', () => {
    for (const [firstUnit, rate, average, n, exponent, piece, total, time, units] of cases<
      [number, number, 0 | 1, number, number, number, number, number, number | null]
    >('learningModel')) {
      near(learningExponent(rate), exponent, 1);
      const law = { firstUnit, exponent, model: average === 1 ? 'cumulativeAverage' : 'unit' } as const;
      near(predictUnit(n, law), piece);
      near(cumulativeTotal(n, law), total);
      expect(unitsToReach(time, law) === undefined).toBe(units === null);
      if (units !== null) near(unitsToReach(time, law), units);
    }
  });

  test('learningCurveThrough, as lm and confint', () => {
    for (const [numbers, times, level, exponent, firstUnit, rates] of cases<
      [Numbers, Numbers, number, number, number, MaybeInterval]
    >('learningCurveThrough')) {
      const points = numbers.map((number, at) => ({ number, time: times[at] ?? 0 }));
      const found = learningCurveThrough(points, { level });
      near(found?.exponent, exponent, 1);
      near(found?.firstUnit, firstUnit);
      nearInterval(found?.rateInterval, rates);
    }
  });

  test('minutesPerPiece', () => {
    for (const [minutes, pieces, begins, level, told, mean, median] of cases<
      [Numbers, Numbers, Numbers, number, Numbers, MaybeInterval, MaybeInterval]
    >('minutesPerPiece')) {
      const taps = minutes.map((each, at) => ({
        minutes: each < 0 ? undefined : each,
        pieces: pieces[at] ?? 0,
        begins: begins[at] === 1,
      }));
      const found = minutesPerPiece(taps, { level });
      expect(found === undefined).toBe(told.length === 0);
      if (!found) continue;
      for (const [at, each] of [found.mean, found.median, found.cv, found.pieces, found.minutes].entries())
        near(each, told[at]);
      nearInterval(found.meanInterval, mean);
      nearInterval(found.medianInterval, median);
    }
  });
});

type MaybeInterval = readonly [number | null, number | null] | null;

function nearInterval(found: readonly [number, number] | undefined, expected: MaybeInterval): void {
  const [low = null, high = null] = expected ?? [];
  expect(found === undefined).toBe(low === null);
  if (low !== null) near(found?.[0], low);
  if (high !== null) near(found?.[1], high);
}

describe('pooling and signals', () => {
  test('betaMoments', () => {
    for (const [k, n, mean, sd, alpha, beta] of cases<[Numbers, Numbers, number, number, number, number]>(
      'betaMoments',
    )) {
      const found = betaMoments(counts(k, n));
      near(found?.mean, mean);
      near(found?.sd, sd);
      near(found?.alpha, alpha);
      near(found?.beta, beta);
    }
  });

  test('taroneHolm and bonferroniThreshold', () => {
    for (const [p, least, adjusted, falseAlarm, threshold] of cases<
      [Numbers, Numbers, Numbers, number, number]
    >('taroneHolm')) {
      for (const [at, each] of taroneHolm(p, least).entries()) near(each, adjusted[at]);
      near(bonferroniThreshold(falseAlarm, p.length), threshold);
    }
  });

  test('bernoulliCusum', () => {
    for (const [p0, p1, threshold, flawed, sums, index, since] of cases<
      [number, number, number, Numbers, Numbers, number | null, number | null]
    >('bernoulliCusumSums')) {
      const found = bernoulliCusum(
        flawed.map((each) => each === 1),
        { p0, p1, threshold },
      );
      expect(found.sums).toEqual(sums);
      expect(found.signal ?? { index: null, since: null }).toEqual({ index, since });
    }
  });

  test('bernoulliCusumThreshold', () => {
    for (const [p0, p1, within, falseAlarm, threshold] of cases<[number, number, number, number, number]>(
      'bernoulliCusumThreshold',
    )) {
      expect(bernoulliCusumThreshold({ p0, p1, within, falseAlarm })).toBe(threshold);
    }
  });
});
