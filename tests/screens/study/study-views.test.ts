import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { reasonId, shopDayText, speciesId, stageId, trayId } from '../../../src/domain/log/ids.ts';
import { pChart } from '../../../src/domain/statistics/p-chart.ts';
import { twoProportions } from '../../../src/domain/statistics/two-proportions.ts';
import type { ComparedCell } from '../../../src/domain/study/comparison.ts';
import type { HeatCell } from '../../../src/domain/study/flaw-heat.ts';
import type { FlawPareto, ParetoRow } from '../../../src/domain/study/flaw-pareto.ts';
import type { SignalSeries } from '../../../src/domain/study/signal-series.ts';
import type { RouteSurvival } from '../../../src/domain/study/survival.ts';
import { chancesPicture, leaningOf } from '../../../src/screens/study/chances-view.ts';
import { comparedRows, isFlawless, widest } from '../../../src/screens/study/compare-view.ts';
import { heatGrid, paretoBars, paretoPicture } from '../../../src/screens/study/flaws-view.ts';
import { markLines, placeOf, seriesChart, topShare } from '../../../src/screens/study/signals-view.ts';
import { hoursGrid } from '../../../src/screens/study/time-view.ts';

const stage = (id: string) => v.parse(stageId, id);
const species = (id: string) => v.parse(speciesId, id);
const day = (text: string) => v.parse(shopDayText, text);

describe('why a pooled chance differs from that counted alone', () => {
  const survival = (raw: number | undefined, pooled: number): RouteSurvival => ({
    ...{ raw, pooled, rawInterval: undefined, soFar: undefined },
    ...{ pooledInterval: [0, 1], worth: { k: 1, n: 2 } },
  });

  const through = survival(0.6, 0.6);
  const notThrough = survival(undefined, 0.6);

  test.each([
    ['only-one', survival(0.5, 0.9), []],
    ['a-guess', notThrough, []],
    ['a-guess', notThrough, [notThrough]],
    ['not-through', notThrough, [through]],
    ['speaks-for-itself', survival(0.904, 0.896), [through]],
    ['lifted', survival(0.7, 0.8), [through]],
    ['lowered', survival(0.9, 0.8), [notThrough]],
  ] as const)('%s', (leaning, figures, others) => {
    expect(leaningOf(figures, [figures, ...others])).toBe(leaning);
  });
});

describe('reasons, the worst first', () => {
  const row = (reason: string, pieces: number, scrapped: number): ParetoRow => ({
    reason: v.parse(reasonId, reason),
    pieces,
    byOutcome: { mended: 0, 'sent-back': 0, second: 0, scrapped: pieces },
    minutes: { scrapped, again: 1, partly: 0 },
  });
  const flaws: FlawPareto = {
    reasons: [row('tear-out', 6, 5), row('catch', 3, 29), row('scratch', 1, -1)],
    pieces: 10,
    minutes: { scrapped: 33, again: 3, partly: 0 },
  };

  test('by pieces, with the running share of all', () => {
    const bars = paretoBars(flaws, 'pieces').map(({ reason, value, running }) => [reason, value, running]);
    expect(bars).toEqual([
      ['tear-out', 6, 0.6],
      ['catch', 3, 0.9],
      ['scratch', 1, 1],
    ]);
  });

  test('by minutes in another order, without those that cost none', () => {
    const bars = paretoBars(flaws, 'minutes').map(({ reason, value, running }) => [reason, value, running]);
    expect(bars).toEqual([
      ['catch', 30, 30 / 36],
      ['tear-out', 6, 1],
    ]);
  });
});

