import { describe, expect, test } from 'vitest';
import type { ShopEvent } from '../../../src/domain/log/event.ts';
import type { TrayId } from '../../../src/domain/log/ids.ts';
import { countsToCheck } from '../../../src/domain/rollup/waiting.ts';
import { placesOf } from '../../../src/domain/shop/positions.ts';
import { aWorkshop, isVoidable, lowered, meet, type TestShop, tablets } from '../../support/a-shop.ts';
import { allPlaces } from '../../support/all-places.ts';
import { batch, variant } from '../../support/workshop.ts';

const counts = (shop: TestShop, tray: TrayId) =>
  [...placesOf(shop.shop.positions, tray).values()]
    .filter(({ pieces }) => pieces !== 0)
    .map(({ place, pieces }) => ('stage' in place ? `${place.stage} ${pieces}` : `${place.at} ${pieces}`));

const refusal = (shop: TestShop, events: readonly ShopEvent[]) =>
  shop.refusal({ kind: 'undo', events: events.filter(isVoidable) });

describe('undo', () => {
  test('takes back the events of one tap together', () => {
    const shop = aWorkshop();
    const before = shop.shop.trays.size;
    const made = shop.act({
      kind: 'make-trays',
      variant: variant['ash-copper'],
      batch: batch.spring,
      pieces: 4,
      trays: 3,
    });
    expect(shop.undo(made)).toHaveLength(3);
    expect(shop.shop.trays.size).toBe(before);
    expect(shop.shop.ledger.made.size).toBe(0);
  });

  test('is an event of its own, with a copy of what it takes back, on the day and by the person of the undo', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 4);
    const [pass] = shop.pass(tray, 'bore');
    shop.later(24 * 60);
    shop.by('odo');
    shop.undo(shop.log.slice(-1));
    expect(shop.log.at(-1)).toMatchObject({ kind: 'voided', day: '2026-03-03', person: 'odo', event: pass });
  });

  test('is refused for what is taken back already, and for nothing', () => {
    const shop = aWorkshop();
    const pass = shop.pass(shop.tray('ash-copper', 4), 'bore');
    shop.undo(pass);
    expect(refusal(shop, pass)).toEqual({ kind: 'already-taken-back' });
    expect(refusal(shop, [])).toEqual({ kind: 'already-taken-back' });
  });

  test('of a tap of which a part is taken back takes back the rest', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 4);
    const [one] = shop.pass(tray, 'bore');
    const [two] = shop.flaw(tray, 'bore', { why: 'catch', outcome: lowered });
    if (!one || !two) throw new Error('two events');
    shop.undo([one]);
    expect(shop.undo([one, two]).map((event) => event.kind === 'voided' && event.event.kind)).toEqual([
      'flawed',
    ]);
    expect(counts(shop, tray)).toEqual(['bore 4']);
  });

  test('can itself be taken back, and that again', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 4);
    const undo = shop.undo(shop.pass(tray, 'bore', { pieces: 4 }));
    expect(counts(shop, tray)).toEqual(['bore 4']);
    const redo = shop.undo(undo);
    expect(counts(shop, tray)).toEqual(['glue 4']);
    expect(refusal(shop, undo)).toEqual({ kind: 'already-taken-back' });
    shop.undo(redo);
    expect(counts(shop, tray)).toEqual(['bore 4']);
  });

  test('of a pass whose piece has moved on since leaves a count below zero that asks for a recount', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 1);
    const pass = shop.pass(tray, 'bore');
    shop.pass(tray, 'glue');
    shop.undo(pass);
    expect(counts(shop, tray)).toEqual(expect.arrayContaining(['bore 1', 'glue -1', 'turn 1']));
    expect(countsToCheck(shop.shop)).toMatchObject([{ stage: 'glue', pieces: -1 }]);
  });
});

describe('a tray is not taken away while something is left on it', () => {
  test('its making can be taken back until a piece of it has moved, and again when that is taken back', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 4);
    const made = shop.log.slice(-1);
    const pass = shop.pass(tray, 'bore');
    expect(refusal(shop, made)).toEqual({ kind: 'cannot-be-taken-back' });
    shop.undo(pass);
    shop.undo(made);
    expect(shop.shop.trays.has(tray)).toBe(false);
    expect(allPlaces(shop.shop).size).toBe(0);
  });

  test('nor when a recount has found it empty: its count would be left below zero', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 1);
    const made = shop.log.slice(-1);
    shop.recount(tray, 'bore', { counted: 0 });
    expect(refusal(shop, made)).toEqual({ kind: 'cannot-be-taken-back' });
  });

  test('a split can be taken back until a piece of the new tray has moved', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 4);
    const other = shop.split(tray, 'bore', { pieces: 2 });
    const split = shop.log.slice(-1);
    shop.pass(tray, 'bore');
    const pass = shop.pass(other, 'bore');
    expect(refusal(shop, split)).toEqual({ kind: 'cannot-be-taken-back' });
    shop.undo(pass);
    shop.undo(split);
    expect(counts(shop, tray)).toEqual(['bore 3', 'glue 1']);
    expect(shop.shop.trays.has(other)).toBe(false);
  });

  test('one tray of a tap that cannot be taken away keeps them all', () => {
    const shop = aWorkshop();
    const made = shop.act({
      kind: 'make-trays',
      variant: variant['ash-copper'],
      batch: batch.spring,
      pieces: 4,
      trays: 2,
    });
    const [first] = made;
    if (first?.kind !== 'tray-made') throw new Error('a tray is made');
    shop.pass(first.of.tray, 'bore');
    expect(refusal(shop, made)).toEqual({ kind: 'cannot-be-taken-back' });
  });
});

describe('two tablets', () => {
  test('that take back the same act before they meet subtract it once', () => {
    const [bench, office] = tablets('A', 'C');
    if (!bench || !office) throw new Error('two tablets');
    const tray = bench.tray('ash-copper', 4);
    const pass = bench.pass(tray, 'bore', { pieces: 3 });
    meet(bench, office);
    bench.undo(pass);
    office.undo(pass);
    meet(bench, office);
    for (const tablet of [bench, office]) {
      expect(counts(tablet, tray)).toEqual(['bore 4']);
      expect(refusal(tablet, pass)).toEqual({ kind: 'already-taken-back' });
    }
  });

  test('of which one takes its undo back again: the act stays taken back by the other', () => {
    const [bench, office] = tablets('A', 'C');
    if (!bench || !office) throw new Error('two tablets');
    const tray = bench.tray('ash-copper', 4);
    const pass = bench.pass(tray, 'bore', { pieces: 3 });
    meet(bench, office);
    bench.undo(bench.undo(pass));
    const undo = office.undo(pass);
    meet(bench, office);
    expect([counts(bench, tray), counts(office, tray)]).toEqual([['bore 4'], ['bore 4']]);
    office.undo(undo);
    meet(bench, office);
    expect(counts(bench, tray)).toEqual(expect.arrayContaining(['bore 1', 'glue 3']));
  });
});
