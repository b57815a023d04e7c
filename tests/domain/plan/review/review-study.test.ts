import { expect, test } from 'vitest';
import { studyReviews } from '../../../../src/domain/plan/review/review-study.ts';
import { tapTable } from '../../../../src/domain/study/log-of-taps.ts';
import { routesIn } from '../../../../src/domain/study/study-routes.ts';
import { aWorkshop, lowered, mended, scrapped } from '../../../support/a-shop.ts';
import { batch, reason, species, stage, variant } from '../../../support/workshop.ts';

/** Ash at the boring, a minute a tap: three blown, two scratched and lowered, one mended, ten passed. */
function bored() {
  const shop = aWorkshop();
  shop.act({ kind: 'begin-spell', stage: stage.bore });
  const tray = shop.tray('ash-copper', 30);
  shop.pace(60_000);
  for (let piece = 0; piece < 3; piece += 1) shop.flaw(tray, 'bore', { why: 'blown', outcome: scrapped() });
  for (let piece = 0; piece < 2; piece += 1) shop.flaw(tray, 'bore', { why: 'scratch', outcome: lowered });
  shop.flaw(tray, 'bore', { why: 'gap', outcome: mended });
  for (let piece = 0; piece < 10; piece += 1) shop.pass(tray, 'bore');
  return shop;
}

const reviewed = () => {
  const { shop, log } = bored();
  const common = { route: [stage.bore], hourlyRate: 6000 };
  const ash = {
    ...{ variant: variant['ash-copper'], species: species.ash, bill: [], firsts: 11, seconds: 2 },
    ...{ firstPrice: 3200, secondPrice: 1900 },
  };
  return studyReviews(tapTable({ runs: [], events: log }), {
    batches: [
      { batch: batch.spring, ...common, variants: [ash] },
      { batch: batch.autumn, ...common, variants: [] },
    ],
    unitCosts: [],
    hourlyRate: 6000,
    routes: routesIn(shop.registers),
    minutesOf: () => 1,
  });
};

test('a batch has its hours, its days, its losses by pieces, and their money', () => {
  const [spring] = reviewed();
  // Sixteen taps of a minute each.
  expect(spring?.minutes).toBeCloseTo(16, 6);
  expect(spring?.days?.first).toBe(spring?.days?.last);
  // What was mended is no loss.
  expect(spring?.losses).toEqual([
    { stage: stage.bore, reason: reason.blown, pieces: 3 },
    { stage: stage.bore, reason: reason.scratch, pieces: 2 },
  ]);
  // By hand: two seconds bring in 13.00 less each; three blown ones lost a minute at 60 an hour each.
  expect(spring?.costs.losses.cells.map(({ reason: why, money }) => [why, money])).toEqual([
    [reason.scratch, 2600],
    [reason.blown, 300],
  ]);
});

test('a batch that nobody has begun has nothing of all that', () => {
  expect(reviewed()[1]).toMatchObject({ batch: batch.autumn, minutes: 0, days: null, losses: [] });
});
