import { expect, test } from 'vitest';
import type { BatchId, PartId, SpeciesId, StageId, VariantId } from '../../../../src/domain/log/ids.ts';
import {
  type Believed,
  contributionOf,
  type DemandAsked,
  variantDemand,
} from '../../../../src/domain/plan/constraint/variant-demand.ts';

const [turn, wax] = ['turn' as StageId, 'wax' as StageId];
const [core, blank] = ['core' as PartId, 'blank' as PartId];
const asked: DemandAsked = {
  key: 'a',
  batch: 'spring' as BatchId,
  variant: 'ash' as VariantId,
  species: 'ash' as SpeciesId,
  route: [turn, wax],
  standing: [{ stage: wax, pieces: 4 }],
  bill: [
    { part: blank, each: 1, stage: turn },
    { part: core, each: 2, stage: wax },
  ],
  firstPrice: 3000,
  secondPrice: 2000,
};
const belief = (stage: StageId, alpha: number, beta: number) =>
  ({ stage, alpha, beta, from: 'own', tried: alpha + beta }) as const;
/** Half come through the turning, four fifths through the wax; a quarter of those that come out are seconds. */
const believed: Believed = {
  finished: [belief(turn, 1, 1), belief(wax, 4, 1)],
  firsts: [belief(turn, 1, 1), belief(wax, 3, 2)],
  starts: 10,
  visitsPerTrial: (stage) => (stage === wax ? 1.5 : 1),
  minutesAt: (stage) => (stage === turn ? 6 : undefined),
  unitCost: (part) => (part === core ? 100 : 40),
};

test('work ahead is of starts, of what stands there, and of what comes again', () => {
  // By hand: 10 at the turning; 5 come through, with the 4 there 9 at the wax, one and a half visits each.
  expect(variantDemand(asked, believed).stages).toEqual([
    { stage: turn, ahead: 10, perOut: 2.5, through: 0.5, minutes: 6 },
    { stage: wax, ahead: 13.5, perOut: 1.25 * 1.5, through: 0.8, minutes: undefined },
  ]);
});

test('a piece that comes out brings in a mixed price, less the parts of lost ones too', () => {
  const demand = variantDemand(asked, believed);
  expect(demand.comesOut).toBeCloseTo(0.4, 12);
  expect(demand.firstShare).toBeCloseTo(0.75, 12);
  // 0.75 × 30 + 0.25 × 20 = 27.50; 1.25 blanks leave the turning for each that comes out (0.50), and two cores (2.00).
  expect(demand.price).toMatchObject({ kind: 'known', money: 2750 });
  expect(demand.parts).toMatchObject({ kind: 'known', money: 250 });
  expect(contributionOf(demand)).toMatchObject({ kind: 'known', money: 2500 });
});

test('what is missing is named', () => {
  const demand = variantDemand({ ...asked, secondPrice: null }, { ...believed, unitCost: () => null });
  expect(contributionOf(demand)).toEqual({
    kind: 'not-known',
    missing: [
      { what: 'price', grade: 'second' },
      { what: 'unit-cost', part: blank },
      { what: 'unit-cost', part: core },
    ],
  });
});
