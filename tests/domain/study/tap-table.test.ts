import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoShop } from '../../../shared/demo/demo-shop.ts';
import { chained } from '../../../src/domain/log/chain.ts';
import type { ShopEvent } from '../../../src/domain/log/event.ts';
import { addTo, type Counter } from '../../../src/domain/shop/counter.ts';
import { longestStretch } from '../../../src/domain/shop/days.ts';
import { type Shop, shopOf } from '../../../src/domain/shop/shop.ts';
import { tapTable } from '../../../src/domain/study/log-of-taps.ts';
import type { TapTable } from '../../../src/domain/study/tap-table.ts';
import { aWorkshop, backTo, lowered, meet, mended, tablets } from '../../support/a-shop.ts';
import { clonedTabletInOneLog } from '../../support/cloned-tablet.ts';
import { histories, play } from '../../support/histories.ts';
import { packedRuns } from '../../support/run-makers.ts';
import { paced, studied, studiedPacked, tapsIn } from '../../support/study-makers.ts';
import { stage } from '../../support/workshop.ts';

/** What the app's own sums have of taps. */
function sumsOf({ visits, flaws, allDays }: Shop) {
  return { ...visits, byReason: flaws.byReason, byOutcome: flaws.byOutcome, worked: allDays.worked };
}

function sumsIn(table: TapTable) {
  const sums = {
    ...{ first: new Map(), clean: new Map(), repeat: new Map() },
    ...{ byReason: new Map(), byOutcome: new Map(), worked: new Map() },
  } satisfies Record<string, Counter>;
  for (const { what, of, elapsed } of tapsIn(table)) {
    if (elapsed !== null && elapsed <= longestStretch) addTo(sums.worked, { key: what.stage, by: elapsed });
    if (what.kind !== 'visit') continue;
    const key = `${what.stage}|${of?.species}`;
    const { pieces, again, flaw } = what;
    addTo(sums.first, { key, by: pieces - again });
    addTo(sums.repeat, { key, by: again });
    if (!flaw) addTo(sums.clean, { key, by: pieces - again });
    else {
      addTo(sums.byOutcome, { key: `${key}|${flaw.outcome}`, by: pieces });
      for (const reason of flaw.reasons)
        addTo(sums.byReason, { key: `${key}|${reason}|${flaw.outcome}`, by: pieces });
    }
  }
  return sums;
}

const pacedHistories = histories.map((steps) => play(steps).log.map(paced));

describe('the table of a log', () => {
  test('comes to the sums of the shop, whatever was undone, twice or back again, on one tablet or several', () => {
    fc.assert(
      fc.property(pacedHistories, (log) => {
        expect(sumsIn(studied(log))).toEqual(sumsOf(shopOf(log)));
      }),
      { numRuns: 80 },
    );
  });

  test('is the same from runs, from single events in any order, and from events that come twice', () => {
    fc.assert(
      fc.property(pacedHistories, fc.infiniteStream(fc.nat()), (log, numbers) => {
        const wanted = tapsIn(studied(log));
        expect(tapsIn(studiedPacked(log))).toEqual(wanted);
        const order = new Map(log.map((event) => [event, numbers.next().value]));
        const shuffled = log.toSorted((a, b) => Number(order.get(a)) - Number(order.get(b)));
        expect(tapsIn(studied([...shuffled, ...log.slice(-9)]))).toEqual(wanted);
        const [older, young] = [log.filter(isEarly), log.filter((event) => !isEarly(event))];
        const runs = packedRuns(chained(older)).map((run) => ({ run }));
        expect(tapsIn(tapTable({ runs, events: young }))).toEqual(wanted);
      }),
      { numRuns: 60 },
    );
  });

  test('goes by stamps, and by number inside a station', () => {
    fc.assert(
      fc.property(pacedHistories, (log) => {
        const taps = tapsIn(studied(log));
        const times = taps.map(({ wall }) => wall);
        expect(times).toEqual(times.toSorted((a, b) => a - b));
      }),
      { numRuns: 40 },
    );
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 3);
    for (const pieces of [1, 2]) shop.pass(tray, 'bore', { pieces });
    const [one, two] = shop.log.slice(-2);
    if (!one || !two) throw new Error('two taps were made');
    const back = { ...two, stamp: { wall: one.stamp.wall - 60_000, tick: 0 } };
    const pieces = tapsIn(studied([back, ...shop.log.slice(0, -1)])).map(({ what }) => what.pieces);
    expect(pieces).toEqual([1, 2]);
  });

  test('comes to the sums of the demo shop, packed or not', () => {
    const events = demoShop({ now: Date.UTC(2026, 2, 4, 14) });
    const wanted = sumsOf(shopOf(events));
    expect(sumsIn(studied(events))).toEqual(wanted);
    expect(sumsIn(studiedPacked(events))).toEqual(wanted);
  });

  test('has the taps of a cloned tablet apart, and what each of the two took back', () => {
    const { branch, runs, events } = clonedTabletInOneLog();
    const taps = tapsIn(tapTable({ runs, events: [] }));
    expect(taps).toEqual(tapsIn(studied(events)));
    expect(taps.map(({ station }) => station)).toEqual([...Array(3).fill(branch.station), 'station-z']);
  });

  test.each([
    { seq: 7 },
    { wall: 7 },
    { tick: 7 },
    { day: '2020-01-01' },
    { person: 'odo' },
    { of: { tray: 'another' } },
    { elapsed: 7 },
  ])('takes %o that a newer version wrote before the rest for no field of the tap', (seen) => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 3);
    shop.by('edda');
    shop.pace(90_000);
    shop.pass(tray, 'bore', { pieces: 2 });
    const log = shop.log.map((event, at) =>
      at < shop.log.length - 1 ? event : (Object.assign({ seen }, event) as ShopEvent),
    );
    expect(tapsIn(studiedPacked(log))).toEqual(tapsIn(studied(shop.log)));
  });
});

