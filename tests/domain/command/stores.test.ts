import { describe, expect, test } from 'vitest';
import { mostParts } from '../../../src/domain/log/stores-facts.ts';
import { dayAfter } from '../../../src/domain/log/zone.ts';
import { dayReport } from '../../../src/domain/rollup/day-report.ts';
import { isTold, partsOnHand, partsToClean } from '../../../src/domain/rollup/parts-on-hand.ts';
import type { Voidable } from '../../../src/domain/shop/voids.ts';
import { aWorkshop, meet, scrapped, type TestShop, tablets } from '../../support/a-shop.ts';
import { part, partFacts } from '../../support/workshop.ts';

function stocked(): TestShop {
  const shop = aWorkshop();
  for (const set of partFacts) shop.set(set);
  return shop;
}

const receive = (pieces: number, cost: number | null = null) =>
  ({ kind: 'receive-parts', parts: [{ part: part.core, pieces, cost }], note: '' }) as const;
const count = (counted: number, heap: 'shelf' | 'to-clean' = 'shelf') =>
  ({ kind: 'count-parts', part: part.core, heap, counted, why: 'lost', note: '' }) as const;
const clean = (back: number, { lost = 0, shown = 0 } = {}) =>
  ({ kind: 'clean-parts', part: part.core, back, lost, shown }) as const;
const onHand = ({ shop }: TestShop) => partsOnHand(shop, part.core);
const toClean = ({ shop }: TestShop) => partsToClean(shop, part.core);

/** Two scrapped pieces of which the cores were saved: two in each. */
function withScrap(): TestShop {
  const shop = stocked();
  shop.act(receive(100));
  const tray = shop.tray('ash-copper', 6);
  for (const name of ['bore', 'glue'] as const) shop.pass(tray, name, { pieces: 6 });
  shop.flaw(tray, 'turn', { why: 'blown', outcome: scrapped(part.core), pieces: 2 });
  return shop;
}

describe('a delivery', () => {
  test('is on hand, line by line, with its note as it is kept', () => {
    const shop = stocked();
    const lines = [
      { part: part.core, pieces: 120, cost: 5400 },
      { part: part['copper-ferrule'], pieces: 60, cost: null },
    ];
    const [event] = shop.act({ kind: 'receive-parts', parts: lines, note: '  two   boxes ' });
    expect(event).toMatchObject({ kind: 'parts-received', parts: lines, note: 'two boxes' });
    expect([onHand(shop), partsOnHand(shop.shop, part['copper-ferrule'])]).toEqual([120, 60]);
  });

  test.each([
    [0, { kind: 'too-small', least: 1 }],
    [-4, { kind: 'too-small', least: 1 }],
    [1.5, { kind: 'not-whole' }],
    [Number.NaN, { kind: 'not-a-number' }],
    [1_000_000, { kind: 'too-large', most: mostParts }],
  ])('of %d pieces is refused', (pieces, problem) => {
    expect(stocked().refusal(receive(pieces))).toEqual({ kind: 'number', problem });
  });

  test.each([-1, 0.5])('that cost %d is refused', (cost) => {
    expect(stocked().refusal(receive(5, cost)).kind).toBe('number');
  });

  test('of nothing, or of a part that the shop does not know, is refused', () => {
    expect(aWorkshop().refusal(receive(5))).toEqual({ kind: 'no-part' });
    expect(stocked().refusal({ kind: 'receive-parts', parts: [], note: '' })).toEqual({ kind: 'no-part' });
  });

  test('with a note that is too long is refused', () => {
    expect(stocked().refusal({ ...receive(5), note: 'x'.repeat(501) })).toMatchObject({ kind: 'text' });
  });
});

