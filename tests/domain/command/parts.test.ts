import { describe, expect, test } from 'vitest';
import { partsHeld } from '../../../src/domain/command/parts.ts';
import { partsToClean } from '../../../src/domain/rollup/parts-on-hand.ts';
import type { VariantFact } from '../../../src/domain/set-up/facts.ts';
import { aWorkshop, backTo, lowered, mended, scrapped, type TestShop } from '../../support/a-shop.ts';
import { part, routeStages, species, stage, variant } from '../../support/workshop.ts';

/** What the stores have lost (negative) or got back, by part. */
const used = (shop: TestShop) => Object.fromEntries(shop.shop.partsUsed);

/** Pieces of ash with copper that wait to be sanded: a blank and two cores are in each, the ferrule is not yet. */
function toSand(pieces: number) {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', pieces);
  for (const name of ['bore', 'glue', 'turn'] as const) shop.pass(tray, name, { pieces });
  return { shop, tray };
}

describe('a part is used when a piece leaves the stage that fits it', () => {
  test('and not before, nor again at later stages', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 3);
    expect(used(shop)).toEqual({});
    shop.pass(tray, 'bore', { pieces: 3 });
    expect(used(shop)).toEqual({ 'ash-blank': -3 });
    shop.load(tray, 'glue', { pieces: 3 });
    expect(used(shop)).toEqual({ 'ash-blank': -3 });
    shop.pass(tray, 'glue', { held: true, pieces: 3 });
    shop.pass(tray, 'turn', { pieces: 3 });
    expect(used(shop)).toEqual({ 'ash-blank': -3, core: -6 });
  });

  test.each([
    ['mended', mended],
    ['lowered to a second', lowered],
  ])('also by a piece that is %s there', (_, outcome) => {
    const { shop, tray } = toSand(2);
    shop.flaw(tray, 'sand', { why: 'scratch', outcome, pieces: 2 });
    expect(used(shop)).toMatchObject({ 'copper-ferrule': -2 });
  });

  test('each variant uses its own', () => {
    const shop = aWorkshop();
    for (const name of ['ash-nickel', 'plum-copper'] as const) {
      const tray = shop.tray(name, 1);
      for (const at of routeStages) shop.pass(tray, at);
    }
    expect(used(shop)).toEqual({
      'ash-blank': -1,
      'plum-blank': -1,
      core: -4,
      'nickel-ferrule': -1,
      'copper-ferrule': -1,
    });
  });

  test('and comes back when the pass is taken back', () => {
    const { shop, tray } = toSand(2);
    const before = used(shop);
    shop.undo(shop.pass(tray, 'sand', { pieces: 2 }));
    expect(used(shop)).toEqual(before);
  });
});

describe('a part comes back when a piece is sent back to before the stage that had fitted it', () => {
  test.each([
    { to: 'turn', left: { 'ash-blank': -1, core: -2 }, says: 'none: nothing is fitted at the turning' },
    { to: 'glue', left: { 'ash-blank': -1 }, says: 'the cores, which are glued in anew' },
    { to: 'bore', left: {}, says: 'the cores and the blank' },
  ] as const)('from sanding to $to: $says', ({ to, left }) => {
    const { shop, tray } = toSand(1);
    shop.flaw(tray, 'sand', { why: 'gap', outcome: backTo(to) });
    expect(used(shop)).toEqual(left);
  });

  test('and is used again when the piece comes through again', () => {
    const { shop, tray } = toSand(1);
    const before = used(shop);
    shop.flaw(tray, 'sand', { why: 'gap', outcome: backTo('bore') });
    for (const name of ['bore', 'glue', 'turn'] as const) shop.pass(tray, name);
    expect(used(shop)).toEqual(before);
  });
});

