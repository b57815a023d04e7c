import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Outcome } from '../../../src/domain/log/event.ts';
import { atStage } from '../../../src/domain/log/place.ts';
import { countOf } from '../../../src/domain/shop/counter.ts';
import { placesOf } from '../../../src/domain/shop/positions.ts';
import { survivalBySpecies, survivalByVariant } from '../../../src/domain/study/survival.ts';
import { aWorkshop, backTo, lowered, mended, scrapped, type TestShop } from '../../support/a-shop.ts';
import { studied, testRoutes } from '../../support/study-makers.ts';
import { routeStages, type StageName } from '../../support/workshop.ts';

const routes = testRoutes;
const bySpecies = (shop: TestShop) => survivalBySpecies(studied(shop.log), { routes });

/**
 * Ten of ash. Bore: 9 pass, 1 scrapped. Glue: 8 pass, 1 waits. Turn: 4 pass, 1 mended, 1 lowered, 1 sent back, 1 waits;
 * the one that was sent back passes the glue again and is scrapped at the turning.
 */
function tenOfAsh() {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 10);
  shop.pass(tray, 'bore', { pieces: 9 });
  shop.flaw(tray, 'bore', { why: 'blown', outcome: scrapped() });
  shop.pass(tray, 'glue', { pieces: 8 });
  shop.pass(tray, 'turn', { pieces: 4 });
  shop.flaw(tray, 'turn', { why: 'scratch', outcome: mended });
  shop.flaw(tray, 'turn', { why: 'scratch', outcome: lowered });
  shop.flaw(tray, 'turn', { why: 'gap', outcome: backTo('glue') });
  const waiting = shop.split(tray, 'glue', { pieces: 1 });
  shop.pass(tray, 'glue');
  const aside = shop.split(tray, 'turn', { pieces: 1 });
  shop.flaw(tray, 'turn', { why: 'catch', outcome: scrapped() });
  return { shop, tray, waiting, aside };
}

