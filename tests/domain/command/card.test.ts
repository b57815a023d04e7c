import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CardLine } from '../../../src/domain/command/command.ts';
import type { Outcome } from '../../../src/domain/log/event.ts';
import type { TrayId } from '../../../src/domain/log/ids.ts';
import { placesOf } from '../../../src/domain/shop/positions.ts';
import { aWorkshop, backTo, lowered, mended, scrapped, type TestShop } from '../../support/a-shop.ts';
import { part, type ReasonName, reason, type StageName, stage } from '../../support/workshop.ts';
import { badCounts } from './bad-counts.ts';

const passed = (name: StageName, pieces: number): CardLine => ({ kind: 'pass', stage: stage[name], pieces });
const flawed = (name: StageName, pieces: number, why: ReasonName, outcome: Outcome): CardLine => ({
  kind: 'flaw',
  stage: stage[name],
  pieces,
  reasons: [reason[why]],
  outcome,
});
const enter = (shop: TestShop, tray: TrayId, lines: readonly CardLine[]) =>
  shop.act({ kind: 'enter-card', tray, lines });
const refusal = (shop: TestShop, tray: TrayId, lines: readonly CardLine[]) =>
  shop.refusal({ kind: 'enter-card', tray, lines });

/** Pieces by place, in words. */
function standing({ shop }: TestShop, tray: TrayId): Record<string, number> {
  const sums: Record<string, number> = {};
  for (const { place, pieces } of placesOf(shop.positions, tray).values()) {
    if (pieces === 0) continue;
    const at = place.at === 'waiting' || place.at === 'held' ? `${place.stage} ${place.at}` : place.at;
    const key = 'grade' in place ? `${at} ${place.grade}` : at;
    sums[key] = (sums[key] ?? 0) + pieces;
  }
  return sums;
}

describe('a pencilled card', () => {
  test('becomes the events that taps would have been, in the order of the route, as one act', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 12);
    // A tap at a stage went before: what is typed in is measured by no time since.
    shop.pace(40_000);
    const events = enter(shop, tray, [
      passed('turn', 8),
      flawed('turn', 1, 'catch', scrapped(part.core)),
      passed('glue', 11),
      passed('bore', 11),
      flawed('bore', 1, 'blown', scrapped()),
      flawed('turn', 1, 'tear-out', lowered),
    ]);
    expect(events.map(({ kind }) => kind)).toEqual([
      'flawed',
      'passed',
      'passed',
      'flawed',
      'flawed',
      'passed',
    ]);
    expect(new Set(events.map(({ stamp }) => `${stamp.wall}/${stamp.tick}`)).size).toBe(1);
    expect(standing(shop, tray)).toEqual({
      'turn waiting first': 1,
      'sand waiting first': 8,
      'sand waiting second': 1,
      scrapped: 2,
    });
    for (const event of events) if (event.kind === 'passed') expect(event.elapsed).toBeNull();
  });

  test('comes to the same as its taps one by one', () => {
    const [card, taps] = [aWorkshop(), aWorkshop()];
    const [a, b] = [card.tray('plum-copper', 6), taps.tray('plum-copper', 6)];
    enter(card, a, [passed('bore', 5), flawed('bore', 1, 'blown', mended), passed('glue', 4)]);
    taps.flaw(b, 'bore', { why: 'blown', outcome: mended });
    taps.pass(b, 'bore', { pieces: 5 });
    taps.pass(b, 'glue', { pieces: 4 });
    expect(standing(card, a)).toEqual(standing(taps, b));
    expect(card.shop.ledger).toEqual(taps.shop.ledger);
    expect(card.shop.partsUsed).toEqual(taps.shop.partsUsed);
    expect(card.shop.visits).toEqual(taps.shop.visits);
  });

  test('with pieces that came back counts them once more at the stages before', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 10);
    enter(shop, tray, [
      passed('bore', 10),
      passed('glue', 12),
      passed('turn', 12),
      passed('sand', 10),
      flawed('sand', 2, 'scratch', backTo('glue')),
    ]);
    expect(standing(shop, tray)).toEqual({ 'grade waiting first': 10 });
    const visits = shop.log.filter((event) => event.kind === 'passed' && event.stage === stage.turn);
    expect(visits.map((event) => 'again' in event && event.again)).toEqual([0, 2]);
  });

  test('takes out of the cure first, and takes firsts before seconds', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 5);
    shop.flaw(tray, 'bore', { why: 'tear-out', outcome: lowered, pieces: 2 });
    shop.pass(tray, 'bore', { pieces: 3 });
    shop.load(tray, 'glue', { pieces: 2 });
    enter(shop, tray, [passed('glue', 2)]);
    expect(standing(shop, tray)).toEqual({
      'glue waiting first': 1,
      'glue waiting second': 2,
      'turn waiting first': 2,
    });
    enter(shop, tray, [passed('glue', 2)]);
    expect(standing(shop, tray)).toEqual({
      'glue waiting second': 1,
      'turn waiting first': 3,
      'turn waiting second': 1,
    });
  });

  test('is taken back with one undo', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 4);
    const events = enter(shop, tray, [passed('bore', 4), passed('glue', 3)]);
    shop.undo(events);
    expect(standing(shop, tray)).toEqual({ 'bore waiting first': 4 });
  });
});

