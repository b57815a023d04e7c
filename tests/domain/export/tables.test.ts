import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayTable } from '../../../src/domain/export/day-table.ts';
import type { Cell, Naming, Table } from '../../../src/domain/export/table.ts';
import { tapsTable } from '../../../src/domain/export/taps-table.ts';
import { traysTable } from '../../../src/domain/export/trays-table.ts';
import { yieldTable } from '../../../src/domain/export/yield-table.ts';
import type { LogEvent } from '../../../src/domain/log/read-event.ts';
import { calledBy } from '../../../src/domain/set-up/register.ts';
import { type Shop, shopOf } from '../../../src/domain/shop/shop.ts';
import { aWorkshop, backTo, scrapped } from '../../support/a-shop.ts';
import { newerEvent } from '../../support/drafts.ts';
import { histories, play } from '../../support/histories.ts';
import { batch, part, route } from '../../support/workshop.ts';
import { threeDaysOfHafts } from '../stories/three-days-of-hafts.ts';

const nameIn =
  ({ registers }: Shop): Naming =>
  ({ register, id }) => {
    const set = registers.get(`${register}/${id}`)?.set;
    return set ? calledBy(set.value) : id;
  };

/** The rows as records, so that a test speaks of columns by their names. */
function records({ columns, rows }: Table): readonly Readonly<Record<string, Cell>>[] {
  return rows.map((row) => Object.fromEntries(columns.map((column, at) => [column, row[at] ?? null])));
}

const tapsOf = (shop: Shop, log: readonly LogEvent[]) =>
  records(tapsTable(log, { shop, nameOf: nameIn(shop), say: ({ kind }) => `said ${kind}` }));

/** Sum of a column over the rows that a test wants. */
function total(
  rows: readonly Readonly<Record<string, Cell>>[],
  column: string,
  wanted: Readonly<Record<string, Cell>> = {},
): number {
  return rows
    .filter((row) => Object.entries(wanted).every(([name, cell]) => row[name] === cell))
    .reduce((sum, row) => sum + Number(row[column]), 0);
}

