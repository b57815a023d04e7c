import { describe, expect, test } from 'vitest';
import { bulkLines } from '../../../src/domain/command/bulk-move.ts';
import { holdLimit, stagesOn } from '../../../src/domain/rollup/hold-limit.ts';
import type { HoldFact } from '../../../src/domain/set-up/facts.ts';
import { factOf } from '../../../src/domain/shop/registers.ts';
import { aWorkshop, type TestShop } from '../../support/a-shop.ts';
import { resource, stage } from '../../support/workshop.ts';

function glueOf({ shop }: TestShop): HoldFact {
  const fact = factOf(shop.registers, { register: 'stage', id: stage.glue });
  if (fact?.kind !== 'hold') throw new Error('gluing is a hold');
  return fact;
}

/** A shop whose stages Glue and Turn (a second glue-up) share so many cramps. */
function sharing(capacity: number | null) {
  const shop = aWorkshop();
  shop.set({
    register: 'resource',
    id: resource.cramps,
    value: { name: 'Cramps', capacity, retired: false },
  });
  const glue = { ...glueOf(shop), resource: resource.cramps };
  shop.set({ register: 'stage', id: stage.glue, value: glue });
  shop.set({ register: 'stage', id: stage.turn, value: { ...glue, name: 'Second glue' } });
  const tray = shop.tray('ash-copper', 40);
  shop.pass(tray, 'bore', { pieces: 40 });
  return { shop, tray };
}

describe('the limit of a hold', () => {
  test('is its own where it names no clamps that others share', () => {
    const shop = aWorkshop();
    expect(holdLimit(shop.shop, stage.glue)).toEqual({ resource: null, limit: 8, held: 0, free: 8 });
    expect(holdLimit(shop.shop, stage.bore)).toBeUndefined();
  });

  test('is that of the clamps, whatever the stage says of its own', () => {
    const { shop, tray } = sharing(24);
    shop.load(tray, 'glue', { pieces: 20 });
    const limit = { resource: resource.cramps, limit: 24, held: 20, free: 4 };
    expect(holdLimit(shop.shop, stage.glue)).toEqual(limit);
    expect(holdLimit(shop.shop, stage.turn)).toEqual(limit);
    expect([...stagesOn(shop.shop.registers, resource.cramps)].sort()).toEqual(['glue', 'turn']);
  });

  test('is none where the clamps have none', () => {
    const { shop, tray } = sharing(null);
    shop.load(tray, 'glue', { pieces: 40 });
    expect(holdLimit(shop.shop, stage.glue)).toMatchObject({ limit: null, held: 40, free: Infinity });
  });

  test('falls back on the places of the stage while the shop has no word on the clamps', () => {
    const shop = aWorkshop();
    shop.set({ register: 'stage', id: stage.glue, value: { ...glueOf(shop), resource: resource.rack } });
    expect(holdLimit(shop.shop, stage.glue)).toEqual({ resource: null, limit: 8, held: 0, free: 8 });
  });
});

describe('shared clamps', () => {
  test('are refused to one stage while another has them, with what is free', () => {
    const { shop, tray } = sharing(24);
    shop.load(tray, 'glue', { pieces: 20 });
    const free = { kind: 'hold-is-full', resource: resource.cramps, free: 4 };
    expect(shop.refusal({ kind: 'load', spot: shop.spot(tray, 'glue'), pieces: 5 })).toEqual(free);
    shop.pass(tray, 'glue', { pieces: 8, held: true });
    shop.load(tray, 'turn', { pieces: 8 });
    expect(shop.refusal({ kind: 'load', spot: shop.spot(tray, 'glue'), pieces: 5 })).toEqual(free);
    shop.load(tray, 'glue', { pieces: 4 });
    expect(holdLimit(shop.shop, stage.turn)).toMatchObject({ held: 24, free: 0 });
  });

  test('that an earlier scanned tray would take are not there for a later one, at whatever stage', () => {
    const { shop, tray } = sharing(24);
    const other = shop.tray('plum-copper', 10);
    shop.pass(other, 'bore', { pieces: 10 });
    shop.load(other, 'glue', { pieces: 10 });
    shop.later(24 * 60);
    shop.pass(other, 'glue', { pieces: 10, held: true });
    const small = shop.tray('ash-copper', 15);
    shop.pass(small, 'bore', { pieces: 15 });
    const lines = bulkLines(shop.shop, {
      ...{ move: 'into-clamps', trays: [other, small, tray], early: new Set(), now: shop.clock() },
    });
    expect(lines.map((line) => (line.kind === 'would' ? line.kind : line.why))).toEqual([
      'would',
      { kind: 'hold-is-full', resource: resource.cramps, free: 14 },
      { kind: 'hold-is-full', resource: resource.cramps, free: 14 },
    ]);
  });
});
