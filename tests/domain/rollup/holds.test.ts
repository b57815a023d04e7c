import { describe, expect, test } from 'vitest';
import { heldAt, holds } from '../../../src/domain/rollup/holds.ts';
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