describe('a card is refused as a whole', () => {
  test.each(badCounts)('at a line of $pieces', ({ pieces, problem }) => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 4);
    expect(refusal(shop, tray, [passed('bore', 2), passed('glue', pieces)])).toEqual({
      kind: 'card-line',
      line: 1,
      problem: { kind: 'number', problem },
    });
    expect(standing(shop, tray)).toEqual({ 'bore waiting first': 4 });
  });

  test('at the line that has more pieces than there can have been', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 4);
    expect(refusal(shop, tray, [passed('glue', 5), passed('bore', 4)])).toEqual({
      kind: 'card-line',
      line: 0,
      problem: { kind: 'too-many', there: 4 },
    });
    expect(refusal(shop, tray, [passed('bore', 2), passed('turn', 1)])).toEqual({
      kind: 'card-line',
      line: 1,
      problem: { kind: 'nothing-there' },
    });
  });

  test('at a flaw that no tap could enter', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 4);
    expect(refusal(shop, tray, [passed('bore', 2), flawed('bore', 1, 'blown', backTo('sand'))])).toEqual({
      kind: 'card-line',
      line: 1,
      problem: { kind: 'not-an-earlier-stage' },
    });
  });

  test('without a count, and of a tray that is not there', () => {
    const shop = aWorkshop();
    expect(refusal(shop, shop.tray('ash-copper', 4), [])).toEqual({ kind: 'card-is-empty' });
    expect(refusal(shop, 'gone' as TrayId, [passed('bore', 1)])).toEqual({ kind: 'no-such-tray' });
  });
});

test('whatever is on a card, no piece is lost or made, and a refusal changes nothing', () => {
  const lines = fc.array(
    fc.record({
      name: fc.constantFrom('bore', 'glue', 'turn', 'sand', 'grade', 'photo') as fc.Arbitrary<StageName>,
      pieces: fc.integer({ min: 1, max: 9 }),
      outcome: fc.option(fc.constantFrom(mended, lowered, scrapped(), backTo('bore'))),
    }),
    { maxLength: 8 },
  );
  fc.assert(
    fc.property(lines, fc.integer({ min: 1, max: 12 }), (typed, pieces) => {
      const shop = aWorkshop();
      const tray = shop.tray('ash-copper', pieces);
      const card = typed.map(({ name, pieces: n, outcome }) =>
        outcome ? flawed(name, n, 'scratch', outcome) : passed(name, n),
      );
      const before = standing(shop, tray);
      const decision = shop.judge({ kind: 'enter-card', tray, lines: card });
      expect(standing(shop, tray)).toEqual(before);
      if (decision.kind === 'refused') return;
      shop.record(decision.drafts);
      const after = Object.values(standing(shop, tray));
      expect(after.reduce((sum, n) => sum + n, 0)).toBe(pieces);
      expect(Math.min(...after)).toBeGreaterThanOrEqual(0);
    }),
    { numRuns: 60 },
  );
});
