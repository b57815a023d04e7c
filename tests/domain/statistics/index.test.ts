import { expect, test } from 'vitest';
import * as statistics from '../../../src/domain/statistics/index.ts';

test('every judgement can be asked for by the name of its field', () => {
  expect(statistics).toMatchObject({
    betaBinomial: { pmf: expect.any(Function), cdf: expect.any(Function), quantile: expect.any(Function) },
    betaMoments: expect.any(Function),
    clopperPearson: expect.any(Function),
    empiricalBayes: expect.any(Function),
    firstPassYield: expect.any(Function),
    fisherExact: expect.any(Function),
    jeffreys: expect.any(Function),
    normalizedYield: expect.any(Function),
    productLimit: expect.any(Function),
    rolledThroughputYield: expect.any(Function),
    survivalPosterior: expect.any(Function),
    twoProportions: expect.any(Function),
    wilson: expect.any(Function),
  });
});