describe('a count', () => {
  test('corrects the shelf by the difference, and keeps what was found', () => {
    const shop = stocked();
    shop.act(receive(100));
    expect(shop.act(count(93))).toMatchObject([
      { kind: 'parts-counted', counted: 93, pieces: -7, why: 'lost' },
    ]);
    expect(onHand(shop)).toBe(93);
  });

  test('brings a shelf that went below zero to what lies there', () => {
    const shop = stocked();
    const tray = shop.tray('ash-copper', 3);
    shop.pass(tray, 'bore', { pieces: 3 });
    shop.pass(tray, 'glue', { pieces: 3 });
    expect(onHand(shop)).toBe(-6);
    expect(shop.act(count(40))).toMatchObject([{ pieces: 46 }]);
    expect(onHand(shop)).toBe(40);
  });

  test('of what is to be cleaned leaves the shelf alone', () => {
    const shop = withScrap();
    const before = onHand(shop);
    shop.act(count(3, 'to-clean'));
    expect([onHand(shop), toClean(shop)]).toEqual([before, 3]);
  });

  test('that finds what the log says is no news, but the first one is', () => {
    const shop = stocked();
    expect(isTold(shop.shop, part.core)).toBe(false);
    shop.act(count(0));
    expect(isTold(shop.shop, part.core)).toBe(true);
    expect(shop.refusal(count(0))).toEqual({ kind: 'count-is-right' });
    expect(shop.refusal(count(0, 'to-clean'))).toEqual({ kind: 'count-is-right' });
  });

  test.each([-1, 2.5, Number.NaN, 1e9])('of %d is refused', (counted) => {
    expect(stocked().refusal(count(counted)).kind).toBe('number');
  });

  test('of a part that the shop does not know is refused', () => {
    expect(aWorkshop().refusal(count(5))).toEqual({ kind: 'no-part' });
  });
});

describe('cleaning', () => {
  test('brings saved parts back to the shelf, but for those that are lost over it', () => {
    const shop = withScrap();
    expect([onHand(shop), toClean(shop)]).toEqual([88, 4]);
    shop.act(clean(1));
    expect([onHand(shop), toClean(shop)]).toEqual([89, 3]);
    shop.act(clean(1, { lost: 2 }));
    expect([onHand(shop), toClean(shop)]).toEqual([90, 0]);
    expect(shop.shop.stores.get(`lost|${part.core}`)).toBe(2);
  });

  test.each([
    [
      { back: 5, lost: 0 },
      { kind: 'too-large', most: 4 },
    ],
    [
      { back: 3, lost: 2 },
      { kind: 'too-large', most: 4 },
    ],
    [
      { back: 0, lost: 0 },
      { kind: 'too-small', least: 1 },
    ],
    [
      { back: -1, lost: 3 },
      { kind: 'too-small', least: 0 },
    ],
    [{ back: 0.5, lost: 0.5 }, { kind: 'not-whole' }],
  ])('of %j of four is refused', ({ back, lost }, problem) => {
    expect(withScrap().refusal(clean(back, { lost }))).toEqual({ kind: 'number', problem });
  });

  test('of nothing is refused', () => {
    expect(stocked().refusal(clean(1))).toEqual({ kind: 'none-to-clean' });
  });

  test('of the same parts on two tablets counts both: what is to be cleaned goes below zero and asks for a count', () => {
    const [one, two] = tablets('A', 'C');
    if (!one || !two) throw new Error('two tablets');
    for (const set of partFacts) one.set(set);
    one.act(receive(100));
    const tray = one.tray('ash-copper', 2);
    for (const name of ['bore', 'glue'] as const) one.pass(tray, name, { pieces: 2 });
    one.flaw(tray, 'turn', { why: 'blown', outcome: scrapped(part.core) });
    meet(one, two);
    for (const tablet of [one, two]) tablet.act(clean(2, { shown: 2 }));
    meet(one, two);
    for (const tablet of [one, two]) expect([onHand(tablet), toClean(tablet)]).toEqual([100, -2]);
    one.act(count(0, 'to-clean'));
    one.act(count(98));
    expect([onHand(one), toClean(one)]).toEqual([98, 0]);
  });

  test('a tap on a screen that is behind is taken all the same', () => {
    const shop = withScrap();
    shop.act(clean(4));
    expect(shop.act(clean(1, { shown: 1 }))).toHaveLength(1);
    expect(toClean(shop)).toBe(-1);
  });
});

