import { describe, expect, test } from 'vitest';
import type { CommandOf } from '../../../src/domain/command/command.ts';
import { piecesAt } from '../../../src/domain/command/draw.ts';
import type { TrayId } from '../../../src/domain/log/ids.ts';
import { mostPieces } from '../../../src/domain/log/place.ts';
import { holds } from '../../../src/domain/rollup/holds.ts';
import { countsToCheck } from '../../../src/domain/rollup/waiting.ts';
import { longestNote } from '../../../src/domain/set-up/text-schema.ts';
import { placesOf } from '../../../src/domain/shop/positions.ts';
import { aWorkshop, backTo, type TestShop } from '../../support/a-shop.ts';
import { cureMinutes, route, routeStages, type StageName, stage } from '../../support/workshop.ts';

const standing = (shop: TestShop, tray: TrayId) =>
  [...placesOf(shop.shop.positions, tray).values()]
    .filter(({ pieces }) => pieces !== 0)
    .map(({ place, pieces }) => ({ ...place, pieces }));

const corrected = (shop: TestShop) => Object.fromEntries(shop.shop.ledger.corrected);

const recount = (
  shop: TestShop,
  change: Partial<CommandOf<'recount'>> & { tray: TrayId; name?: StageName },
) => {
  const { tray, name = 'bore', ...rest } = change;
  const { shown, ...spot } = shop.spot(tray, name);
  return shop.refusal({ kind: 'recount', spot, counted: 2, why: 'miscounted', note: '', ...rest });
};

describe('a recount', () => {
  test.each([
    { counted: 7, by: 2, says: 'found' },
    { counted: 5 - 2, by: -2, says: 'lost' },
    { counted: 0, by: -5, says: 'all gone' },
  ])('of five pieces to $counted corrects the log by $by', ({ counted, by }) => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 5);
    shop.recount(tray, 'bore', { counted });
    const spot = { tray, stage: stage.bore, at: 'waiting', grade: 'first' } as const;
    expect(piecesAt(shop.shop.positions, spot)).toBe(counted);
    expect(corrected(shop)).toEqual({ 'ash|ash-copper': by });
    expect(Object.fromEntries(shop.shop.ledger.made)).toEqual({ 'ash|ash-copper': 5 });
  });

  test('brings a count below zero up to what was counted, exactly', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 2);
    shop.pass(tray, 'bore', { pieces: 5, shown: 5 });
    expect(standing(shop, tray)).toContainEqual(expect.objectContaining({ stage: 'bore', pieces: -3 }));
    shop.recount(tray, 'bore', { counted: 4, why: 'two-tablets' });
    expect(standing(shop, tray)).toContainEqual(expect.objectContaining({ stage: 'bore', pieces: 4 }));
    expect(corrected(shop)).toEqual({ 'ash|ash-copper': 7 });
    expect(countsToCheck(shop.shop)).toEqual([]);
  });

  test('of a spot where some counts are below zero and others above sets both right', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 3);
    shop.pass(tray, 'bore', { pieces: 3 });
    shop.flaw(tray, 'glue', { why: 'gap', outcome: backTo('bore'), pieces: 2 });
    // Two wait at the boring for the second time; two more than the log knows are passed, for the first time.
    shop.pass(tray, 'bore', { pieces: 4, shown: 4 });
    shop.flaw(tray, 'glue', { why: 'gap', outcome: backTo('bore'), pieces: 3 });
    expect(
      standing(shop, tray)
        .filter(({ at }) => at === 'waiting')
        .map(({ pieces }) => pieces),
    ).toContain(-2);
    shop.recount(tray, 'bore', { counted: 2 });
    const atBore = standing(shop, tray).filter((each) => 'stage' in each && each.stage === 'bore');
    expect(atBore).toEqual([{ at: 'waiting', stage: 'bore', grade: 'first', redo: 'glue', pieces: 2 }]);
  });

  test('touches only its own spot: not the other grade, nor what cures, nor another tray', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 6);
    const other = shop.tray('ash-copper', 6);
    shop.pass(tray, 'bore', { pieces: 4 });
    shop.load(tray, 'glue', { pieces: 3 });
    shop.recount(tray, 'glue', { counted: 5 });
    expect(standing(shop, tray)).toMatchObject([
      { stage: 'bore', pieces: 2 },
      { stage: 'glue', at: 'waiting', pieces: 5 },
      { stage: 'glue', at: 'held', pieces: 3 },
    ]);
    expect(standing(shop, other)).toMatchObject([{ pieces: 6 }]);
  });

  test('finds pieces in clamps that the log thought empty: they cure anew, for their whole time', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 2);
    const now = shop.clock();
    shop.recount(tray, 'glue', { counted: 3, why: 'found', held: true });
    expect(holds(shop.shop)).toMatchObject([{ pieces: 3, ready: now + cureMinutes * 60_000 }]);
    shop.recount(tray, 'glue', { counted: 1, held: true });
    expect(holds(shop.shop)).toMatchObject([{ pieces: 1 }]);
  });

  test('up to nought pieces, or to the most there can be, is taken', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 2);
    shop.recount(tray, 'bore', { counted: mostPieces });
    shop.recount(tray, 'bore', { counted: 0 });
    expect(standing(shop, tray)).toEqual([]);
  });

  test('keeps its reason, and its note as it reads', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 2);
    const { shown, ...spot } = shop.spot(tray, 'bore');
    shop.act({ kind: 'recount', spot, counted: 1, why: 'lost', note: '  rolled under\nthe lathe ' });
    expect(shop.log.at(-1)).toMatchObject({ kind: 'recounted', why: 'lost', note: 'rolled under the lathe' });
  });

  test('clears what was left at a stage that is on no route any more', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 2);
    const value = { name: 'Haft', stages: routeStages.slice(1).map((name) => stage[name]) };
    const { zone, day, person } = shop.log[0] ?? fail();
    shop.record([{ kind: 'set-up', zone, day, person, set: { register: 'route', id: route.haft, value } }]);
    shop.recount(tray, 'bore', { counted: 3 });
    shop.recount(tray, 'bore', { counted: 0 });
    expect(standing(shop, tray)).toEqual([]);
  });
});