test('the table of flaws follows the route, with stages of no route after it, and the wood with the most flaws first', () => {
  const cell = (at: string, wood: string, flawed: number): HeatCell => ({
    ...{ stage: stage(at), species: species(wood), judged: 10, flawed, share: flawed / 10 },
    ...{ scrapped: 0, trays: [], furtherTrays: 0 },
  });
  const cells = [cell('gone', 'ash', 1), cell('sand', 'plum', 4), cell('turn', 'ash', 2)];
  const grid = heatGrid(cells, [stage('turn'), stage('seal'), stage('sand')]);
  expect(grid.stages).toEqual(['turn', 'sand', 'gone']);
  expect(grid.woods).toEqual(['plum', 'ash']);
  expect(grid.most).toBe(0.4);
  expect(grid.cellAt('turn', 'ash')?.flawed).toBe(2);
  expect(grid.cellAt('turn', 'plum')).toBeUndefined();
});

describe('two lots side by side', () => {
  const cell = (at: string | null, wood: string | null, [k, n]: readonly [number, number]): ComparedCell => {
    const share = { a: { k, n }, b: { k: 50, n: 100 }, of: twoProportions({ k, n }, { k: 50, n: 100 }, 0.9) };
    const none = {
      a: { k: 0, n: 0 },
      b: { k: 0, n: 0 },
      of: twoProportions({ k: 0, n: 0 }, { k: 0, n: 0 }, 0.9),
    };
    return {
      stage: at === null ? null : stage(at),
      species: wood === null ? null : species(wood),
      ...{ clean: share, kept: share, firsts: none },
    };
  };
  const cells = [
    cell(null, null, [55, 100]),
    cell('sand', null, [50, 100]),
    cell('turn', null, [80, 100]),
    cell('turn', 'ash', [52, 100]),
  ];

  test('the surest difference stands first, and only what chance hardly makes stands out', () => {
    const { overall, stages, woods, both } = comparedRows(cells, 'clean');
    expect(stages.map(({ stage: at, standsOut }) => [at, standsOut])).toEqual([
      ['turn', true],
      ['sand', false],
    ]);
    expect(overall?.standsOut).toBe(false);
    expect(woods).toEqual([]);
    expect(both).toHaveLength(1);
  });

  test('what has no piece by a measure is left out of it', () => {
    expect(comparedRows(cells, 'firsts')).toEqual({ overall: undefined, stages: [], woods: [], both: [] });
  });

  test('where both lots lost nothing there is nothing to show', () => {
    const whole = cell('seal', null, [100, 100]);
    const [row] = comparedRows([{ ...whole, clean: { ...whole.clean, b: { k: 5, n: 5 } } }], 'clean').stages;
    const [other] = comparedRows(cells, 'clean').stages;
    expect(row && isFlawless(row)).toBe(true);
    expect(other && isFlawless(other)).toBe(false);
  });

  test('bars have room for their brackets, and never show a trifle as much', () => {
    expect(widest(comparedRows(cells, 'clean').stages)).toBeCloseTo(0.45, 10);
    expect(widest([])).toBe(0.1);
  });
});

describe('the chart of a rate', () => {
  const trays = [10, 20, 30, 40].map((from, place) => ({
    ...{ tray: v.parse(trayId, `t${place}`), code: `A${place}`, species: species('ash'), from },
  }));
  const series: SignalSeries = {
    ...{ stage: stage('turn'), species: species('ash'), of: { kind: 'scrap' }, trays },
    tally: { counts: [0, 1, 0, 19], sizes: [20, 20, 0, 20] },
  };

  test('has a point for each tray that was judged, under its own code, with the limits of the p chart', () => {
    const { points, centre } = pChart([0, 1, 0, 19], [20, 20, 0, 20]);
    const chart = seriesChart(series);
    expect(chart.at).toEqual([1, 2, 3]);
    expect(chart.codes).toEqual(['A0', 'A1', 'A3']);
    expect(chart.shares).toEqual([0, 0.05, 0.95]);
    expect(chart.centre).toEqual([centre, centre, centre]);
    expect(chart.high).toEqual(points.map(({ high }) => high));
    expect(chart.flagged).toEqual([0, 2]);
    expect(chart.counts[2]).toEqual({ flawed: 19, pieces: 20 });
  });

  test('has room for every tray and the usual limits, whatever the limits of a tiny tray are', () => {
    const chart = { ...seriesChart(series), shares: [0, 0.1], high: [0.3, 0.3, 0.95] };
    expect(topShare(chart)).toBeCloseTo(0.345, 10);
    expect(topShare({ ...chart, shares: [0.5] })).toBeCloseTo(0.575, 10);
    expect(topShare(seriesChart(series))).toBe(1);
  });

  test('marks stand between the trays that began before and after them, on the points that are drawn', () => {
    expect([5, 10, 11, 25, 35, 99].map((at) => placeOf(at, series))).toEqual([0.5, 0.5, 1.5, 2.5, 2.5, 3.5]);
    const marks = [
      { at: 35, note: 'new belt' },
      { at: 15, note: 're-ground the gouge' },
    ];
    expect(markLines(marks, series)).toEqual([
      { at: 1.5, label: 're-ground the gouge' },
      { at: 2.5, label: 'new belt' },
    ]);
  });
});

