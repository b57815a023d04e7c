import { describe, expect, test } from 'vitest';
import { piecesAt } from '../../../src/domain/command/draw.ts';
import type { TrayId } from '../../../src/domain/log/ids.ts';
import { countsToCheck } from '../../../src/domain/rollup/waiting.ts';
import { factOf } from '../../../src/domain/shop/registers.ts';
import { eventWords } from '../../../src/words/event-words.ts';
import { aShop, aWorkshop, backTo, lowered, sayLeastTime, type TestShop } from '../../support/a-shop.ts';
import { route, routeStages, type StageName, stage } from '../../support/workshop.ts';
import { badCounts } from './bad-counts.ts';

const waitingAt = (shop: TestShop, { tray, name }: { tray: TrayId; name: StageName }) =>
  piecesAt(shop.shop.positions, { tray, stage: stage[name], at: 'waiting', grade: 'first' });

const passedOf = (shop: TestShop) => {
  const last = shop.log.at(-1);
  if (last?.kind !== 'passed') throw new Error('the last event is no pass');
  return last;
};

describe('a piece that leaves a stage good', () => {
  test('waits at the next stage of its route, and after the last one is finished', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 1);
    for (const [index, name] of routeStages.entries()) {
      expect(waitingAt(shop, { tray, name })).toBe(1);
      shop.pass(tray, name);
      expect(waitingAt(shop, { tray, name })).toBe(0);
      expect(shop.shop.ledger.finished.size).toBe(index === routeStages.length - 1 ? 1 : 0);
    }
    expect(Object.fromEntries(shop.shop.ledger.finished)).toEqual({ 'ash|ash-copper|first': 1 });
  });

  test('follows the route of its own batch', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 2, 'autumn');
    shop.pass(tray, 'turn', { pieces: 2 });
    expect(waitingAt(shop, { tray, name: 'sand' })).toBe(2);
    shop.pass(tray, 'sand');
    expect(Object.fromEntries(shop.shop.ledger.finished)).toEqual({ 'ash|ash-copper|first': 1 });
  });

  test('keeps its grade: a second goes through the rest of the route', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 1);
    shop.flaw(tray, 'bore', { why: 'tear-out', outcome: lowered });
    for (const name of routeStages.slice(1)) shop.pass(tray, name, { grade: 'second' });
    expect(Object.fromEntries(shop.shop.ledger.finished)).toEqual({ 'ash|ash-copper|second': 1 });
  });

  test('carries who passed it, on which day, and how long after the tap before', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 1);
    shop.by('edda');
    shop.pace(42_000);
    shop.pass(tray, 'bore');
    expect(passedOf(shop)).toMatchObject({
      person: 'edda',
      day: '2026-03-02',
      elapsed: 42_000,
      zone: { name: 'Europe/London', offset: 0 },
      of: { tray, variant: 'ash-copper', species: 'ash', batch: 'spring' },
    });
  });

  test('says by how many minutes it came out of a hold before its least time, and nothing from then on', () => {
    const shop = aWorkshop();
    sayLeastTime(shop, 240);
    const tray = shop.tray('ash-copper', 4);
    shop.pass(tray, 'bore', { pieces: 4 });
    const loaded = shop.clock();
    const goTo = (minutes: number) => shop.later(minutes + (loaded - shop.clock()) / 60_000);
    shop.load(tray, 'glue', { pieces: 3 });
    goTo(238.9);
    shop.pass(tray, 'glue', { held: true });
    expect(passedOf(shop).early).toBe(2);
    expect(eventWords(passedOf(shop), shop.shop.registers)).toBe('1 piece passed Glue, 2 min early');
    goTo(240);
    shop.pass(tray, 'glue', { held: true, pieces: 2 });
    expect(passedOf(shop)).not.toHaveProperty('early');
    // What never went into the clamps cannot come out of them.
    shop.pass(tray, 'glue');
    expect(passedOf(shop)).not.toHaveProperty('early');
  });

  test('without a least time is early until it is ready, by the piece that has cured least', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 2);
    shop.pass(tray, 'bore', { pieces: 2 });
    const loaded = shop.clock();
    const goTo = (minutes: number) => shop.later(minutes + (loaded - shop.clock()) / 60_000);
    shop.load(tray, 'glue');
    goTo(90);
    shop.load(tray, 'glue');
    goTo(700);
    shop.pass(tray, 'glue', { held: true, pieces: 2 });
    expect(passedOf(shop).early).toBe(720 + 90 - 700);
  });

  test('what is ready soonest leaves the clamps first, though it was clamped later', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 5);
    shop.pass(tray, 'bore', { pieces: 5 });
    shop.load(tray, 'glue', { pieces: 2 });
    const fact = factOf(shop.shop.registers, { register: 'stage', id: stage.glue });
    if (fact?.kind !== 'hold') throw new Error('gluing is a hold');
    shop.set({ register: 'stage', id: stage.glue, value: { ...fact, cureMinutes: 30 } });
    const soon = shop.clock() + 30 * 60_000;
    shop.load(tray, 'glue', { pieces: 3 });
    shop.pass(tray, 'glue', { held: true, pieces: 4 });
    const left = passedOf(shop).moves.map(({ from, pieces }) => [
      from?.at === 'held' && from.ready === soon,
      pieces,
    ]);
    expect(left).toEqual([
      [true, 3],
      [false, 1],
    ]);
  });
});

