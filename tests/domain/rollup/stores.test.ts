import { describe, expect, test } from 'vitest';
import { allotted } from '../../../src/domain/rollup/allotted.ts';
import { canStart } from '../../../src/domain/rollup/can-start.ts';
import { partCost } from '../../../src/domain/rollup/part-cost.ts';
import { partsOnHand } from '../../../src/domain/rollup/parts-on-hand.ts';
import { stillToStart, toOrder } from '../../../src/domain/rollup/to-order.ts';
import type { PartFact } from '../../../src/domain/set-up/facts.ts';
import { aWorkshop, backTo, lowered, scrapped, type TestShop } from '../../support/a-shop.ts';
import { batch, part, partFacts, route, stage, variant } from '../../support/workshop.ts';

/**
 * The bill of the test workshop, common practice, no source: a blank at the boring, two pins at the glue-up (they are what
 * `core` stands for here), a ferrule at the sanding. Route: bore, glue, turn, sand, grade, photo.
 */
function stocked(pieces: Partial<Record<keyof typeof part, number>> = {}): TestShop {
  const shop = aWorkshop();
  for (const set of partFacts) shop.set(set);
  for (const [name, count] of Object.entries(pieces))
    receive(shop, { name: name as keyof typeof part, pieces: count });
  return shop;
}

function receive(
  shop: TestShop,
  { name, pieces, cost = null }: { name: keyof typeof part; pieces: number; cost?: number | null },
) {
  shop.act({ kind: 'receive-parts', parts: [{ part: part[name], pieces, cost }], note: '' });
}

const setPart = (shop: TestShop, name: keyof typeof part, more: Partial<PartFact>) =>
  shop.set({ register: 'part', id: part[name], value: { name, sort: 'core', retired: false, ...more } });

/** On hand, allotted and free of blank, pins and ferrule, as the hand-made table below has them. */
function table({ shop }: TestShop) {
  const taken = allotted(shop);
  return (['ash-blank', 'core', 'copper-ferrule'] as const).map((name) => {
    const [onHand, needed] = [partsOnHand(shop, part[name]), taken.get(part[name]) ?? 0];
    return [onHand, needed, onHand - needed];
  });
}

describe('on hand, allotted and free, step by step', () => {
  /*
   * Made by hand. 100 blanks, 200 pins, 50 ferrules received; a tray of 12 of ash with copper.
   *
   * step                         blanks            pins              ferrules
   * made up                      100  12  88       200  24  176      50  12  38
   * 12 bored                      88   0  88       200  24  176      50  12  38
   * 12 glued                      88   0  88       176   0  176      50  12  38
   * 5 turned                      88   0  88       176   0  176      50  12  38
   * 5 sanded                      88   0  88       176   0  176      45   7  38
   * 1 of 7 back to boring         89   1  88       178   2  176      45   7  38
   *   (its blank and its two pins come back)
   * 1 of 6 scrapped, none saved   89   1  88       178   2  176      45   6  39
   * 1 sanded lowered to a second  89   1  88       178   2  176      45   6  39
   */
  test('are those of the table', () => {
    const shop = stocked({ 'ash-blank': 100, core: 200, 'copper-ferrule': 50 });
    const tray = shop.tray('ash-copper', 12);
    const steps = [table(shop)];
    const note = (_: unknown) => steps.push(table(shop));
    note(shop.pass(tray, 'bore', { pieces: 12 }));
    note(shop.pass(tray, 'glue', { pieces: 12 }));
    note(shop.pass(tray, 'turn', { pieces: 5 }));
    note(shop.pass(tray, 'sand', { pieces: 5 }));
    note(shop.flaw(tray, 'turn', { why: 'gap', outcome: backTo('bore') }));
    note(shop.flaw(tray, 'turn', { why: 'blown', outcome: scrapped() }));
    note(shop.flaw(tray, 'grade', { why: 'scratch', outcome: lowered }));
    expect(steps).toEqual([
      [
        [100, 12, 88],
        [200, 24, 176],
        [50, 12, 38],
      ],
      [
        [88, 0, 88],
        [200, 24, 176],
        [50, 12, 38],
      ],
      [
        [88, 0, 88],
        [176, 0, 176],
        [50, 12, 38],
      ],
      [
        [88, 0, 88],
        [176, 0, 176],
        [50, 12, 38],
      ],
      [
        [88, 0, 88],
        [176, 0, 176],
        [45, 7, 38],
      ],
      [
        [89, 1, 88],
        [178, 2, 176],
        [45, 7, 38],
      ],
      [
        [89, 1, 88],
        [178, 2, 176],
        [45, 6, 39],
      ],
      [
        [89, 1, 88],
        [178, 2, 176],
        [45, 6, 39],
      ],
    ]);
  });

  test('pieces that cure are allotted what the stage of the cure fits', () => {
    const shop = stocked({ core: 20 });
    const tray = shop.tray('ash-copper', 4);
    shop.pass(tray, 'bore', { pieces: 4 });
    shop.load(tray, 'glue', { pieces: 3 });
    expect(table(shop)[1]).toEqual([20, 8, 12]);
  });

  test('a batch on a route without the stage that fits a part is allotted none of it', () => {
    const shop = stocked({ core: 20, 'copper-ferrule': 20 });
    shop.tray('ash-copper', 4, 'autumn');
    expect(table(shop).slice(1)).toEqual([
      [20, 0, 20],
      [20, 4, 16],
    ]);
  });

  test('free stays right when two screens tap the same last piece off', () => {
    const shop = stocked({ core: 20 });
    const tray = shop.tray('ash-copper', 1);
    shop.pass(tray, 'bore');
    for (let tap = 0; tap < 2; tap += 1) shop.pass(tray, 'glue', { shown: 1 });
    expect(table(shop)[1]).toEqual([16, -2, 18]);
  });
});