describe('the table of taps', () => {
  const shop = aWorkshop();
  shop.set({ register: 'station', id: shop.station, value: { letter: 'A', name: 'Lathe', keys: [] } });
  shop.set({ register: 'person', id: 'edda' as never, value: { name: 'Edda', retired: false } });
  shop.by('edda');
  const tray = shop.tray('ash-copper', 8);
  shop.pace(90_000);
  shop.pass(tray, 'bore', { pieces: 3 });
  shop.undo(shop.pass(tray, 'bore'));
  shop.flaw(tray, 'bore', { why: ['blown', 'tear-out'], outcome: scrapped(part.core), pieces: 2 });
  shop.pass(tray, 'bore');
  shop.load(tray, 'glue', { pieces: 4 });
  shop.flaw(tray, 'glue', { why: 'gap', outcome: backTo('bore'), held: true });
  shop.recount(tray, 'bore', { counted: 1, why: 'lost' });
  const taps = tapsOf(shop.shop, shop.log).filter(({ kind }) => kind !== 'set-up');

  test('has a row for every event, in the order of their stamps', () => {
    expect(tapsOf(shop.shop, shop.log.toReversed())).toHaveLength(shop.log.length);
    expect(taps.map(({ kind }) => kind)).toEqual([
      'tray-made',
      'passed',
      'passed',
      'voided',
      'flawed',
      'passed',
      'hold-begun',
      'flawed',
      'recounted',
    ]);
  });

  test('tells a pass in full, in names', () => {
    expect(taps[1]).toEqual({
      station: 'bench',
      tablet: 'A',
      number: expect.any(Number),
      moment: expect.stringMatching(/^2026-03-02T09:\d\d:00\.000Z$/),
      'local-time': expect.stringMatching(/^2026-03-02 09:\d\d:00$/),
      'utc-offset': 0,
      zone: 'Europe/London',
      day: '2026-03-02',
      person: 'Edda',
      kind: 'passed',
      code: expect.stringMatching(/^A1.$/),
      into: null,
      variant: 'ash with copper',
      species: 'ash',
      batch: 'spring',
      stage: 'Bore',
      pieces: 3,
      again: 0,
      grade: 'first',
      reasons: null,
      outcome: null,
      'back-to': null,
      'saved-parts': null,
      elapsed: 90_000,
      why: null,
      note: null,
      parts: null,
      heap: null,
      'lost-parts': null,
      moisture: null,
      'taken-back': 'no',
      'takes-back': null,
      'clock-doubtful': 'no',
      said: 'said passed',
    });
  });

  test('tells of a flaw why, what became of it, and what was saved', () => {
    expect(taps[4]).toMatchObject({
      stage: 'Bore',
      pieces: 2,
      reasons: 'blown; tear-out',
      outcome: 'scrapped',
      'saved-parts': 'core',
    });
    expect(taps[7]).toMatchObject({ outcome: 'sent-back', 'back-to': 'Bore', 'saved-parts': null });
  });

  test('says of what was taken back that it was, and gives the taking back no pieces', () => {
    expect(taps[2]).toMatchObject({ kind: 'passed', pieces: 1, 'taken-back': 'yes' });
    expect(taps[3]).toMatchObject({ 'takes-back': `bench ${taps[2]?.number}`, pieces: null });
  });

  test('counts a recount with its sign', () => {
    expect(taps[8]).toMatchObject({ stage: 'Bore', pieces: -2, why: 'lost', note: '' });
  });

  test('marks taps that were made while the clock was in doubt', () => {
    const late = aWorkshop();
    const tray = late.tray('ash-copper', 8);
    late.doubt('doubtful');
    late.pass(tray, 'bore');
    expect(tapsOf(late.shop, late.log).at(-1)).toMatchObject({ 'clock-doubtful': 'yes' });
  });

  test('has summer time in the local time and not in the moment', () => {
    const summer = aWorkshop({ now: Date.UTC(2026, 6, 1, 23, 30) });
    expect(tapsOf(summer.shop, summer.log)[0]).toMatchObject({
      moment: '2026-07-01T23:30:00.000Z',
      'local-time': '2026-07-02 00:30:00',
      'utc-offset': 60,
      day: '2026-07-01',
    });
  });

  test('names what a newer version wrote, and tells no more of it', () => {
    const { seq, kind } = newerEvent;
    expect(tapsOf(shop.shop, [{ station: shop.station, seq, kind }]).at(-1)).toMatchObject({
      number: seq,
      kind,
      moment: null,
      'taken-back': null,
    });
  });

  test('bears a moment that no calendar reaches', () => {
    const [first] = shop.log;
    if (!first) throw new Error('the log is empty');
    const absurd = { ...first, stamp: { wall: Number.MAX_SAFE_INTEGER, tick: 0 } };
    expect(tapsOf(shop.shop, [absurd])[0]).toMatchObject({ moment: null, 'local-time': null });
  });
});

