import { expect, test } from 'vitest';
import { cases } from '../../../../shared/check-values/constraint.json' with { type: 'json' };
import type { PartId, StageId, VariantId } from '../../../../src/domain/log/ids.ts';
import {
  type ConstraintQuestion,
  studyConstraint,
} from '../../../../src/domain/plan/constraint/constraint-study.ts';
import { contributionOf } from '../../../../src/domain/plan/constraint/variant-demand.ts';
import { tapTable } from '../../../../src/domain/study/log-of-taps.ts';
import { aWorkshop } from '../../../support/a-shop.ts';
import { batch, species } from '../../../support/workshop.ts';

const { inputs, expected } = cases['toc-pq'];
const names = ['A', 'B', 'C', 'D'] as const;
const route = names.map((name) => name as string as StageId);
const woods = { P: species.ash, Q: species.plum } as const;
const products = ['P', 'Q'] as const;
const minutesOf = (stage: StageId, wood: string) => {
  const product = wood === woods.P ? 'P' : 'Q';
  const name = names.find((each) => (each as string) === stage);
  return name && inputs.minutes[name][product];
};
const day = { now: 0, until: 2400 * 60_000, shifts: [{ from: 0, to: 2400 * 60_000 }] };

/** P and Q in two woods; the material goes in at the last stage, so that no piece is lost after it has it. */
function question(part: Partial<ConstraintQuestion> = {}): ConstraintQuestion {
  const stretch = { hands: inputs.available_minutes, working: day, times: 1 };
  return {
    variants: products.map((product) => ({
      key: product,
      batch: batch.spring,
      variant: product as string as VariantId,
      species: woods[product],
      route,
      standing: [],
      bill: [{ part: product as string as PartId, each: 1, stage: 'D' as StageId }],
      firstPrice: 100 * inputs.price[product],
      secondPrice: 100 * inputs.price[product],
    })),
    holds: [],
    unitCosts: products.map((product) => ({
      part: product as string as PartId,
      cost: 100 * inputs.raw_material[product],
    })),
    until: { stretch, keys: ['P', 'Q'] },
    mix: { stretch, most: new Map(products.map((product) => [product, inputs.demand[product]])) },
    ...part,
  };
}

const study = (asked: ConstraintQuestion) =>
  studyConstraint(tapTable({ runs: [], events: aWorkshop().log }), {
    ...asked,
    routes: { stages: route, byBatch: new Map() },
    minutesOf,
    starts: new Map([
      ['P', 10],
      ['Q', 0],
    ]),
  });

test('price less material is that of P and Q (E. M. Goldratt, The Haystack Syndrome, 1990)', () => {
  const demands = study(question()).demands.map((demand) => [demand.key, contributionOf(demand)]);
  expect(demands).toEqual(
    products.map((product) => [
      product,
      { kind: 'known', money: 100 * expected.throughput_per_unit[product] },
    ]),
  );
});

test('hands are held against all stages together and against each', () => {
  const { loads, demands } = study(question());
  const ahead = new Map(demands[0]?.stages.map((each) => [each.stage, each.ahead]));
  const atA: string = 'hands/A';
  // Ten starts reach the first stage whole: by hand 10 × 15 of 2400 minutes.
  expect(loads?.find(({ resource }) => resource === atA)).toMatchObject({
    wanted: 150,
    ratio: 150 / 2400,
  });
  // Without history half of the pieces come out of the whole route; each later stage has fewer.
  const all = names.reduce((sum, name) => sum + (ahead.get(name as string as StageId) ?? 0) * 15, 0);
  expect(loads?.[0]).toMatchObject({ resource: 'hands', unknown: [] });
  expect(loads?.[0]?.wanted).toBeCloseTo(all, 9);
});

test('a mix keeps to the hands, to what can be sold, and to the places', () => {
  const free = study(question()).mix?.mix;
  if (free?.kind !== 'mix') throw new Error('no mix');
  expect(free.resources[0]?.left).toBeGreaterThanOrEqual(-1e-6);
  // Eight places for a cure of a whole day at D: one round fits, and no more than eight pieces come there.
  const holds = [
    {
      key: 'stage/D' as `stage/${StageId}`,
      capacity: 8,
      stages: [{ stage: 'D' as StageId, cure: 86_400_000 }],
    },
  ];
  const tight = study(question({ holds })).mix?.mix;
  if (tight?.kind !== 'mix') throw new Error('no mix');
  const made = (mix: typeof free) => [...mix.pieces.values()].reduce((sum, each) => sum + each, 0);
  expect(made(tight)).toBeGreaterThan(0);
  expect(made(tight)).toBeLessThanOrEqual(8);
  expect(made(free)).toBeGreaterThan(made(tight));
});

test('what is not known leaves a variant out of the mix, and loads without hours', () => {
  const { mix, loads } = study(
    question({ unitCosts: [{ part: 'P' as PartId, cost: 1 }], until: { stretch: null, keys: [] } }),
  );
  expect(mix?.leftOut).toEqual(['Q']);
  expect(loads).toBeNull();
});