test('the newest days stand on the table of hours, with the sums of their stages', () => {
  const worked = [
    { day: day('2026-03-01'), stage: stage('sand'), minutes: 5 },
    { day: day('2026-03-02'), stage: stage('turn'), minutes: 10 },
    { day: day('2026-03-02'), stage: stage('sand'), minutes: 20 },
    { day: day('2026-03-05'), stage: stage('gone'), minutes: 40 },
  ];
  const grid = hoursGrid(worked, { route: [stage('turn'), stage('sand')], most: 2 });
  expect(grid.days).toEqual(['2026-03-02', '2026-03-05']);
  expect(grid.totals).toEqual([30, 40]);
  expect(grid.stages).toEqual(['turn', 'sand', 'gone']);
  expect(grid.minutesAt('sand', '2026-03-02')).toBe(20);
  expect(grid.minutesAt('sand', '2026-03-05')).toBe(0);
  expect(grid.most).toBe(40);
});

describe('what bars are drawn of in a picture', () => {
  const survival = (pooled: number): RouteSurvival => ({
    ...{ raw: pooled, pooled, rawInterval: undefined, soFar: undefined },
    ...{ pooledInterval: [pooled - 0.1, pooled + 0.1], worth: { k: 1, n: 2 } },
  });

  test('both chances of each wood with their intervals, the worst wood first', () => {
    const group = (id: string, pooled: number) => ({
      ...{ group: species(id), finished: survival(pooled + 0.05), firsts: survival(pooled) },
      ...{ rolled: { share: undefined, factors: [] }, stages: [] },
    });
    const picture = chancesPicture([group('ash', 0.8), group('plum', 0.6)], (id) => `<${id}>`);
    const bars = picture.kind === 'bars' ? picture.bars : [];
    expect(bars.map(({ label, value }) => [label, value])).toEqual([
      ['<plum>: Finished', 0.65],
      ['<plum>: As firsts', 0.6],
      ['<ash>: Finished', 0.8 + 0.05],
      ['<ash>: As firsts', 0.8],
    ]);
    expect(bars[1]).toMatchObject({ interval: [0.6 - 0.1, 0.6 + 0.1], tone: 'copper' });
  });

  test('reasons as long as they are many, each with what it makes up with those above', () => {
    const row = (id: string, value: number, running: number) => ({
      ...{ id, label: id, value, shown: `${value} pieces`, running, runningShown: `${running} of all` },
    });
    expect(paretoPicture([row('catch', 6, 0.6), row('gap', 4, 1)])).toMatchObject({
      ...{ kind: 'bars', most: 6, ofWhole: false },
      bars: [
        { label: 'catch', value: 6, running: { share: 0.6, shown: '0.6 of all' } },
        { label: 'gap', value: 4, running: { share: 1, shown: '1 of all' } },
      ],
    });
    expect(paretoPicture([])).toMatchObject({ most: 0, bars: [] });
  });
});
