import { describe, expect, test } from 'vitest';
import { piecesAt } from '../../../src/domain/command/draw.ts';
import type { Outcome } from '../../../src/domain/log/event.ts';
import type { Grade } from '../../../src/domain/log/place.ts';
import { eventWords } from '../../../src/words/event-words.ts';
import {
  aWorkshop,
  backTo,
  lowered,
  mended,
  sayLeastTime,
  scrapped,
  type TestShop,
} from '../../support/a-shop.ts';
import { reason, type StageName, stage } from '../../support/workshop.ts';
import { badCounts } from './bad-counts.ts';

/** Three pieces that wait to be turned. */
function threeToTurn() {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 3);
  shop.pass(tray, 'bore', { pieces: 3 });
  shop.pass(tray, 'glue', { pieces: 3 });
  const waiting = (name: StageName, grade: Grade = 'first') =>
    piecesAt(shop.shop.positions, { tray, stage: stage[name], at: 'waiting', grade });
  return { shop, tray, waiting };
}

const flawedOf = (shop: TestShop) => {
  const last = shop.log.at(-1);
  if (last?.kind !== 'flawed') throw new Error('the last event is no flaw');
  return last;
};

describe('what becomes of a flawed piece', () => {
  test('mended here, it goes on to the next stage, but its first visit was not clean', () => {
    const { shop, tray, waiting } = threeToTurn();
    shop.flaw(tray, 'turn', { why: 'catch', outcome: mended });
    expect([waiting('turn'), waiting('sand')]).toEqual([2, 1]);
    expect(shop.shop.visits.first.get('turn|ash' as never)).toBe(1);
    expect(shop.shop.visits.clean.get('turn|ash' as never)).toBeUndefined();
  });

  test('lowered to a second, it goes on as a second', () => {
    const { shop, tray, waiting } = threeToTurn();
    shop.flaw(tray, 'turn', { why: 'catch', outcome: lowered });
    expect([waiting('turn'), waiting('sand'), waiting('sand', 'second')]).toEqual([2, 0, 1]);
  });

  test('a second that is lowered again stays a second', () => {
    const { shop, tray, waiting } = threeToTurn();
    shop.flaw(tray, 'turn', { why: 'catch', outcome: lowered });
    shop.flaw(tray, 'sand', { why: 'scratch', outcome: lowered, grade: 'second' });
    expect(waiting('grade', 'second')).toBe(1);
  });

  test('sent back, it waits at the earlier stage and keeps its grade', () => {
    const { shop, tray, waiting } = threeToTurn();
    shop.flaw(tray, 'turn', { why: 'catch', outcome: lowered });
    shop.flaw(tray, 'sand', { why: 'gap', outcome: backTo('bore'), grade: 'second' });
    expect([waiting('bore', 'second'), waiting('sand', 'second')]).toEqual([1, 0]);
  });

  test('scrapped, it is in process no more', () => {
    const { shop, tray, waiting } = threeToTurn();
    shop.flaw(tray, 'turn', { why: 'blown', outcome: scrapped(), pieces: 2 });
    expect(waiting('turn')).toBe(1);
    expect(Object.fromEntries(shop.shop.ledger.scrapped)).toEqual({ 'ash|ash-copper': 2 });
  });

  test('at the last stage, mended or lowered, it is finished', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 2, 'autumn');
    shop.pass(tray, 'turn', { pieces: 2 });
    shop.flaw(tray, 'sand', { why: 'scratch', outcome: mended });
    shop.flaw(tray, 'sand', { why: 'scratch', outcome: lowered });
    expect(Object.fromEntries(shop.shop.ledger.finished)).toEqual({
      'ash|ash-copper|first': 1,
      'ash|ash-copper|second': 1,
    });
  });

  test('out of the clamps, it needs no cure any more', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 2);
    shop.pass(tray, 'bore', { pieces: 2 });
    shop.load(tray, 'glue', { pieces: 2 });
    shop.flaw(tray, 'glue', { why: 'gap', outcome: mended, held: true });
    expect(flawedOf(shop).moves).toMatchObject([
      { from: { at: 'held' }, to: { at: 'waiting', stage: 'turn' } },
    ]);
  });

  test.each([
    ['mended', mended],
    ['lowered', lowered],
    ['sent back', backTo('bore')],
    ['scrapped', scrapped()],
  ])(
    '%s out of the clamps, it says by how many minutes that was too early, and nothing from then on',
    (_, outcome) => {
      const shop = aWorkshop();
      sayLeastTime(shop, 240);
      const tray = shop.tray('ash-copper', 4);
      shop.pass(tray, 'bore', { pieces: 4 });
      const loaded = shop.clock();
      const goTo = (minutes: number) => shop.later(minutes + (loaded - shop.clock()) / 60_000);
      shop.load(tray, 'glue', { pieces: 3 });
      goTo(179.5);
      shop.flaw(tray, 'glue', { why: 'gap', outcome, held: true, pieces: 2 });
      expect(flawedOf(shop).early).toBe(61);
      expect(eventWords(flawedOf(shop), shop.shop.registers)).toMatch(/ at Glue, 1 h 1 min early$/);
      goTo(240);
      shop.flaw(tray, 'glue', { why: 'gap', outcome, held: true });
      expect(flawedOf(shop)).not.toHaveProperty('early');
      // What never went into the clamps cannot come out of them.
      shop.flaw(tray, 'glue', { why: 'gap', outcome });
      expect(flawedOf(shop)).not.toHaveProperty('early');
    },
  );

  test('carries its grade, its reasons, what became of it and how many had been there before', () => {
    const { shop, tray } = threeToTurn();
    shop.flaw(tray, 'turn', { why: 'gap', outcome: backTo('glue'), pieces: 3 });
    shop.pass(tray, 'glue', { pieces: 3 });
    shop.flaw(tray, 'turn', { why: ['catch', 'blown'], outcome: scrapped(), pieces: 2 });
    expect(flawedOf(shop)).toMatchObject({
      stage: 'turn',
      grade: 'first',
      pieces: 2,
      again: 2,
      reasons: ['catch', 'blown'],
      outcome: { kind: 'scrapped', saved: [] },
    });
  });
});

describe('a flaw is refused', () => {
  function refusal(change: { reasons?: []; outcome?: Outcome; pieces?: number; name?: StageName }) {
    const { shop, tray } = threeToTurn();
    return shop.refusal({
      kind: 'flaw',
      spot: shop.spot(tray, change.name ?? 'turn'),
      pieces: change.pieces ?? 1,
      reasons: change.reasons ?? [reason.catch],
      outcome: change.outcome ?? mended,
    });
  }

  test('without a reason', () => {
    expect(refusal({ reasons: [] })).toEqual({ kind: 'no-reason' });
  });

  test.each(['turn', 'sand', 'photo', 'wax'] as const)(
    'when it would send a piece back from turning to %s',
    (to) => {
      expect(refusal({ outcome: backTo(to) })).toEqual({ kind: 'not-an-earlier-stage' });
    },
  );

  test('where nothing waits', () => {
    expect(refusal({ name: 'sand' })).toEqual({ kind: 'nothing-there' });
  });

  test('at a stage that is not on the route', () => {
    expect(refusal({ name: 'wax' })).toEqual({ kind: 'stage-off-route', stage: 'wax' });
  });

  test('for more pieces than are there', () => {
    expect(refusal({ pieces: 4 })).toEqual({ kind: 'too-many', there: 3 });
  });

  test.each(badCounts)('for $pieces pieces', ({ pieces, problem }) => {
    expect(refusal({ pieces })).toEqual({ kind: 'number', problem });
  });
});
