import { describe, expect, test } from 'vitest';
import { type CostQuestion, studyCosts } from '../../../../src/domain/plan/cost/cost-study.ts';
import { tapTable } from '../../../../src/domain/study/log-of-taps.ts';
import { routesIn } from '../../../../src/domain/study/study-routes.ts';
import { aWorkshop, backTo, lowered, scrapped } from '../../../support/a-shop.ts';
import { batch, part, reason, species, stage, variant } from '../../../support/workshop.ts';

const route = [stage.bore, stage.glue, stage.turn];

const question = (more: Partial<CostQuestion> = {}): CostQuestion => ({
  ...{ batch: batch.spring, route, hourlyRate: 3000 },
  variants: [
    {
      ...{ variant: variant['ash-copper'], species: species.ash, firsts: 6, seconds: 1 },
      ...{ firstPrice: 3200, secondPrice: 1900 },
      bill: [
        { part: part['ash-blank'], each: 1, stage: stage.bore },
        { part: part.core, each: 2, stage: stage.glue },
        { part: part['copper-ferrule'], each: 1, stage: stage.turn },
      ],
    },
  ],
  unitCosts: [
    { part: part['ash-blank'], cost: 100, consumed: false },
    { part: part.core, cost: 50, consumed: true },
    { part: part['copper-ferrule'], cost: 200, consumed: false },
  ],
  ...more,
});

/** Ten of ash: one blown at the boring, one scrapped at the turning with its cores saved, one lowered, one sent back. */
function shopWithLosses() {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 10);
  shop.flaw(tray, 'bore', { why: 'blown', outcome: scrapped() });
  shop.pass(tray, 'bore', { pieces: 9 });
  shop.load(tray, 'glue', { pieces: 8 });
  shop.later(24 * 60);
  shop.pass(tray, 'glue', { pieces: 8, held: true });
  shop.flaw(tray, 'turn', { why: 'catch', outcome: scrapped(part.core) });
  shop.flaw(tray, 'turn', { why: ['scratch', 'gap'], outcome: lowered });
  shop.flaw(tray, 'turn', { why: 'gap', outcome: backTo('bore') });
  shop.pass(tray, 'bore', { pieces: 1 });
  return shop;
}

function studied(more: Partial<CostQuestion> = {}) {
  const shop = shopWithLosses();
  const minutes = new Map([
    [stage.bore, 2],
    [stage.glue, 0],
    [stage.turn, 6],
  ]);
  return studyCosts(tapTable({ runs: [], events: shop.log }), {
    ...question(more),
    routes: routesIn(shop.shop.registers),
    minutesOf: (at) => minutes.get(at),
  });
}

// Worked out by hand: an hour costs 3000, so a boring 100 and a turning 300.
describe('the cost of a good piece', () => {
  test('bears its parts, its work, what came again, what was scrapped, and the markdown of seconds', () => {
    const [{ cost } = {}] = studied().variants;
    expect(cost).toMatchObject({
      kind: 'known',
      good: 7,
      all: {
        // 7 blanks and 7 ferrules.
        parts: 7 * 300,
        // 7 × (100 + 300), and one boring again.
        labour: 2800 + 100,
        consumables: 7 * 2 * 50,
        // A boring; then a boring, a turning and a blank, its cores saved.
        scrap: 100 + 400 + 100,
        markdown: 1300,
        whole: 2100 + 2900 + 700 + 600 + 1300,
      },
    });
  });

  test('is not known without a rate or a cost, and says what is missing', () => {
    const [{ cost } = {}] = studied({ hourlyRate: null, unitCosts: [] }).variants;
    expect(cost).toMatchObject({
      kind: 'not-known',
      missing: expect.arrayContaining([
        { what: 'hourly-rate' },
        { what: 'unit-cost', part: part.core },
        { what: 'unit-cost', part: part['copper-ferrule'] },
      ]),
    });
  });

  test('names for each stage its minutes and the chance to come through', () => {
    const [{ stages } = { stages: [] }] = studied().variants;
    expect(stages.map(({ stage: at, minutes }) => [at, minutes])).toEqual([
      [stage.bore, 2],
      [stage.glue, 0],
      [stage.turn, 6],
    ]);
    for (const { chance } of stages) expect(chance > 0.5 && chance < 1).toBe(true);
  });
});

test('money lost is told by stage and reason, a piece with two reasons halved between them', () => {
  const { losses } = studied();
  const money = losses.cells.map(({ stage: at, reason: why, money: sum }) => [at, why, sum]);
  expect(money).toEqual(
    expect.arrayContaining([
      [stage.bore, reason.blown, 100],
      [stage.turn, reason.catch, 500],
      [stage.turn, reason.scratch, 650],
      // Half of the second; and a boring and a turning again.
      [stage.turn, reason.gap, 650 + 400],
    ]),
  );
  expect(losses.whole).toBe(100 + 500 + 1300 + 400);
});

test('pieces of another batch are in none of it', () => {
  const { variants, losses } = studied({ batch: batch.autumn });
  expect(losses.cells).toEqual([]);
  expect(variants[0]?.cost).toMatchObject({ all: { scrap: 0 } });
});
