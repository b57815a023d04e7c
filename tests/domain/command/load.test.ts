import { describe, expect, test } from 'vitest';
import type { TrayId } from '../../../src/domain/log/ids.ts';
import { heldAt, holds } from '../../../src/domain/rollup/holds.ts';
import type { HoldFact, ShopFact, StageFact } from '../../../src/domain/set-up/facts.ts';
import { placesOf } from '../../../src/domain/shop/positions.ts';
import { factOf } from '../../../src/domain/shop/registers.ts';
import { aWorkshop, backTo, meet, type TestShop, tablets } from '../../support/a-shop.ts';
import { clamps, cureMinutes, type StageName, stage } from '../../support/workshop.ts';
import { badCounts } from './bad-counts.ts';

/** A shop with pieces that wait to be glued, and eight clamps. */
function toGlue(pieces: number) {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', pieces);
  shop.pass(tray, 'bore', { pieces });
  return { shop, tray };
}

const refusal = (
  shop: TestShop,
  { tray, pieces, name = 'glue' }: { tray: TrayId; pieces: number; name?: StageName },
) => shop.refusal({ kind: 'load', spot: shop.spot(tray, name), pieces });

function setClamps(shop: TestShop, capacity: number | null): void {
  const fact = factOf(shop.shop.registers, { register: 'stage', id: stage.glue }) as StageFact;
  if (fact.kind !== 'hold') throw new Error('gluing is a hold');
  shop.set({ register: 'stage', id: stage.glue, value: { ...fact, capacity } });
}

describe('loading a hold', () => {
  test('keeps what the pieces are, and adds when they will be ready', () => {
    const { shop, tray } = toGlue(2);
    shop.pass(tray, 'glue');
    shop.flaw(tray, 'turn', { why: 'gap', outcome: backTo('glue') });
    const now = shop.clock();
    shop.load(tray, 'glue', { pieces: 2 });
    const places = [...placesOf(shop.shop.positions, tray).values()].map(({ place, pieces }) => ({
      place,
      pieces,
    }));
    const held = { at: 'held', stage: 'glue', grade: 'first', ready: now + cureMinutes * 60_000 };
    expect(places).toEqual([
      { place: { ...held, redo: null }, pieces: 1 },
      { place: { ...held, redo: 'turn' }, pieces: 1 },
    ]);
  });

  test('can fill every clamp, and not one more', () => {
    const { shop, tray } = toGlue(clamps + 1);
    shop.load(tray, 'glue', { pieces: clamps });
    expect(heldAt(shop.shop.ledger, stage.glue)).toBe(clamps);
    expect(refusal(shop, { tray, pieces: 1 })).toEqual({ kind: 'hold-is-full', free: 0 });
  });

  test('is refused beyond the clamps that are free, and says how many are', () => {
    const { shop, tray } = toGlue(12);
    shop.load(tray, 'glue', { pieces: 5 });
    expect(refusal(shop, { tray, pieces: 4 })).toEqual({ kind: 'hold-is-full', free: 3 });
    shop.pass(tray, 'glue', { held: true, pieces: 2 });
    shop.load(tray, 'glue', { pieces: 5 });
  });

  test('has no limit where none is set', () => {
    const { shop, tray } = toGlue(500);
    setClamps(shop, null);
    shop.load(tray, 'glue', { pieces: 500 });
    expect(heldAt(shop.shop.ledger, stage.glue)).toBe(500);
  });

  test('with clamps taken away meanwhile, or loaded by two tablets at once, none are free', () => {
    const { shop, tray } = toGlue(12);
    shop.load(tray, 'glue', { pieces: 6 });
    setClamps(shop, 4);
    expect(refusal(shop, { tray, pieces: 1 })).toEqual({ kind: 'hold-is-full', free: 0 });

    const [bench, office] = tablets('A', 'C');
    if (!bench || !office) throw new Error('two tablets');
    const shared = bench.tray('ash-copper', 16);
    bench.pass(shared, 'bore', { pieces: 16 });
    meet(bench, office);
    bench.load(shared, 'glue', { pieces: 8 });
    office.load(shared, 'glue', { pieces: 7 });
    meet(bench, office);
    expect(heldAt(bench.shop.ledger, stage.glue)).toBe(15);
    expect(holds(bench.shop)).toEqual(holds(office.shop));
  });

  test('keeps the moments reckoned for the warmth of the shop, whatever is said later', () => {
    const { shop, tray } = toGlue(2);
    const fact = factOf(shop.shop.registers, { register: 'stage', id: stage.glue }) as HoldFact;
    const whole = factOf(shop.shop.registers, { register: 'shop', id: 'shop' }) as ShopFact;
    const sheet = { ...fact, leastMinutes: 240, ratedAt: 200 };
    shop.set({ register: 'stage', id: stage.glue, value: sheet });
    shop.set({ register: 'shop', id: 'shop', value: { ...whole, celsius: 100 } });
    const now = shop.clock();
    shop.load(tray, 'glue', { pieces: 2 });
    // Twice as long for 10 °C less: 24 h instead of 12, and 8 instead of 4.
    const place = { at: 'held', ready: now + 24 * 60 * 60_000, spare: 16 * 60 };
    expect(shop.log.at(-1)).toMatchObject({ celsius: 100, moves: [{ to: place, pieces: 2 }] });
    shop.set({ register: 'shop', id: 'shop', value: { ...whole, celsius: 300 } });
    shop.set({ register: 'stage', id: stage.glue, value: { ...sheet, cureMinutes: 30, leastMinutes: 30 } });
    expect(holds(shop.shop)).toMatchObject([{ ready: place.ready, spare: place.spare, pieces: 2 }]);
  });

  test('carries the time since the tap before', () => {
    const { shop, tray } = toGlue(1);
    shop.pace(25_000);
    shop.load(tray, 'glue');
    expect(shop.log.at(-1)).toMatchObject({ kind: 'hold-begun', stage: 'glue', elapsed: 25_000 });
  });
});

describe('loading is refused', () => {
  test('at a stage where nothing cures', () => {
    const { shop, tray } = toGlue(1);
    expect(refusal(shop, { tray, pieces: 1, name: 'turn' })).toEqual({ kind: 'no-such-stage' });
  });

  test('where nothing waits', () => {
    const shop = aWorkshop();
    expect(refusal(shop, { tray: shop.tray('ash-copper', 1), pieces: 1 })).toEqual({ kind: 'nothing-there' });
  });

  test('for more pieces than wait', () => {
    const { shop, tray } = toGlue(2);
    expect(refusal(shop, { tray, pieces: 3 })).toEqual({ kind: 'too-many', there: 2 });
  });

  test('for a batch whose route has no such hold', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 2, 'autumn');
    expect(refusal(shop, { tray, pieces: 1 })).toEqual({ kind: 'stage-off-route', stage: 'glue' });
  });

  test.each(badCounts)('for $pieces pieces, however many clamps there are', ({ pieces, problem }) => {
    const { shop, tray } = toGlue(2);
    setClamps(shop, null);
    expect(refusal(shop, { tray, pieces })).toEqual({ kind: 'number', problem });
  });
});