describe('a piece that was sent back', () => {
  function sentBack() {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 3);
    for (const name of ['bore', 'glue', 'turn'] as const) shop.pass(tray, name, { pieces: 3 });
    shop.flaw(tray, 'sand', { why: 'gap', outcome: backTo('glue') });
    return { shop, tray };
  }

  test('counts no more as a first visit until it has left the stage that sent it', () => {
    const { shop, tray } = sentBack();
    const again = (name: StageName) => {
      shop.pass(tray, name);
      return passedOf(shop).again;
    };
    expect([again('glue'), again('turn')]).toEqual([1, 1]);
    // Two others wait at the sanding for the first time, and go first.
    expect([again('sand'), again('sand'), again('sand')]).toEqual([0, 0, 1]);
    expect([again('grade'), again('grade'), again('grade')]).toEqual([0, 0, 0]);
  });

  test('that is sent back farther on its way keeps the later of the two stages in mind', () => {
    const { shop, tray } = sentBack();
    shop.flaw(tray, 'glue', { why: 'gap', outcome: backTo('bore') });
    const again = (['bore', 'glue', 'turn'] as const).map((name) => {
      shop.pass(tray, name);
      return passedOf(shop).again;
    });
    expect(again).toEqual([1, 1, 1]);
    shop.pass(tray, 'sand', { pieces: 3 });
    expect(passedOf(shop).again).toBe(1);
  });
});

describe('a tap is measured by what the screen showed when the finger came down', () => {
  test('a piece that another window took meanwhile is passed all the same, and the count asks for a recount', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 1);
    shop.pass(tray, 'bore');
    shop.pass(tray, 'bore', { shown: 1 });
    expect(waitingAt(shop, { tray, name: 'glue' })).toBe(2);
    expect(countsToCheck(shop.shop)).toMatchObject([{ stage: 'bore', pieces: -1 }]);
  });

  test('what the log still holds goes first, and only the rest below zero', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 5);
    shop.pass(tray, 'bore', { pieces: 3 });
    shop.pass(tray, 'bore', { pieces: 4, shown: 5 });
    expect(passedOf(shop).moves.map(({ pieces, since }) => [pieces, since === null])).toEqual([
      [2, false],
      [2, true],
    ]);
    expect(countsToCheck(shop.shop)).toMatchObject([{ stage: 'bore', pieces: -2 }]);
  });

  test('a screen that showed fewer than there are does not hold the tap back', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 5);
    shop.pass(tray, 'bore', { pieces: 4, shown: 2 });
    expect(waitingAt(shop, { tray, name: 'bore' })).toBe(1);
  });
});

describe('a pass is refused', () => {
  const pass = (
    shop: TestShop,
    { tray, name, pieces = 1 }: { tray: TrayId; name: StageName; pieces?: number },
  ) => shop.refusal({ kind: 'pass', spot: shop.spot(tray, name), pieces });

  test('where nothing is and nothing was shown', () => {
    const shop = aWorkshop();
    expect(pass(shop, { tray: shop.tray('ash-copper', 1), name: 'glue' })).toEqual({ kind: 'nothing-there' });
  });

  test('for more pieces than are there', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 3);
    expect(pass(shop, { tray, name: 'bore', pieces: 4 })).toEqual({ kind: 'too-many', there: 3 });
  });

  test.each(badCounts)('for $pieces pieces', ({ pieces, problem }) => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 3);
    expect(pass(shop, { tray, name: 'bore', pieces })).toEqual({ kind: 'number', problem });
  });

  test('for a tray that is not in the log, or was taken back', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 3);
    shop.undo(shop.log.slice(-1));
    expect(pass(shop, { tray, name: 'bore' })).toEqual({ kind: 'no-such-tray' });
  });

  test('at a stage that is not on the route of the batch', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 3, 'autumn');
    expect(pass(shop, { tray, name: 'bore' })).toEqual({ kind: 'stage-off-route', stage: 'bore' });
  });

  test('when the batch or its route is not known', () => {
    const whole = aWorkshop();
    const tray = whole.tray('ash-copper', 3);
    const bare = aShop({ station: 'office' });
    bare.receive(whole.log.filter((event) => event.kind === 'tray-made'));
    expect(pass(bare, { tray, name: 'bore' })).toEqual({ kind: 'no-such-batch' });
    bare.receive(whole.log.filter((event) => event.kind === 'set-up' && event.set.register === 'batch'));
    expect(pass(bare, { tray, name: 'bore' })).toEqual({ kind: 'no-such-batch' });
    bare.receive(whole.log.filter((event) => event.kind === 'set-up' && event.set.id === route.haft));
    bare.pass(tray, 'bore');
    expect(waitingAt(bare, { tray, name: 'glue' })).toBe(1);
  });
});
