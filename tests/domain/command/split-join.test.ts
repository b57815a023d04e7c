import { describe, expect, test } from 'vitest';
import type { TrayId } from '../../../src/domain/log/ids.ts';
import { mostPieces } from '../../../src/domain/log/place.ts';
import { placesOf } from '../../../src/domain/shop/positions.ts';
import { aWorkshop, backTo, lowered, type TestShop } from '../../support/a-shop.ts';
import { badCounts } from './bad-counts.ts';

const standing = (shop: TestShop, tray: TrayId) =>
  [...placesOf(shop.shop.positions, tray).values()]
    .filter(({ pieces }) => pieces !== 0)
    .map(({ place, pieces }) => ({ ...place, pieces }));

/** A tray of nine with pieces waiting, curing, lowered, sent back, scrapped and none finished. */
function aMixedTray() {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 9);
  shop.pass(tray, 'bore', { pieces: 7 });
  shop.flaw(tray, 'bore', { why: 'tear-out', outcome: lowered });
  shop.load(tray, 'glue', { pieces: 3 });
  shop.pass(tray, 'glue', { pieces: 3 });
  shop.flaw(tray, 'turn', { why: 'gap', outcome: backTo('glue') });
  shop.flaw(tray, 'turn', { why: 'blown', outcome: { kind: 'scrapped', saved: [] } });
  return { shop, tray };
}

describe('a split', () => {
  test('takes the pieces to a new tray of the same kind, at the same place', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 5);
    shop.pass(tray, 'bore', { pieces: 5 });
    const other = shop.split(tray, 'glue', { pieces: 2 });
    expect([standing(shop, tray), standing(shop, other)]).toMatchObject([
      [{ stage: 'glue', pieces: 3 }],
      [{ stage: 'glue', pieces: 2 }],
    ]);
    expect(shop.shop.trays.get(other)).toMatchObject({
      variant: 'ash-copper',
      species: 'ash',
      batch: 'spring',
    });
    expect(shop.shop.trays.get(other)?.code).not.toBe(shop.shop.trays.get(tray)?.code);
  });

  test('makes no piece and corrects none', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 5);
    shop.split(tray, 'bore', { pieces: 2 });
    expect(Object.fromEntries(shop.shop.ledger.made)).toEqual({ 'ash|ash-copper': 5 });
    expect(shop.shop.ledger.corrected.size).toBe(0);
    expect(Object.fromEntries(shop.shop.ledger.wip)).toEqual({ 'bore|ash|first|waiting': 5 });
  });

  test('of a piece that was sent back keeps in mind that it comes again', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 1);
    shop.pass(tray, 'bore');
    shop.flaw(tray, 'glue', { why: 'gap', outcome: backTo('bore') });
    const other = shop.split(tray, 'bore');
    expect(standing(shop, other)).toMatchObject([{ stage: 'bore', redo: 'glue', pieces: 1 }]);
  });

  test('of pieces that cure keeps the time at which they are ready', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 4);
    shop.pass(tray, 'bore', { pieces: 4 });
    shop.load(tray, 'glue', { pieces: 4 });
    const [whole] = standing(shop, tray);
    const other = shop.split(tray, 'glue', { held: true, pieces: 3 });
    expect(standing(shop, other)).toEqual([{ ...whole, pieces: 3 }]);
  });

  test('may take all: the old tray is left empty', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 4);
    const other = shop.split(tray, 'bore', { pieces: 4 });
    expect([standing(shop, tray), standing(shop, other)]).toMatchObject([[], [{ pieces: 4 }]]);
  });

  test('is refused where nothing is, for more than is there, without a letter, and of a tray that is gone', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 4);
    const split = (name: 'bore' | 'glue', pieces: number) =>
      shop.refusal({ kind: 'split', spot: shop.spot(tray, name, { shown: 9 }), pieces });
    expect(split('glue', 1)).toEqual({ kind: 'nothing-there' });
    expect(split('bore', 5)).toEqual({ kind: 'number', problem: { kind: 'too-large', most: 4 } });

    const bare = aWorkshop({ station: 'office', letter: null });
    bare.receive(shop.log);
    expect(bare.refusal({ kind: 'split', spot: bare.spot(tray, 'bore'), pieces: 1 })).toEqual({
      kind: 'no-letter',
    });

    shop.undo(shop.log.slice(-1));
    expect(split('bore', 1)).toEqual({ kind: 'no-such-tray' });
  });

  test.each(badCounts)('is refused for $pieces pieces', ({ pieces, problem }) => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 4);
    const most = problem.kind === 'too-large' ? { most: 4 } : {};
    expect(shop.refusal({ kind: 'split', spot: shop.spot(tray, 'bore'), pieces })).toEqual({
      kind: 'number',
      problem: { ...problem, ...most },
    });
  });
});