describe('a part that has to be cleaned, saved from scrap', () => {
  /** The stores of a shop that says of its cores what `cleaned` says. */
  function scrapOf(cleaned: boolean | undefined) {
    const { shop, tray } = toSand(3);
    const value = {
      name: 'Core',
      sort: 'core',
      retired: false,
      ...(cleaned === undefined ? {} : { cleaned }),
    } as const;
    shop.set({ register: 'part', id: part.core, value });
    const events = shop.flaw(tray, 'sand', {
      why: 'blown',
      outcome: scrapped(part.core, part['ash-blank']),
      pieces: 2,
    });
    return { shop, tray, events };
  }

  test.each([true, undefined])(
    'goes to be cleaned, and what else was saved straight back (%j)',
    (cleaned) => {
      const { shop, events } = scrapOf(cleaned);
      expect(events).toMatchObject([
        { parts: [{ part: part['ash-blank'], pieces: 2 }], toClean: [{ part: part.core, pieces: 4 }] },
      ]);
      expect(used(shop)).toEqual({ 'ash-blank': -1, core: -6 });
      expect(partsToClean(shop.shop, part.core)).toBe(4);
    },
  );

  test('goes straight back where the shop says so, and the event tells of nothing to clean', () => {
    const { shop, events } = scrapOf(false);
    expect(used(shop)).toEqual({ 'ash-blank': -1, core: -2 });
    expect(events[0]).not.toHaveProperty('toClean');
  });

  test('is not to be cleaned any more when the scrap is taken back', () => {
    const { shop, events } = scrapOf(true);
    shop.undo(events);
    expect(partsToClean(shop.shop, part.core)).toBe(0);
    expect(used(shop)).toEqual({ 'ash-blank': -3, core: -6 });
  });

  test('stays where it went when the shop thinks better of it later', () => {
    const { shop } = scrapOf(true);
    shop.set({
      register: 'part',
      id: part.core,
      value: { name: 'Core', sort: 'core', retired: false, cleaned: false },
    });
    expect(partsToClean(shop.shop, part.core)).toBe(4);
  });
});

describe('scrap saves a part only if the piece has it', () => {
  test('the saved parts come back, as many as were fitted; the others are lost', () => {
    const { shop, tray } = toSand(3);
    shop.flaw(tray, 'sand', { why: 'blown', outcome: scrapped(part.core), pieces: 2 });
    expect(used(shop)).toEqual({ 'ash-blank': -3, core: -6 + 4 });
  });

  test('a part that a later stage fits cannot come back', () => {
    const { shop, tray } = toSand(1);
    const before = used(shop);
    shop.flaw(tray, 'sand', {
      why: 'blown',
      outcome: scrapped(part['copper-ferrule'], part['nickel-ferrule']),
    });
    expect(used(shop)).toEqual(before);
  });

  test('a part that is named twice comes back once', () => {
    const { shop, tray } = toSand(1);
    shop.flaw(tray, 'sand', { why: 'blown', outcome: scrapped(part.core, part.core) });
    expect(used(shop)).toEqual({ 'ash-blank': -1 });
  });

  test('of a part that two stages fit, only what the stages before have fitted comes back', () => {
    const shop = aWorkshop();
    const bill: VariantFact['bill'] = [
      { part: part.core, each: 1, stage: stage.bore },
      { part: part.core, each: 3, stage: stage.sand },
    ];
    const value = {
      name: 'double core',
      species: species.ash,
      ferrule: null,
      bill,
      firstPrice: null,
      secondPrice: null,
      retired: false,
    };
    shop.set({ register: 'variant', id: variant['ash-copper'], value });
    const tray = shop.tray('ash-copper', 2);
    shop.pass(tray, 'bore', { pieces: 2 });
    shop.flaw(tray, 'glue', { why: 'blown', outcome: scrapped(part.core) });
    expect(used(shop)).toEqual({ core: -1 });
  });

  test('what a piece holds, and scrap could save, grows along the route', () => {
    const bill: VariantFact['bill'] = [
      { part: part['ash-blank'], each: 1, stage: stage.bore },
      { part: part.core, each: 1, stage: stage.glue },
      { part: part.core, each: 1, stage: stage.turn },
    ];
    const route = routeStages.map((name) => stage[name]);
    const held = route.map((at) => partsHeld({ bill, route, stage: at }).join(' '));
    expect(held).toEqual([
      '',
      'ash-blank',
      'ash-blank core',
      'ash-blank core',
      'ash-blank core',
      'ash-blank core',
    ]);
    expect(partsHeld({ bill, route, stage: stage.wax })).toEqual([]);
  });
});