test('a run that spans a year, more than its column of times can hold, has the times of its taps', () => {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 12);
  for (let month = 0; month < 12; month += 1) {
    shop.pass(tray, 'bore');
    shop.later(30 * 24 * 60);
  }
  expect(tapsIn(studiedPacked(shop.log))).toEqual(tapsIn(studied(shop.log)));
});

const isEarly = ({ seq }: ShopEvent) => seq <= 8;

describe('a tap in the table', () => {
  test('says what it was, of what, by whom, when and how long after the one before', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 3);
    shop.by('odo');
    shop.act({ kind: 'begin-spell', stage: stage.bore });
    shop.pace(95_000);
    shop.doubt('doubtful');
    const wall = shop.clock();
    shop.flaw(tray, 'bore', { why: ['catch', 'catch', 'gap'], outcome: mended, pieces: 2 });
    shop.doubt('sound');
    shop.pace(null);
    shop.pass(tray, 'bore');
    const [flawed, passed] = tapsIn(studied(shop.log));
    expect(flawed).toMatchObject({
      ...{ day: '2026-03-02', person: 'odo', station: 'bench', wall, elapsed: 95_000, begins: true },
      of: { tray, species: 'ash', variant: 'ash-copper', batch: 'spring' },
      what: {
        ...{ kind: 'visit', stage: 'bore', pieces: 2, again: 0, doubtful: true },
        flaw: { outcome: 'mended', to: null, reasons: ['catch', 'gap'] },
      },
    });
    expect(passed).toMatchObject({ elapsed: null, begins: false, what: { flaw: null, doubtful: false } });
  });

  test('counts loading as work of its pieces, and the end of a spell as work of none', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 3);
    shop.pass(tray, 'bore', { pieces: 3 });
    shop.load(tray, 'glue', { pieces: 3 });
    shop.act({ kind: 'end-spell', stage: stage.glue });
    const taps = tapsIn(studied(shop.log)).map(({ what, of }) => [what.kind, what.pieces, of?.tray]);
    expect(taps).toEqual([
      ['visit', 3, tray],
      ['loaded', 3, tray],
      ['ended', 0, undefined],
    ]);
  });

  test('begins a spell that the same tablet has begun, also when its first tap was taken back', () => {
    const [one, other] = tablets('A', 'C');
    if (!one || !other) throw new Error('two tablets');
    const tray = one.tray('ash-copper', 4);
    meet(one, other);
    one.act({ kind: 'begin-spell', stage: stage.bore });
    other.pass(tray, 'bore');
    one.undo(one.pass(tray, 'bore'));
    one.pass(tray, 'bore');
    one.pass(tray, 'bore');
    one.act({ kind: 'begin-spell', stage: stage.turn });
    meet(one, other);
    const begun = tapsIn(studied(one.log)).map(({ station, begins }) => `${station} ${begins}`);
    expect(begun.toSorted()).toEqual(['tablet-1 false', 'tablet-1 true', 'tablet-2 false']);
  });

  test('tells of each piece whose trial it is and whether that is decided', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 2);
    shop.pass(tray, 'bore', { pieces: 2 });
    shop.pass(tray, 'glue', { pieces: 2 });
    shop.flaw(tray, 'turn', { why: 'gap', outcome: backTo('glue') });
    shop.flaw(tray, 'glue', { why: 'gap', outcome: lowered });
    shop.pass(tray, 'turn', { pieces: 1 });
    shop.pass(tray, 'turn', { pieces: 1, grade: 'second' });
    const trials = tapsIn(studied(shop.log)).flatMap(({ what }) =>
      what.kind === 'visit' ? what.trials : [],
    );
    expect(trials).toEqual([
      { stage: 'bore', pieces: 2, grade: 'first', end: 'on', over: true },
      { stage: 'glue', pieces: 2, grade: 'first', end: 'on', over: true },
      { stage: 'turn', pieces: 1, grade: 'first', end: 'back', over: false },
      { stage: 'turn', pieces: 1, grade: 'first', end: 'lowered', over: false },
      { stage: 'turn', pieces: 1, grade: 'first', end: 'on', over: true },
      { stage: 'turn', pieces: 1, grade: 'second', end: 'on', over: true },
    ]);
  });
});