describe('what can be started now', () => {
  const startOf = (shop: TestShop, id: keyof typeof variant) =>
    canStart(shop.shop).find((each) => each.variant === variant[id]);

  test('is what the part lasts for that is used up first, after what the pieces in work will take', () => {
    // Free: 30 - 4 blanks, 41 - 8 pins, 40 - 4 ferrules. Pins are enough for 16, by two a piece.
    const shop = stocked({ 'ash-blank': 30, core: 41, 'copper-ferrule': 40 });
    shop.tray('ash-copper', 4);
    expect(startOf(shop, 'ash-copper')).toEqual({
      variant: variant['ash-copper'],
      pieces: 16,
      limit: part.core,
      untold: [],
    });
  });

  test('of parts that nobody has counted takes no account, and names them', () => {
    const shop = stocked({ core: 10 });
    expect(startOf(shop, 'ash-nickel')).toMatchObject({
      pieces: 5,
      limit: part.core,
      untold: [part['ash-blank'], part['nickel-ferrule']],
    });
    expect(startOf(stocked(), 'ash-nickel')).toMatchObject({ pieces: null, limit: null });
  });

  test('is none where less than nothing is free', () => {
    const shop = stocked({ core: 3, 'ash-blank': 50, 'copper-ferrule': 50 });
    shop.tray('ash-copper', 9);
    expect(startOf(shop, 'ash-copper')).toMatchObject({ pieces: 0, limit: part.core });
  });

  test('adds up a part that two stages fit', () => {
    const shop = stocked({ core: 10 });
    const fact = {
      ...{
        name: 'two pins',
        species: 'ash',
        ferrule: null,
        firstPrice: null,
        secondPrice: null,
        retired: false,
      },
      bill: [
        { part: part.core, each: 1, stage: stage.glue },
        { part: part.core, each: 2, stage: stage.sand },
      ],
    } as const;
    shop.set({ register: 'variant', id: variant['ash-copper'], value: fact as never });
    expect(startOf(shop, 'ash-copper')).toMatchObject({ pieces: 3, limit: part.core });
  });

  test('is not asked of a variant without a bill or put away', () => {
    const shop = stocked();
    const value = {
      name: 'bare',
      species: 'ash',
      ferrule: null,
      bill: [],
      firstPrice: null,
      secondPrice: null,
    };
    shop.set({
      register: 'variant',
      id: variant['ash-copper'],
      value: { ...value, retired: false } as never,
    });
    expect(startOf(shop, 'ash-copper')).toBeUndefined();
    expect(canStart(shop.shop)).toHaveLength(2);
  });
});

