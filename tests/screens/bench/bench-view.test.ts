import { describe, expect, test } from 'vitest';
import type { TrayId } from '../../../src/domain/log/ids.ts';
import {
  benchView,
  outcomesFor,
  salvageChoices,
  sendBackStages,
  spotOf,
} from '../../../src/screens/bench/bench-view.ts';
import { stageTiles } from '../../../src/screens/bench/stage-tiles.ts';
import { aWorkshop, lowered, sayLeastTime, scrapped, type TestShop } from '../../support/a-shop.ts';
import { cureMinutes, part, reason, type StageName, stage } from '../../support/workshop.ts';

function viewOf(shop: TestShop, tray: TrayId, name: StageName, grade: 'first' | 'second' | null = null) {
  const view = benchView(shop.shop, { tray, stage: stage[name], grade, now: shop.clock() });
  if (!view) throw new Error('tray and stage are known');
  return view;
}

test('each stage of the batches in work says what waits, cures and is ready', () => {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 6);
  shop.pass(tray, 'bore', { pieces: 5 });
  shop.load(tray, 'glue', { pieces: 2 });
  shop.later(cureMinutes);
  shop.load(tray, 'glue', { pieces: 1 });
  const tiles = new Map(stageTiles(shop.shop, shop.clock()).map((tile) => [`${tile.stage}`, tile]));
  expect(tiles.get('bore')).toMatchObject({ waiting: 1, held: 0, ready: 0 });
  expect(tiles.get('glue')).toMatchObject({ waiting: 2, held: 3, ready: 2 });
  expect(tiles.has('wax')).toBe(false);
});

test('what may come out is what a tap takes first, as far as all of it has had its least time', () => {
  const shop = aWorkshop();
  sayLeastTime(shop, 240);
  const tray = shop.tray('ash-copper', 8);
  shop.pass(tray, 'bore', { pieces: 8 });
  shop.load(tray, 'glue', { pieces: 3 });
  const of = () => {
    const { mayComeOut, readyNow } = viewOf(shop, tray, 'glue');
    return { mayComeOut, readyNow };
  };
  expect(of()).toEqual({ mayComeOut: 0, readyNow: 0 });
  shop.later(100);
  shop.load(tray, 'glue', { pieces: 2 });
  shop.later(139);
  expect(of()).toEqual({ mayComeOut: 3, readyNow: 0 });
  shop.later(100);
  expect(of()).toEqual({ mayComeOut: 5, readyNow: 0 });
  // 721 min after the first load, and 620 after the second.
  shop.later(380);
  expect(of()).toEqual({ mayComeOut: 5, readyNow: 3 });
});

describe('which grade a tap counts', () => {
  function mixed() {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 3, 'autumn');
    shop.flaw(tray, 'turn', { why: 'catch', outcome: lowered });
    shop.pass(tray, 'turn');
    return { shop, tray };
  }

  test('is the first grade while firsts are there', () => {
    const { shop, tray } = mixed();
    expect(viewOf(shop, tray, 'sand').grade).toBe('first');
  });

  test('is the second grade by itself when only seconds are left', () => {
    const { shop, tray } = mixed();
    shop.pass(tray, 'sand');
    expect(viewOf(shop, tray, 'sand').grade).toBe('second');
  });

  test('is the one that was chosen while it has pieces', () => {
    const { shop, tray } = mixed();
    const view = viewOf(shop, tray, 'sand', 'second');
    expect(spotOf(view, 'waiting')).toEqual({
      tray,
      stage: stage.sand,
      at: 'waiting',
      grade: 'second',
      shown: 1,
    });
  });
});

test('the next tray is the one that waits longest, round the list, and there is none when this is the last', () => {
  const shop = aWorkshop();
  const first = shop.tray('ash-copper', 2);
  expect(viewOf(shop, first, 'bore').next).toBeNull();
  const second = shop.tray('ash-copper', 2);
  const third = shop.tray('plum-copper', 2);
  expect([first, second, third].map((tray) => viewOf(shop, tray, 'bore').next)).toEqual([
    second,
    third,
    first,
  ]);
});

test('a tray goes on to its next stage of the route once nothing of it is left, not before', () => {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 3);
  const from = (name: StageName) => viewOf(shop, tray, name).nextStage;
  shop.pass(tray, 'bore', { pieces: 2 });
  expect(from('bore')).toBeNull();
  shop.pass(tray, 'bore', { pieces: 1 });
  expect(from('bore')).toBe(stage.glue);
  shop.load(tray, 'glue', { pieces: 3 });
  expect(from('glue')).toBeNull();
  expect(from('bore')).toBe(stage.glue);
});

describe('what can become of a flawed piece', () => {
  test('a second is not lowered again, and the first stage has none to send back to', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 3);
    expect(outcomesFor(shop.shop, { view: viewOf(shop, tray, 'bore'), reason: reason.blown })).toEqual([
      'mended',
      'second',
      'scrapped',
    ]);
    shop.flaw(tray, 'bore', { why: 'catch', outcome: lowered, pieces: 3 });
    const view = viewOf(shop, tray, 'glue');
    expect(outcomesFor(shop.shop, { view, reason: reason.blown })).toEqual([
      'mended',
      'scrapped',
      'sent-back',
    ]);
  });

  test('what was done most often with this reason at this stage comes first', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 9);
    shop.flaw(tray, 'bore', { why: 'blown', outcome: scrapped(), pieces: 2 });
    shop.flaw(tray, 'bore', { why: 'blown', outcome: lowered });
    expect(outcomesFor(shop.shop, { view: viewOf(shop, tray, 'bore'), reason: reason.blown })[0]).toBe(
      'scrapped',
    );
    expect(outcomesFor(shop.shop, { view: viewOf(shop, tray, 'bore'), reason: reason.catch })[0]).toBe(
      'mended',
    );
  });

  test('it goes back to a stage of handwork before this one, the nearest first', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 1);
    expect(sendBackStages(shop.shop, viewOf(shop, tray, 'sand')).map(String)).toEqual(['turn', 'bore']);
  });

  test('a scrap can save what is in the piece by then: all, each part alone, or nothing', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 1);
    expect(salvageChoices(shop.shop, viewOf(shop, tray, 'bore'))).toEqual([[]]);
    const choices = salvageChoices(shop.shop, viewOf(shop, tray, 'turn'));
    expect(choices.at(0)).toEqual(expect.arrayContaining([part.core, part['ash-blank']]));
    expect(choices.at(-1)).toEqual([]);
    expect(choices).toHaveLength(4);
  });
});
