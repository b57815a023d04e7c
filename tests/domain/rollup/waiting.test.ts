import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { trayId } from '../../../src/domain/log/ids.ts';
import { countsToCheck, stagesOfTray, traysAtStage } from '../../../src/domain/rollup/waiting.ts';
import { aWorkshop, backTo, lowered, meet, tablets } from '../../support/a-shop.ts';
import { stage } from '../../support/workshop.ts';

const minute = 60_000;

describe('what a tray has at its stages', () => {
  test('waiting and held, firsts and seconds apart', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 9);
    shop.pass(tray, 'bore', { pieces: 5 });
    shop.flaw(tray, 'bore', { why: 'tear-out', outcome: lowered, pieces: 2 });
    shop.load(tray, 'glue', { pieces: 3 });
    shop.load(tray, 'glue', { grade: 'second' });
    const rows = stagesOfTray(shop.shop, tray).map((at) => [at.stage, at.waiting, at.held]);
    expect(rows).toEqual([
      ['bore', { first: 2, second: 0 }, { first: 0, second: 0 }],
      ['glue', { first: 2, second: 1 }, { first: 3, second: 1 }],
    ]);
  });

  test('a piece that came again counts with those that came for the first time', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 3);
    shop.pass(tray, 'bore', { pieces: 2 });
    shop.flaw(tray, 'glue', { why: 'gap', outcome: backTo('bore') });
    expect(stagesOfTray(shop.shop, tray)[0]).toMatchObject({
      stage: 'bore',
      waiting: { first: 2, second: 0 },
    });
  });

  test('of an unknown tray, or of one that is all finished, is nothing', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 1, 'autumn');
    shop.pass(tray, 'turn');
    shop.pass(tray, 'sand');
    expect(stagesOfTray(shop.shop, tray)).toEqual([]);
    expect(stagesOfTray(shop.shop, v.parse(trayId, 'no-such-tray'))).toEqual([]);
  });
});

describe('the age of what waits', () => {
  test('is the mean of the times at which the pieces came', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 4);
    const came = shop.clock();
    shop.pass(tray, 'bore', { pieces: 3 });
    shop.later(99);
    shop.pass(tray, 'bore', { pieces: 1 });
    // Three came at once, one 100 minutes later: on average 25 minutes later.
    expect(stagesOfTray(shop.shop, tray)[0]).toMatchObject({ stage: 'glue', since: came + 25 * minute });
  });

  test('stays when some of the pieces leave', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 4);
    const since = () => stagesOfTray(shop.shop, tray).find((at) => at.stage === stage.bore)?.since;
    const before = since();
    shop.later(500);
    shop.pass(tray, 'bore', { pieces: 3 });
    expect(since()).toBe(before);
  });

  test('goes along to the tray that pieces are split off to, and back when they are joined', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 4);
    const since = (id: typeof tray) => stagesOfTray(shop.shop, id)[0]?.since;
    const before = since(tray);
    shop.later(500);
    const other = shop.split(tray, 'bore', { pieces: 2 });
    expect([since(tray), since(other)]).toEqual([before, before]);
    shop.later(500);
    shop.join(other, tray);
    expect([since(tray), since(other)]).toEqual([before, undefined]);
  });

  test('is that of the pieces that are there, whatever count below zero stands beside them', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 2);
    shop.pass(tray, 'bore', { pieces: 2 });
    shop.pass(tray, 'bore', { pieces: 1, shown: 1 });
    shop.later(60);
    const came = shop.clock();
    shop.flaw(tray, 'glue', { why: 'gap', outcome: backTo('bore'), pieces: 2 });
    expect(stagesOfTray(shop.shop, tray)).toContainEqual(
      expect.objectContaining({ stage: 'bore', waiting: { first: 1, second: 0 }, since: came }),
    );
  });

  test('comes back as it was when a pass is taken back hours later', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 4);
    const before = stagesOfTray(shop.shop, tray);
    shop.later(60);
    const pass = shop.pass(tray, 'bore', { pieces: 4 });
    shop.later(300);
    shop.undo(pass);
    expect(stagesOfTray(shop.shop, tray)).toEqual(before);
  });
});

describe('the trays at a stage', () => {
  test('stand with the one that has waited longest first', () => {
    const shop = aWorkshop();
    const [a, b, c] = [
      shop.tray('ash-copper', 2),
      shop.tray('plum-copper', 2),
      shop.tray('ash-nickel', 2),
    ] as const;
    for (const tray of [b, c, a]) shop.pass(tray, 'bore', { pieces: 2 });
    const order = () => traysAtStage(shop.shop, stage.glue).map((at) => at.tray.tray);
    expect(order()).toEqual([b, c, a]);
    // Two newer pieces make the tray of the longest wait younger on average.
    shop.recount(b, 'glue', { counted: 6, why: 'found' });
    expect(order()).toEqual([c, a, b]);
  });

  test('that wait equally long stand in the order in which they were made up', () => {
    const shop = aWorkshop();
    const a = shop.tray('ash-copper', 2);
    const makeUp = shop.log.slice(-1);
    const b = shop.tray('plum-copper', 2);
    shop.undo(shop.undo(makeUp));
    shop.pass(b, 'bore', { pieces: 2 });
    shop.later(-1);
    shop.pass(a, 'bore', { pieces: 2 });
    const rows = traysAtStage(shop.shop, stage.glue);
    expect(rows[0]?.since).toBe(rows[1]?.since);
    expect(rows.map((at) => at.tray.tray)).toEqual([a, b]);
  });

  test('show a tray whose count is below zero last, with the count as it is', () => {
    const shop = aWorkshop();
    const empty = shop.tray('ash-copper', 2);
    const full = shop.tray('plum-copper', 2);
    shop.pass(empty, 'bore', { pieces: 3, shown: 3 });
    const rows = traysAtStage(shop.shop, stage.bore).map((at) => [at.tray.tray, at.waiting.first, at.since]);
    expect(rows).toEqual([
      [full, 2, expect.any(Number)],
      [empty, -1, null],
    ]);
  });
});

describe('a count below zero', () => {
  test('asks for a recount at the very spot, and no other does', () => {
    const [bench, office] = tablets('A', 'C');
    if (!bench || !office) throw new Error('two tablets');
    const tray = bench.tray('ash-copper', 1);
    meet(bench, office);
    bench.pass(tray, 'bore');
    office.pass(tray, 'bore');
    expect(countsToCheck(bench.shop)).toEqual([]);
    meet(bench, office);
    for (const { shop } of [bench, office]) {
      expect(countsToCheck(shop).map(({ tray: of, stage: at, pieces }) => [of.tray, at, pieces])).toEqual([
        [tray, 'bore', -1],
      ]);
    }
  });

  test('is settled by a recount', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 1);
    shop.pass(tray, 'bore', { pieces: 3, shown: 3 });
    shop.recount(tray, 'bore', { counted: 0, why: 'two-tablets' });
    expect(countsToCheck(shop.shop)).toEqual([]);
  });
});