describe('a recount is refused', () => {
  test('when it says what the log says', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 2);
    expect(recount(shop, { tray })).toEqual({ kind: 'count-is-right' });
    expect(recount(shop, { tray, name: 'glue', counted: 0 })).toEqual({ kind: 'count-is-right' });
  });

  test.each([
    { counted: -1, problem: { kind: 'too-small', least: 0 } },
    { counted: 2.5, problem: { kind: 'not-whole' } },
    { counted: 1e9, problem: { kind: 'too-large', most: mostPieces } },
    { counted: Number.NaN, problem: { kind: 'not-a-number' } },
  ])('to $counted pieces', ({ counted, problem }) => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 2);
    expect(recount(shop, { tray, counted })).toEqual({ kind: 'number', problem });
  });

  test('with a note that is too long', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 2);
    expect(recount(shop, { tray, counted: 1, note: 'x'.repeat(longestNote + 1) })).toEqual({
      kind: 'text',
      problem: { kind: 'too-long', length: 501, most: 500 },
    });
  });

  test('when it would find pieces at a stage off the route, or cure them where nothing cures', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 2);
    expect(recount(shop, { tray, name: 'wax' })).toEqual({ kind: 'stage-off-route', stage: 'wax' });
    const spot = { tray, stage: stage.bore, at: 'held', grade: 'first' } as const;
    expect(recount(shop, { tray, spot })).toEqual({ kind: 'no-such-stage' });
  });

  test('for a tray that was taken back', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 2);
    shop.undo(shop.log.slice(-1));
    expect(recount(shop, { tray })).toEqual({ kind: 'no-such-tray' });
  });
});

function fail(): never {
  throw new Error('the log is empty');
}
