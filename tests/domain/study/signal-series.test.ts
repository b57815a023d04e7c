import { describe, expect, test } from 'vitest';
import { type SignalSeries, seriesNamed, signalSeries } from '../../../src/domain/study/signal-series.ts';
import { aWorkshop, backTo, mended, scrapped } from '../../support/a-shop.ts';
import { studied } from '../../support/study-makers.ts';
import { reason, species, stage } from '../../support/workshop.ts';

const nameOf = ({ stage: at, species: wood, of }: SignalSeries) =>
  `${at} ${wood ?? 'all'} ${of.kind === 'scrap' ? 'scrap' : of.reason}`;
const named = (series: readonly SignalSeries[]) => new Map(series.map((each) => [nameOf(each), each.tally]));

/**
 * Boring. First tray of ash: 4 pass, 1 blown and scrapped. Of plum: 2 with a scratch and a catch, mended, 1 passes. Second
 * tray of ash: 2 pass; its third piece waits while the first tray has another blown one. At the glue one of the first tray
 * is sent back, and scrapped when it comes again.
 */
function threeTrays() {
  const shop = aWorkshop();
  const first = shop.tray('ash-copper', 6);
  const plum = shop.tray('plum-copper', 3);
  const second = shop.tray('ash-nickel', 3);
  const times = [shop.clock()];
  shop.pass(first, 'bore', { pieces: 4 });
  shop.flaw(first, 'bore', { why: 'blown', outcome: scrapped() });
  times.push(shop.clock());
  shop.flaw(plum, 'bore', { why: ['scratch', 'catch'], outcome: mended, pieces: 2 });
  shop.pass(plum, 'bore');
  times.push(shop.clock());
  shop.pass(second, 'bore', { pieces: 2 });
  shop.flaw(first, 'bore', { why: 'blown', outcome: mended });
  shop.flaw(first, 'glue', { why: 'gap', outcome: backTo('bore') });
  shop.flaw(first, 'bore', { why: 'catch', outcome: scrapped() });
  return { table: studied(shop.log), trays: [first, plum, second], times };
}

describe('series of trays', () => {
  test('has each reason and scrap by wood and over all woods, of first visits, in the order of their first piece', () => {
    const series = signalSeries(threeTrays().table);
    expect(named(series)).toEqual(
      new Map<string, SignalSeries['tally']>([
        ['bore all scrap', { counts: [1, 0, 0], sizes: [6, 3, 2], kinds: ['ash', 'plum', 'ash'] }],
        ['bore all blown', { counts: [2, 0, 0], sizes: [6, 3, 2], kinds: ['ash', 'plum', 'ash'] }],
        ['bore all catch', { counts: [0, 2, 0], sizes: [6, 3, 2], kinds: ['ash', 'plum', 'ash'] }],
        ['bore all scratch', { counts: [0, 2, 0], sizes: [6, 3, 2], kinds: ['ash', 'plum', 'ash'] }],
        ['bore ash scrap', { counts: [1, 0], sizes: [6, 2] }],
        ['bore ash blown', { counts: [2, 0], sizes: [6, 2] }],
        ['bore plum scrap', { counts: [0], sizes: [3] }],
        ['bore plum catch', { counts: [2], sizes: [3] }],
        ['bore plum scratch', { counts: [2], sizes: [3] }],
        ['glue ash scrap', { counts: [0], sizes: [1] }],
        ['glue ash gap', { counts: [1], sizes: [1] }],
      ]),
    );
  });

  test('names the tray of each count, and when it came', () => {
    const { table, trays, times } = threeTrays();
    const found = signalSeries(table).find((each) => nameOf(each) === 'bore all scrap');
    expect(found?.trays.map(({ tray, from, species: wood }) => [tray, from, wood])).toEqual([
      [trays[0], times[0], 'ash'],
      [trays[1], times[1], 'plum'],
      [trays[2], times[2], 'ash'],
    ]);
  });

  test('begins anew where a signal was answered, in that series alone', () => {
    const { table, times } = threeTrays();
    const of = { kind: 'reason', reason: reason.blown } as const;
    const answered = [{ stage: stage.bore, species: species.ash, of, since: times[2] ?? 0 }];
    const tallies = named(signalSeries(table, { answered }));
    expect(tallies.get('bore ash blown')).toEqual({ counts: [0], sizes: [2] });
    expect(tallies.get('bore ash scrap')?.sizes).toEqual([6, 2]);
    expect(tallies.get('bore all blown')?.sizes).toEqual([6, 3, 2]);
  });

  test('keeps the newest trays that hold no more than the most pieces', () => {
    const sizes = (mostPieces: number) =>
      named(signalSeries(threeTrays().table, { mostPieces })).get('bore all scrap')?.sizes;
    expect(sizes(11)).toEqual([6, 3, 2]);
    expect(sizes(10)).toEqual([3, 2]);
    expect(sizes(1)).toEqual([]);
  });

  test('can be of a wood alone', () => {
    const found = signalSeries(threeTrays().table, { filter: { species: species.plum } });
    expect(found.map(nameOf)).toEqual(['bore plum scrap', 'bore plum catch', 'bore plum scratch']);
  });
});

describe('one series', () => {
  test('is that of its name, from its first piece on, however many there are', () => {
    const { table } = threeTrays();
    const blown = {
      stage: stage.bore,
      species: species.ash,
      of: { kind: 'reason', reason: reason.blown },
    } as const;
    expect(seriesNamed(table, blown)?.tally).toEqual({ counts: [2, 0], sizes: [6, 2] });
    const newest = signalSeries(table, { mostPieces: 2 }).find((each) => nameOf(each) === 'bore ash blown');
    expect(newest?.tally).toEqual({ counts: [0], sizes: [2] });
  });

  test('is none where nobody has ever tapped that', () => {
    const { table } = threeTrays();
    expect(seriesNamed(table, { stage: stage.sand, species: null, of: { kind: 'scrap' } })).toBeNull();
  });
});