describe('a join', () => {
  test('brings everything over, place by place, and leaves the other tray empty', () => {
    const { shop, tray } = aMixedTray();
    const whole = standing(shop, tray);
    const into = shop.tray('ash-copper', 1);
    shop.join(tray, into);
    expect(standing(shop, tray)).toEqual([]);
    const [bore, ...others] = standing(shop, into);
    expect(bore).toMatchObject({ stage: 'bore', pieces: 2 });
    expect(others).toEqual(whole.filter((each) => !('stage' in each && each.stage === 'bore')));
  });

  test('after a split of any part gives the tray back as it was', () => {
    const { shop, tray } = aMixedTray();
    const before = standing(shop, tray);
    const other = shop.split(tray, 'glue', { held: true, pieces: 2 });
    shop.join(other, tray);
    expect(standing(shop, tray)).toHaveLength(before.length);
    expect(standing(shop, tray)).toEqual(expect.arrayContaining(before));
  });

  test('takes a count below zero along as it is: it is still to be recounted', () => {
    const shop = aWorkshop();
    const [tray, into] = [shop.tray('ash-copper', 2), shop.tray('ash-copper', 5)] as const;
    shop.pass(tray, 'bore', { pieces: 3, shown: 3 });
    shop.join(tray, into);
    expect(standing(shop, tray)).toEqual([]);
    expect(standing(shop, into)).toMatchObject([
      { stage: 'bore', pieces: 4 },
      { stage: 'glue', pieces: 3 },
    ]);
    expect(shop.shop.ledger.corrected.size).toBe(0);
  });

  test('of trays that hold more together than one act may name is kept, and can be recounted', () => {
    const shop = aWorkshop();
    const trays = [
      shop.tray('ash-copper', 1),
      shop.tray('ash-copper', 1),
      shop.tray('ash-copper', 1),
    ] as const;
    for (const tray of trays) shop.recount(tray, 'bore', { counted: mostPieces });
    shop.join(trays[0], trays[1]);
    shop.join(trays[1], trays[2]);
    expect(standing(shop, trays[2])).toMatchObject([{ pieces: 3 * mostPieces }]);
    shop.recount(trays[2], 'bore', { counted: 3 });
    expect(standing(shop, trays[2])).toMatchObject([{ pieces: 3 }]);
  });

  test('is refused with itself, with a tray that is gone, and of an empty tray', () => {
    const shop = aWorkshop();
    const [tray, into] = [shop.tray('ash-copper', 2), shop.tray('ash-copper', 2)] as const;
    const join = (from: TrayId, to: TrayId) => shop.refusal({ kind: 'join', tray: from, into: to });
    expect(join(tray, tray)).toEqual({ kind: 'same-tray' });
    shop.join(tray, into);
    expect(join(tray, into)).toEqual({ kind: 'nothing-there' });
    shop.undo(shop.log.slice(-1));
    shop.undo(shop.log.filter((event) => event.kind === 'tray-made' && event.of.tray === into));
    expect(join(tray, into)).toEqual({ kind: 'no-such-tray' });
    expect(join(into, tray)).toEqual({ kind: 'no-such-tray' });
  });

  test('is refused for another variant or another batch, and names both trays', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 2);
    for (const other of [shop.tray('ash-nickel', 2), shop.tray('ash-copper', 2, 'autumn')]) {
      expect(shop.refusal({ kind: 'join', tray, into: other })).toMatchObject({
        kind: 'trays-differ',
        a: { tray },
        b: { tray: other },
      });
    }
  });
});
