import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { shopDayText } from '../../../src/domain/log/ids.ts';
import { dayReport } from '../../../src/domain/rollup/day-report.ts';
import { flawTable } from '../../../src/domain/rollup/flaw-table.ts';
import { holds } from '../../../src/domain/rollup/holds.ts';
import { yieldBySpecies } from '../../../src/domain/rollup/species-yield.ts';
import { countsToCheck } from '../../../src/domain/rollup/waiting.ts';
import { workInProcess } from '../../../src/domain/rollup/wip.ts';
import { shopOf } from '../../../src/domain/shop/shop.ts';
import { routeStages, stage } from '../../support/workshop.ts';
import { threeDaysOfHafts } from './three-days-of-hafts.ts';

// Every figure of this file was counted by hand from the list of taps, not taken from the code.
const story = threeDaysOfHafts();
const tuesday = shopOf(story.tuesdayEvening);
const stages = routeStages.map((name) => stage[name]);
const day = (text: string) => v.parse(shopDayText, text);

describe('three days of hafts', () => {
  test('are 63 taps', () => {
    expect(story.taps).toBe(63);
  });

  test.each([
    {
      species: 'ash',
      figures: { made: 10, corrected: -1, inFlight: 0, firsts: 5, seconds: 2, scrapped: 2 },
      firstVisits: [
        ['bore', 9, 10, 0],
        ['glue', 8, 8, 1],
        ['turn', 5, 8, 1],
        ['sand', 6, 7, 1],
        ['grade', 6, 7, 1],
        ['photo', 6, 7, 0],
      ],
      // 9/10 × 8/8 × 5/8 × 6/7 × 6/7 × 6/7
      rolled: 0.354227,
    },
    {
      species: 'plum',
      figures: { made: 6, corrected: 1, inFlight: 1, firsts: 3, seconds: 1, scrapped: 2 },
      firstVisits: [
        ['bore', 6, 6, 0],
        ['glue', 6, 7, 0],
        ['turn', 5, 7, 0],
        ['sand', 5, 6, 0],
        ['grade', 4, 6, 0],
        ['photo', 4, 4, 0],
      ],
      // 6/6 × 6/7 × 5/7 × 5/6 × 4/6 × 4/4
      rolled: 0.340136,
    },
  ])('of $species give the pieces, the first-pass yields and the rolled yield that a hand counts', (row) => {
    const found = yieldBySpecies(story.shop, stages).find(({ species }) => species === row.species);
    expect(found).toMatchObject(row.figures);
    expect(found?.stages.map(({ stage: at, share, repeats }) => [at, share.out, share.of, repeats])).toEqual(
      row.firstVisits,
    );
    expect(found?.rolled).toBeCloseTo(row.rolled, 6);
  });

  test('leave each flaw under its stage, wood, reason and outcome', () => {
    const rows = flawTable(story.shop).map((cell) => Object.values(cell).join(' '));
    expect(rows.toSorted()).toEqual([
      'bore ash blown scrapped 1',
      'glue plum gap mended 1',
      'grade ash scratch sent-back 1',
      'grade plum gap scrapped 1',
      'grade plum gap sent-back 1',
      'photo ash scratch second 1',
      'sand ash scratch mended 1',
      'sand plum scratch second 1',
      'turn ash blown scrapped 1',
      'turn ash catch sent-back 1',
      'turn ash tear-out second 1',
      'turn plum catch mended 1',
      'turn plum tear-out mended 1',
      'turn plum tear-out scrapped 1',
    ]);
  });

  test('take from the stores what the pieces hold and what was lost with scrap', () => {
    // Cores, two to a piece: 16 leave the gluing good; 2 + 2 come back from scrap, 2 with a piece sent back.
    // Ferrules: 14 leave the sanding good; 2 come back with pieces sent back, 1 from scrap.
    expect(Object.fromEntries(story.shop.partsUsed)).toEqual({
      'ash-blank': -9,
      'plum-blank': -6,
      core: -2 * 16 + 2 + 2 + 2,
      'copper-ferrule': -14 + 2 + 1,
    });
  });

  test('end with one piece of plum that waits to be turned again, and no count to check', () => {
    expect(workInProcess(story.shop)).toEqual([
      { stage: 'turn', species: 'plum', waiting: 1, held: 0, seconds: 0 },
    ]);
    expect(holds(story.shop)).toEqual([]);
    expect(countsToCheck(story.shop)).toEqual([]);
  });
});

describe('the evening of the second day', () => {
  test('has all eight clamps full, and one second that waits for its photograph', () => {
    expect(workInProcess(tuesday)).toHaveLength(3);
    expect(workInProcess(tuesday)).toEqual(
      expect.arrayContaining([
        { stage: 'glue', species: 'ash', waiting: 0, held: 4, seconds: 0 },
        { stage: 'glue', species: 'plum', waiting: 0, held: 4, seconds: 0 },
        { stage: 'photo', species: 'plum', waiting: 1, held: 0, seconds: 1 },
      ]),
    );
    expect(holds(tuesday).map(({ tray, pieces }) => [tray.tray, pieces])).toEqual([
      [story.ash, 3],
      [story.plum, 2],
      [story.splitOff, 2],
      [story.ash, 1],
    ]);
  });

  test.each([['Tuesday evening', tuesday] as const, ['Wednesday evening', story.shop] as const])(
    'reports its day the same on %s',
    (_, shop) => {
      expect(dayReport(shop, day('2026-03-03'))).toMatchObject({
        made: { day: 0, before: 16, average: 16 },
        scrapped: { day: 2, before: 1, average: 1 },
        seconds: { day: 2, before: 0, average: 0 },
        finishedFirsts: { day: 3, before: 0, average: 0 },
        finishedSeconds: { day: 1, before: 0, average: 0 },
        workingDays: 1,
      });
    },
  );

  test('reports the pieces passed and the time at each stage; what was taken back took no time', () => {
    const report = dayReport(story.shop, day('2026-03-03'));
    const rows = report.stages.map((at) => [at.stage, at.passed.day, at.passed.before, at.worked.day]);
    // Half a minute a tap: 6 taps at the gluing, 7, 5, 7 and 3 at the stages after it.
    expect(rows).toHaveLength(6);
    expect(rows).toEqual(
      expect.arrayContaining([
        ['bore', 0, 15, 0],
        ['glue', 7, 0, 180_000],
        ['turn', 4, 0, 210_000],
        ['sand', 6, 0, 150_000],
        ['grade', 5, 0, 210_000],
        ['photo', 4, 0, 90_000],
      ]),
    );
    expect(report.worked).toEqual({ day: 840_000, before: 0, average: 0 });
  });

  test('stands beside the average of both days before it on the third', () => {
    expect(dayReport(story.shop, day('2026-03-04'))).toMatchObject({
      made: { day: 0, before: 0, average: 8 },
      scrapped: { day: 1, before: 2, average: 1.5 },
      seconds: { day: 1, before: 2, average: 1 },
      finishedFirsts: { day: 5, before: 3, average: 1.5 },
      finishedSeconds: { day: 2, before: 1, average: 0.5 },
      workingDays: 2,
    });
  });
});