describe('three days of hafts as tables', () => {
  const { shop, log } = threeDaysOfHafts();
  const names = nameIn(shop);

  test('the days tell stage by stage what was passed and what went wrong', () => {
    const { columns, rows } = dayTable(shop, names);
    expect(columns).toEqual([
      'day',
      'stage',
      'passed',
      'mended',
      'sent-back',
      'second',
      'scrapped',
      'minutes',
    ]);
    expect(rows.slice(0, 3)).toEqual([
      ['2026-03-02', 'Bore', 15, 0, 0, 0, 1, 0],
      ['2026-03-03', 'Glue', 7, 1, 0, 0, 0, expect.any(Number)],
      ['2026-03-03', 'Turn', 4, 1, 1, 1, 1, expect.any(Number)],
    ]);
  });

  test('half a minute between taps is half a minute of work', () => {
    // Tuesday at the lathe: 7 taps of 30 s each.
    expect(total(records(dayTable(shop, names)), 'minutes', { day: '2026-03-03', stage: 'Turn' })).toBe(3.5);
  });

  test('the yield has a row for the wood and one for each stage, and no figure twice', () => {
    const rows = records(yieldTable(shop, names));
    expect(rows.filter(({ stage }) => stage === null)).toMatchObject([
      { species: 'ash', made: 10, corrected: -1, firsts: 5, seconds: 2, scrapped: 2 },
      { species: 'plum', made: 6, corrected: 1, firsts: 3, seconds: 1 },
    ]);
    expect(rows.filter(({ species }) => species === 'ash').map(({ stage }) => stage)).toEqual([
      null,
      'Bore',
      'Glue',
      'Turn',
      'Sand',
      'Grade',
      'Photograph',
    ]);
    expect(rows[1]).toMatchObject({
      made: null,
      'first-visits': 10,
      'good-visits': 9,
      'first-pass-yield': 0.9,
    });
  });

  test('the trays tell where every piece is, and no tray is left out', () => {
    const rows = records(traysTable(shop, names));
    expect(new Set(rows.map(({ code }) => code)).size).toBe(shop.trays.size);
    expect(total(rows, 'pieces', { species: 'ash', where: 'finished', grade: 'first' })).toBe(5);
    expect(total(rows, 'pieces', { species: 'plum', where: 'scrapped' })).toBe(2);
    expect(rows.find(({ where }) => where === null)).toMatchObject({ pieces: 0, stage: null });
    expect(rows[0]).toMatchObject({
      variant: 'ash with copper',
      'made-up': expect.stringMatching(/^2026-03-02 09:/),
    });
  });

  test('a cure shows when it is ready, by the shop’s clock', () => {
    const held = aWorkshop({ now: Date.UTC(2026, 6, 1, 12) });
    const tray = held.tray('ash-copper', 2);
    held.pass(tray, 'bore', { pieces: 2 });
    const cure = Date.UTC(2026, 6, 1, 12, (held.clock() - Date.UTC(2026, 6, 1, 12)) / 60_000);
    held.load(tray, 'glue', { pieces: 2 });
    const [row] = records(traysTable(held.shop, nameIn(held.shop)));
    // Twelve hours of cure, and one hour of summer time.
    const ready = new Date(cure + 13 * 3_600_000).toISOString().slice(0, 19).replace('T', ' ');
    expect(row).toMatchObject({ where: 'held', stage: 'Glue', pieces: 2, ready });
  });

  test('the taps are as many as the log has', () => {
    expect(tapsOf(shop, log)).toHaveLength(log.length);
  });
});

describe('whatever happens in the shop', () => {
  test('the taps that were not taken back add up to the days', () => {
    fc.assert(
      fc.property(histories, (steps) => {
        const { log } = play(steps);
        const shop = shopOf(log);
        const taps = tapsOf(shop, log).filter((row) => row['taken-back'] === 'no');
        const days = records(dayTable(shop, nameIn(shop)));
        for (const stage of new Set(days.map((row) => row.stage ?? ''))) {
          expect(total(taps, 'pieces', { kind: 'passed', stage })).toBe(total(days, 'passed', { stage }));
          for (const outcome of ['mended', 'sent-back', 'second', 'scrapped']) {
            expect(total(taps, 'pieces', { kind: 'flawed', stage, outcome })).toBe(
              total(days, outcome, { stage }),
            );
          }
        }
      }),
    );
  });

  test('the trays add up to the woods', () => {
    fc.assert(
      fc.property(histories, (steps) => {
        const { log } = play(steps);
        const shop = shopOf(log);
        const trays = records(traysTable(shop, nameIn(shop)));
        for (const wood of records(yieldTable(shop, nameIn(shop))).filter(({ stage }) => stage === null)) {
          const { species } = wood;
          const of = (where: string, more = {}) =>
            total(trays, 'pieces', { species: species ?? '', where, ...more });
          expect(of('waiting') + of('held')).toBe(wood['in-work']);
          expect(of('finished', { grade: 'first' })).toBe(wood.firsts);
          expect(of('finished', { grade: 'second' })).toBe(wood.seconds);
          expect(of('scrapped')).toBe(wood.scrapped);
        }
      }),
    );
  });
});

test('a stage that left every route keeps its rows', () => {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 2);
  shop.pass(tray, 'bore');
  shop.set({
    register: 'batch',
    id: batch.spring,
    value: { name: 'spring', route: route.haft, wanted: [], due: null, retired: true },
  });
  expect(records(dayTable(shop.shop, nameIn(shop.shop)))).toMatchObject([{ stage: 'Bore', passed: 1 }]);
  expect(records(yieldTable(shop.shop, nameIn(shop.shop))).at(-1)).toMatchObject({
    stage: 'Bore',
    'good-visits': 1,
  });
});

test('a shop without anything has tables of headings alone', () => {
  const shop = shopOf([]);
  for (const table of [
    traysTable(shop, nameIn(shop)),
    yieldTable(shop, nameIn(shop)),
    dayTable(shop, nameIn(shop)),
  ])
    expect(table.rows).toEqual([]);
});
