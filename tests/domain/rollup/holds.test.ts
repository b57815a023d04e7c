import { describe, expect, test } from 'vitest';
import { curesOver, heldAt, holds } from '../../../src/domain/rollup/holds.ts';
import { aWorkshop, lowered } from '../../support/a-shop.ts';
import { cureMinutes, stage } from '../../support/workshop.ts';

const minute = 60_000;

describe('what cures', () => {
  test('is ready when the cure time of its stage has passed since it was clamped', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 3);
    shop.pass(tray, 'bore', { pieces: 3 });
    const clamped = shop.clock();
    shop.load(tray, 'glue', { pieces: 3 });
    expect(holds(shop.shop)).toMatchObject([
      { tray: { tray }, stage: 'glue', grade: 'first', pieces: 3, ready: clamped + cureMinutes * minute },
    ]);
  });

  test('stands with the soonest ready first, each loading by itself', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 5);
    shop.pass(tray, 'bore', { pieces: 4 });
    shop.flaw(tray, 'bore', { why: 'tear-out', outcome: lowered });
    const other = shop.tray('plum-copper', 2);
    shop.pass(other, 'bore', { pieces: 2 });
    shop.load(other, 'glue', { pieces: 2 });
    shop.load(tray, 'glue', { pieces: 1 });
    shop.load(tray, 'glue', { pieces: 3 });
    shop.load(tray, 'glue', { grade: 'second' });
    expect(holds(shop.shop).map((hold) => [hold.tray.tray, hold.grade, hold.pieces])).toEqual([
      [other, 'first', 2],
      [tray, 'first', 1],
      [tray, 'first', 3],
      [tray, 'second', 1],
    ]);
  });

  test('fills clamps across trays and grades, at its own stage only', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 5);
    shop.pass(tray, 'bore', { pieces: 5 });
    shop.load(tray, 'glue', { pieces: 4 });
    const other = shop.tray('plum-copper', 2);
    shop.flaw(other, 'bore', { why: 'tear-out', outcome: lowered, pieces: 2 });
    shop.load(other, 'glue', { grade: 'second', pieces: 2 });
    expect(heldAt(shop.shop.ledger, stage.glue)).toBe(6);
    expect(heldAt(shop.shop.ledger, stage.bore)).toBe(0);
  });

  test('leaves the clamps when it is passed on or scrapped', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 3);
    shop.pass(tray, 'bore', { pieces: 3 });
    shop.load(tray, 'glue', { pieces: 3 });
    shop.pass(tray, 'glue', { held: true, pieces: 2 });
    expect(heldAt(shop.shop.ledger, stage.glue)).toBe(1);
    shop.flaw(tray, 'glue', { why: 'gap', outcome: { kind: 'scrapped', saved: [] }, held: true });
    expect(heldAt(shop.shop.ledger, stage.glue)).toBe(0);
    expect(holds(shop.shop)).toEqual([]);
  });
});

describe('a cure is over', () => {
  const inClamps = (...rounds: readonly number[]) => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 8);
    shop.pass(tray, 'bore', { pieces: 8 });
    const begun = shop.clock();
    for (const minutes of rounds) {
      // Each act takes a minute of its own.
      shop.later(minutes - (shop.clock() - begun) / minute);
      shop.load(tray, 'glue');
    }
    return { shop, over: (from: number, to: number) => overOf(shop, begun + cureMinutes * minute, from, to) };
  };
  const overOf = ({ shop }: ReturnType<typeof aWorkshop>, ready: number, from: number, to: number) =>
    curesOver(shop, { after: ready + from * minute, until: ready + to * minute }).map((cure) => [
      (cure.ready - ready) / minute,
      cure.pieces,
    ]);

  test('once, in the stretch of time in which its last piece is ready', () => {
    const { over } = inClamps(0);
    expect(over(-10, -1)).toEqual([]);
    expect(over(-1, 0)).toEqual([[0, 1]]);
    expect(over(0, 1)).toEqual([]);
  });

  test('for pieces that were loaded one by one when the last of them is ready', () => {
    const { over } = inClamps(0, 4, 9, 20);
    expect(over(-10, 19)).toEqual([]);
    expect(over(-10, 20)).toEqual([[20, 4]]);
  });

  test('for each round by itself where more than a quarter of an hour lies between', () => {
    const { over } = inClamps(0, 5, 21);
    expect(over(-10, 60)).toEqual([
      [5, 2],
      [21, 1],
    ]);
    expect(over(5, 60)).toEqual([[21, 1]]);
  });

  test('not for what was taken out before', () => {
    const { shop, over } = inClamps(0);
    const [tray] = shop.shop.trays.keys();
    if (tray) shop.pass(tray, 'glue', { held: true });
    expect(over(-10, 10)).toEqual([]);
  });
});