test.each([
  ['a delivery', receive(7, 350)],
  ['a count', count(60)],
  ['a count of what is to be cleaned', count(1, 'to-clean')],
  ['a cleaning', clean(1, { lost: 1 })],
])('%s is taken back, put back and taken back again', (_, command) => {
  const shop = withScrap();
  const sums = () => structuredClone([shop.shop.stores, onHand(shop), toClean(shop)]);
  const before = sums();
  const events = shop.act(command);
  const after = sums();
  expect(after).not.toEqual(before);
  const undo = shop.undo(events);
  expect(sums()).toEqual(before);
  const redo = shop.undo(undo);
  expect(sums()).toEqual(after);
  shop.undo(redo);
  expect(sums()).toEqual(before);
});

describe('a sample of a delivery', () => {
  const sample = (lot: number, bad: number) =>
    ({ kind: 'sample-parts', part: part.core, lot, limit: '2.5', bad, note: ' bent ' }) as const;

  test('is kept with its plan, and accepts up to what the plan says (MIL-STD-105E, Tables I and II-A)', () => {
    const shop = stocked();
    // Lots of 91 to 150 have letter F: of 20, at 2.5 per cent, one bad one is accepted.
    const [one] = shop.act(sample(120, 1));
    expect(one).toMatchObject({
      ...{ kind: 'parts-sampled', part: part.core, lot: 120, limit: 250, letter: 'F' },
      ...{ sample: 20, accept: 1, bad: 1, verdict: 'accepted', note: 'bent' },
    });
    const [two] = shop.act(sample(120, 2));
    expect(two).toMatchObject({ bad: 2, verdict: 'refused' });
  });

  test('of so few that all are checked has no letter, and any bad one refuses it', () => {
    const shop = stocked();
    const [good] = shop.act(sample(4, 0));
    expect(good).toMatchObject({ letter: null, sample: 4, accept: 0, verdict: 'accepted' });
    const [bad] = shop.act(sample(4, 4));
    expect(bad).toMatchObject({ letter: null, bad: 4, verdict: 'refused' });
  });

  test('changes no count, and is told on its day until it is taken back', () => {
    const shop = stocked();
    shop.act(receive(120));
    const before = structuredClone(shop.shop.stores);
    const events = [...shop.act(sample(120, 0)), ...shop.act(sample(120, 5)), ...shop.act(sample(90, 5))];
    expect(shop.shop.stores).toEqual(before);
    const [first, second] = events;
    const day = first?.day;
    if (!day || !second) throw new Error('nothing was logged');
    const told = () => dayReport(shop.shop, day).samples;
    expect(told()).toEqual([{ part: part.core, accepted: 1, refused: 2 }]);
    shop.act({ kind: 'undo', events: [second as Voidable] });
    expect(told()).toEqual([{ part: part.core, accepted: 1, refused: 1 }]);
    expect(dayReport(shop.shop, dayAfter(day, 1))).toMatchObject({ samples: [], workingDays: 0 });
  });

  test('is refused with more bad ones than were checked, of no delivery, and of a part that the shop does not know', () => {
    const shop = stocked();
    expect(shop.refusal(sample(120, 21))).toEqual({
      kind: 'number',
      problem: { kind: 'too-large', most: 20 },
    });
    expect(shop.refusal(sample(0, 0))).toEqual({ kind: 'number', problem: { kind: 'too-small', least: 1 } });
    expect(shop.refusal(sample(1.5, 0)).kind).toBe('number');
    expect(shop.refusal(sample(120, -1)).kind).toBe('number');
    expect(aWorkshop().refusal(sample(120, 0))).toEqual({ kind: 'no-part' });
  });
});
