import { describe, expect, test } from 'vitest';
import { countsToCheck, stagesOfTray } from '../../../src/domain/rollup/waiting.ts';
import { shopOf } from '../../../src/domain/shop/shop.ts';
import { trayFacts } from '../../../src/domain/shop/trays.ts';
import { aWorkshop, meet, tablets } from '../../support/a-shop.ts';

describe('a tray', () => {
  test('is known from its making on, with what it is and when it was made', () => {
    const shop = aWorkshop();
    const now = shop.clock();
    const tray = shop.tray('plum-copper', 3);
    expect(shop.shop.trays.get(tray)).toMatchObject({
      tray,
      code: 'A1X',
      variant: 'plum-copper',
      species: 'plum',
      batch: 'spring',
      made: now,
    });
  });

  test('that was split off is as old as the split', () => {
    const shop = aWorkshop();
    const tray = shop.tray('plum-copper', 3);
    const now = shop.clock();
    const other = shop.split(tray, 'bore');
    expect(shop.shop.trays.get(other)?.made).toBe(now);
  });

  test('is no younger for what is done with it', () => {
    const shop = aWorkshop();
    const [tray, other] = [shop.tray('plum-copper', 3), shop.tray('plum-copper', 3)] as const;
    const made = [tray, other].map((id) => shop.shop.trays.get(id)?.made);
    shop.later(60);
    shop.pass(tray, 'bore');
    shop.split(tray, 'bore');
    shop.join(tray, other);
    expect([tray, other].map((id) => shop.shop.trays.get(id)?.made)).toEqual(made);
  });

  test('that is empty or all finished is still known', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 1, 'autumn');
    shop.pass(tray, 'turn');
    shop.pass(tray, 'sand');
    expect(shop.shop.trays.has(tray)).toBe(true);
  });

  test('of which all is taken back is known no more', () => {
    const shop = aWorkshop();
    const before = structuredClone(shop.shop.trays);
    const tray = shop.tray('ash-copper', 2);
    const made = shop.log.slice(-1);
    shop.undo(shop.pass(tray, 'bore'));
    shop.undo(made);
    expect(shop.shop.trays).toEqual(before);
  });

  test('is written into events as it was made, without what the shop has counted of it', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 2);
    const record = shop.shop.trays.get(tray);
    const [made] = shop.log.slice(-1);
    expect(record && trayFacts(record)).toEqual(made && 'of' in made && made.of);
  });
});

describe('a tray whose making one tablet takes back while another works on it', () => {
  function takenBackUnderWork() {
    const [bench, office] = tablets('A', 'C');
    if (!bench || !office) throw new Error('two tablets');
    const tray = bench.tray('ash-copper', 5);
    const made = bench.log.slice(-1);
    meet(bench, office);
    office.pass(tray, 'bore', { pieces: 4 });
    bench.undo(made);
    meet(bench, office);
    return { bench, office, tray };
  }

  test('is still shown, and its count below zero asks for a recount', () => {
    const { bench, office, tray } = takenBackUnderWork();
    for (const { shop } of [bench, office]) {
      expect(stagesOfTray(shop, tray).map(({ stage, waiting }) => [stage, waiting.first])).toEqual(
        expect.arrayContaining([
          ['bore', -4],
          ['glue', 4],
        ]),
      );
      expect(countsToCheck(shop)).toMatchObject([{ tray: { tray, code: 'A1X' }, stage: 'bore', pieces: -4 }]);
    }
  });

  test('can be counted again, and worked on', () => {
    const { bench, tray } = takenBackUnderWork();
    bench.recount(tray, 'bore', { counted: 1, why: 'two-tablets' });
    bench.pass(tray, 'bore');
    expect(stagesOfTray(bench.shop, tray)).toMatchObject([{ stage: 'glue', waiting: { first: 5 } }]);
    expect(countsToCheck(bench.shop)).toEqual([]);
  });

  test('is the same tray in whatever order the events come', () => {
    const { bench } = takenBackUnderWork();
    expect(shopOf(bench.log.toReversed()).trays).toEqual(bench.shop.trays);
  });
});