describe('what to order', () => {
  const wanting = (shop: TestShop, good: number) =>
    shop.set({
      register: 'batch',
      id: batch.spring,
      value: {
        name: 'spring',
        route: route.haft,
        wanted: [{ variant: variant['ash-copper'], good }],
        due: null,
        retired: false,
      },
    });

  test('is plan + low mark - free; the plan is what is wanted, less firsts made and in work', () => {
    const shop = stocked({ 'ash-blank': 20, core: 30, 'copper-ferrule': 100 });
    wanting(shop, 20);
    setPart(shop, 'core', { lowMark: 10 });
    const tray = shop.tray('ash-copper', 8);
    for (const at of ['bore', 'glue', 'turn', 'sand', 'grade', 'photo'] as const)
      shop.pass(tray, at, { pieces: 2 });
    shop.flaw(tray, 'bore', { why: 'blown', outcome: lowered });
    // Firsts: 2 made, 5 in work; a second does not count. 13 are still to start: 13 blanks, 26 pins, 13 ferrules.
    expect(stillToStart(shop.shop)).toEqual([
      { batch: batch.spring, variant: variant['ash-copper'], pieces: 13 },
    ]);
    // Pins: 30 - 4 used, 12 allotted to the six in work: 14 free. 26 + 10 - 14 = 22. Blanks: 17 - 5 free = 12 of 13.
    expect(toOrder(shop.shop)).toEqual([
      { part: part['ash-blank'], order: 1, forPlan: 13, lowMark: 0, free: 12, toClean: 0 },
      { part: part.core, order: 22, forPlan: 26, lowMark: 10, free: 14, toClean: 0 },
    ]);
  });

  test('is nothing while enough is free, and tells of a low mark without any plan', () => {
    const shop = stocked({ core: 12 });
    setPart(shop, 'core', { lowMark: 12 });
    expect(toOrder(shop.shop)).toEqual([]);
    setPart(shop, 'core', { lowMark: 15 });
    expect(toOrder(shop.shop)).toMatchObject([{ part: part.core, order: 3, forPlan: 0 }]);
  });

  test('leaves out a part that nobody has counted and one that is put away', () => {
    const shop = stocked({ core: 1 });
    wanting(shop, 20);
    setPart(shop, 'core', { retired: true });
    expect(toOrder(shop.shop)).toEqual([]);
  });

  test('more made of a variant than is wanted is no plan, nor one that makes up for another batch', () => {
    const shop = stocked({ core: 1 });
    wanting(shop, 3);
    shop.tray('ash-copper', 5);
    expect(stillToStart(shop.shop)).toEqual([]);
  });

  test('of a batch that is put away nothing is planned', () => {
    const shop = stocked();
    wanting(shop, 3);
    const value = { name: 'spring', route: route.haft, wanted: [], due: null, retired: true };
    shop.set({ register: 'batch', id: batch.spring, value });
    expect(stillToStart(shop.shop)).toEqual([]);
  });
});

describe('what a part costs', () => {
  test('is what was paid over the pieces that were paid for, not rounded', () => {
    const shop = stocked();
    setPart(shop, 'core', { cost: 900 });
    expect(partCost(shop.shop, part.core)).toBe(9);
    receive(shop, { name: 'core', pieces: 100, cost: 250 });
    receive(shop, { name: 'core', pieces: 50 });
    receive(shop, { name: 'core', pieces: 200, cost: 560 });
    expect(partCost(shop.shop, part.core)).toBeCloseTo(2.7, 12);
  });

  test('is not known where neither a delivery nor Set-up says so', () => {
    expect(partCost(stocked({ core: 5 }).shop, part.core)).toBeNull();
  });

  test('may be nothing', () => {
    const shop = stocked();
    receive(shop, { name: 'core', pieces: 5, cost: 0 });
    expect(partCost(shop.shop, part.core)).toBe(0);
  });
});
