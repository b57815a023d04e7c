import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mostPieces } from '../../../src/domain/log/place.ts';
import { meanArrival, placesOf } from '../../../src/domain/shop/positions.ts';
import { shopOf } from '../../../src/domain/shop/shop.ts';
import { aWorkshop, backTo, mondayMorning } from '../../support/a-shop.ts';
import { expectSameShop } from '../../support/same-shop.ts';

describe('the positions of the pieces of a tray', () => {
  test('are one for each stage, grade, clamp time and way of coming', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 6);
    shop.pass(tray, 'bore', { pieces: 5 });
    shop.load(tray, 'glue', { pieces: 1 });
    shop.load(tray, 'glue', { pieces: 1 });
    shop.flaw(tray, 'glue', { why: 'gap', outcome: backTo('bore') });
    shop.flaw(tray, 'glue', { why: 'gap', outcome: { kind: 'second' } });
    const keys = [...placesOf(shop.shop.positions, tray).keys()].map((key) =>
      key.replace(/\|\d{6,}/, '|ready'),
    );
    expect(keys).toEqual([
      'w|bore|first|',
      'w|glue|first|',
      'h|glue|first||ready',
      'h|glue|first||ready',
      'w|bore|first|glue',
      'w|turn|second|',
    ]);
  });

  test('are of a tray in work until its last piece has left the stages, and again when that is taken back', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 2);
    const isIn = () => {
      const { working, settled } = shop.shop.positions;
      return [working.has(tray), settled.has(tray)];
    };
    const scrap = () => shop.flaw(tray, 'bore', { why: 'blown', outcome: { kind: 'scrapped', saved: [] } });
    scrap();
    expect(isIn()).toEqual([true, false]);
    const last = scrap();
    expect(isIn()).toEqual([false, true]);
    shop.undo(last);
    expect(isIn()).toEqual([true, false]);
  });

  test('of a tray that holds nothing are gone, so that equal sums are equal', () => {
    const shop = aWorkshop();
    const before = structuredClone(shop.shop.positions);
    const tray = shop.tray('ash-copper', 6);
    const pass = shop.pass(tray, 'bore', { pieces: 6 });
    shop.undo(pass);
    shop.undo(shop.log.filter((event) => event.kind === 'tray-made'));
    expect(shop.shop.positions).toEqual(before);
  });

  test('of more pieces than a double can add milliseconds of are still the same in any order', () => {
    const shop = aWorkshop({ now: mondayMorning + 1 });
    const tray = shop.tray('ash-copper', 1);
    for (const counted of [mostPieces, 3, mostPieces, 7, mostPieces]) {
      shop.recount(tray, 'bore', { counted });
      shop.later(17);
      shop.pass(tray, 'bore', { pieces: counted === mostPieces ? 4321 : 1 });
    }
    const { log } = shop;
    const anyOrder = fc.shuffledSubarray([...log], { minLength: log.length, maxLength: log.length });
    fc.assert(fc.property(anyOrder, (order) => expectSameShop(shopOf(order), shopOf(log))));
  });
});

describe('the mean arrival', () => {
  test('is in milliseconds, to the second', () => {
    const shop = aWorkshop();
    const came = shop.clock();
    const tray = shop.tray('ash-copper', 3);
    const [standing] = placesOf(shop.shop.positions, tray).values();
    expect(standing && meanArrival(standing)).toBe(came);
  });
});