describe('survival along the route', () => {
  test('tries each piece once a stage, also one that was sent back, and counts what is in flight for what it survived', () => {
    const [ash] = bySpecies(tenOfAsh().shop);
    expect(ash?.stages.slice(0, 4)).toEqual([
      {
        ...{ stage: 'bore', repeats: 0, firstPass: { of: 10, out: 9 } },
        ...{ finished: { atRisk: 10, lost: 1 }, firsts: { atRisk: 10, lost: 1 } },
      },
      {
        ...{ stage: 'glue', repeats: 1, firstPass: { of: 8, out: 8 } },
        ...{ finished: { atRisk: 8, lost: 0 }, firsts: { atRisk: 8, lost: 0 } },
      },
      {
        ...{ stage: 'turn', repeats: 1, firstPass: { of: 7, out: 4 } },
        ...{ finished: { atRisk: 7, lost: 1 }, firsts: { atRisk: 7, lost: 2 } },
      },
      {
        ...{ stage: 'sand', repeats: 0, firstPass: { of: 0, out: 0 } },
        ...{ finished: { atRisk: 0, lost: 0 }, firsts: { atRisk: 0, lost: 0 } },
      },
    ]);
    expect(ash?.finished.raw).toBeUndefined();
    expect(ash?.finished.soFar?.stage).toBe('turn');
    expect(ash?.finished.soFar?.survival).toBeCloseTo(0.9 * (6 / 7), 12);
    expect(ash?.firsts.soFar?.survival).toBeCloseTo(0.9 * (5 / 7), 12);
  });

  test('is the share that came through once nothing is in flight, whatever was sent back on the way', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 8 }), fc.infiniteStream(fc.nat(99)), (made, chance) => {
        const shop = playedOut(made, () => Number(chance.next().value));
        const [ash] = bySpecies(shop);
        const { finished, scrapped: lost } = shop.shop.ledger;
        const firsts = countOf(finished, 'ash|ash-copper|first');
        const through = firsts + countOf(finished, 'ash|ash-copper|second');
        expect(through + countOf(lost, 'ash|ash-copper')).toBe(made);
        const all = ash?.stages ?? [];
        const left = (to: 'finished' | 'firsts') => all.reduce((n, each) => n - each[to].lost, made);
        expect([left('finished'), left('firsts')]).toEqual([through, firsts]);
        if (through > 0) expect(ash?.finished.raw).toBeCloseTo(through / made, 12);
        if (firsts > 0) expect(ash?.firsts.raw).toBeCloseTo(firsts / made, 12);
      }),
      { numRuns: 60 },
    );
  });

  test('asks of a wood only the stages of its batches', () => {
    const shop = aWorkshop();
    const tray = shop.tray('plum-copper', 4, 'autumn');
    shop.pass(tray, 'turn', { pieces: 4 });
    shop.pass(tray, 'sand', { pieces: 3 });
    shop.flaw(tray, 'sand', { why: 'scratch', outcome: scrapped() });
    const [plum] = bySpecies(shop);
    expect(plum?.stages.map((each) => each.stage)).toEqual(['turn', 'sand']);
    expect(plum?.finished.raw).toBe(0.75);
  });

  test('leans a wood with few pieces on the others, and says how much its own would tell', () => {
    const shop = aWorkshop();
    const many = shop.tray('ash-copper', 40);
    const few = shop.tray('plum-copper', 2);
    for (const name of routeStages) {
      shop.pass(many, name, { pieces: 36 });
      if (name === 'bore') shop.flaw(many, 'bore', { why: 'blown', outcome: scrapped(), pieces: 4 });
      if (name === 'turn') shop.flaw(few, 'turn', { why: 'catch', outcome: scrapped() });
      shop.pass(few, name, { pieces: ['bore', 'glue'].includes(name) ? 2 : 1 });
    }
    const [ash, plum] = bySpecies(shop);
    expect(ash?.finished.raw).toBeCloseTo(0.9, 12);
    expect(plum?.finished.raw).toBeCloseTo(0.5, 12);
    expect(ash?.finished.worth.n).toBeCloseTo(40, 9);
    expect(plum?.finished.worth.n).toBeCloseTo(2, 9);
    // Plum moves far towards ash, ash hardly towards plum.
    expect(plum?.finished.pooled).toBeGreaterThan(0.6);
    expect(Math.abs((ash?.finished.pooled ?? 0) - 0.9)).toBeLessThan(0.05);
    const [low, high] = plum?.finished.pooledInterval ?? [1, 0];
    expect(low).toBeLessThan(plum?.finished.pooled ?? 0);
    expect(high).toBeGreaterThan(plum?.finished.pooled ?? 1);
  });

  test('tells variants of one wood apart', () => {
    const shop = aWorkshop();
    const copper = shop.tray('ash-copper', 2);
    const nickel = shop.tray('ash-nickel', 2);
    shop.pass(copper, 'bore', { pieces: 2 });
    shop.flaw(nickel, 'bore', { why: 'blown', outcome: scrapped(), pieces: 2 });
    const groups = survivalByVariant(studied(shop.log), { routes });
    expect(groups.map(({ group, finished }) => [group, finished.soFar?.survival])).toEqual([
      ['ash-copper', 1],
      ['ash-nickel', 0],
    ]);
    expect(bySpecies(shop).map(({ group }) => group)).toEqual(['ash']);
  });

  test('rolls the first-pass yields up, the worst stage first', () => {
    const [ash] = bySpecies(tenOfAsh().shop);
    expect(ash?.rolled.factors).toEqual([
      { stage: 'turn', of: 7, out: 4, share: 4 / 7 },
      { stage: 'bore', of: 10, out: 9, share: 0.9 },
      { stage: 'glue', of: 8, out: 8, share: 1 },
    ]);
    expect(ash?.rolled.share).toBeCloseTo((4 / 7) * 0.9, 12);
  });

  test('of nothing is of no group', () => {
    expect(survivalBySpecies(studied([]), { routes })).toEqual([]);
  });
});

/** A tray of ash of which every piece is finished or scrapped, by chance. */
function playedOut(made: number, chance: () => number): TestShop {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', made);
  for (let steps = 0; ; steps += 1) {
    const standing = [...placesOf(shop.shop.positions, tray).values()].find(
      ({ place, pieces }) => atStage(place) && pieces > 0,
    );
    if (!standing || !atStage(standing.place)) return shop;
    const { place } = standing;
    const name = place.stage as string as StageName;
    const at = { grade: place.grade, pieces: 1 + (chance() % standing.pieces) };
    const earlier = routeStages.slice(0, routeStages.indexOf(name as 'bore'));
    const outcomes: readonly Outcome[] = [
      ...[mended, lowered, scrapped()],
      ...(steps < 60 ? earlier.slice(-2).map((each) => backTo(each)) : []),
    ];
    const choice = chance() % 10;
    const outcome = outcomes[choice];
    if (outcome) shop.flaw(tray, name, { ...at, why: 'gap', outcome });
    else shop.pass(tray, name, at);
  }
}
