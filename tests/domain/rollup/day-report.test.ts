import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { demoShop } from '../../../shared/demo/demo-shop.ts';
import { type ShopDay, shopDayText } from '../../../src/domain/log/ids.ts';
import { dayAfter } from '../../../src/domain/log/zone.ts';
import { type DayReport, dayReport, doubtfulDays } from '../../../src/domain/rollup/day-report.ts';
import { countOf } from '../../../src/domain/shop/counter.ts';
import { type DaySheet, longestStretch } from '../../../src/domain/shop/days.ts';
import { type Shop, shopOf } from '../../../src/domain/shop/shop.ts';
import { aWorkshop, lowered, mended, scrapped } from '../../support/a-shop.ts';
import { stage } from '../../support/workshop.ts';

const day = (text: string) => v.parse(shopDayText, text);
const [sunday, monday, tuesday] = [day('2026-03-01'), day('2026-03-02'), day('2026-03-03')] as const;
const nextDay = 24 * 60;

describe('the day report', () => {
  test('of a day without work is all nought, and its average is not yet known', () => {
    const report = dayReport(aWorkshop().shop, sunday);
    expect(report).toMatchObject({ stages: [], flaws: [], workingDays: 0 });
    for (const row of [report.scrapped, report.made, report.worked, report.finishedFirsts]) {
      expect(row).toEqual({ day: 0, before: 0, average: null });
    }
  });

  test('averages over the earlier days on which something was done, not over the idle ones', () => {
    const shop = aWorkshop();
    shop.tray('ash-copper', 10);
    shop.later(3 * nextDay);
    shop.tray('ash-copper', 5);
    shop.later(nextDay);
    expect(dayReport(shop.shop, day('2026-03-06'))).toMatchObject({
      made: { day: 0, before: 5, average: 7.5 },
      workingDays: 2,
    });
    expect(dayReport(shop.shop, tuesday)).toMatchObject({ made: { day: 0, before: 10, average: 10 } });
  });

  test('work after midnight counts to the evening before, until the hour at which the day begins', () => {
    const shop = aWorkshop({ now: Date.UTC(2026, 2, 3, 2) });
    const tray = shop.tray('ash-copper', 10);
    shop.later(60);
    shop.pass(tray, 'bore');
    expect(dayReport(shop.shop, monday).made.day).toBe(10);
    shop.later(60);
    shop.pass(tray, 'bore');
    const passed = (on: typeof monday) => dayReport(shop.shop, on).stages[0]?.passed.day;
    expect([passed(monday), passed(tuesday)]).toEqual([1, 1]);
  });

  test('what is taken back on Tuesday leaves the report of Monday, on which it was done', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 10);
    const flaw = shop.flaw(tray, 'bore', { why: 'blown', outcome: scrapped(), pieces: 2 });
    shop.later(nextDay);
    shop.undo(flaw);
    expect(dayReport(shop.shop, monday)).toMatchObject({ scrapped: { day: 0 }, flaws: [] });
    expect(dayReport(shop.shop, tuesday)).toMatchObject({ scrapped: { day: 0, before: 0 } });
  });

  test('names each flaw of the day once with its wood, reason and outcome, and none of the day before', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 10);
    shop.flaw(tray, 'bore', { why: 'catch', outcome: mended });
    shop.later(nextDay);
    shop.flaw(tray, 'bore', { why: ['blown', 'gap', 'blown'], outcome: lowered, pieces: 2 });
    expect(dayReport(shop.shop, tuesday).flaws).toEqual([
      { stage: 'bore', species: 'ash', reason: 'blown', outcome: 'second', pieces: 2 },
      { stage: 'bore', species: 'ash', reason: 'gap', outcome: 'second', pieces: 2 },
    ]);
  });

  test('counts a piece lowered to a second once, whatever its reasons, and the firsts and seconds that are finished', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 6, 'autumn');
    shop.pass(tray, 'turn', { pieces: 4 });
    shop.flaw(tray, 'turn', { why: ['catch', 'gap'], outcome: lowered, pieces: 2 });
    shop.pass(tray, 'sand', { pieces: 3 });
    shop.flaw(tray, 'sand', { why: 'scratch', outcome: mended });
    shop.pass(tray, 'sand', { grade: 'second', pieces: 2 });
    expect(dayReport(shop.shop, monday)).toMatchObject({
      seconds: { day: 2 },
      finishedFirsts: { day: 4 },
      finishedSeconds: { day: 2 },
    });
  });
});

describe('the average of the earlier days', () => {
  test('is what each of them adds up to, on whichever day one looks', () => {
    const shop = shopOf(demoShop({ now: Date.UTC(2026, 2, 4, 14) }));
    expect(shop.days.size).toBeGreaterThan(5);
    for (const each of [...shop.days.keys(), day('2199-12-30'), day('1999-01-01')])
      expect(averagesOf(dayReport(shop, each))).toEqual(averagesOneByOne(shop, each));
  });
});

const averagesOf = ({ made, scrapped, stages }: DayReport) => ({
  made: made.average,
  scrapped: scrapped.average,
  passed: Object.fromEntries(stages.map(({ stage, passed }) => [stage, passed.average])),
});

/** The slow way: every earlier day by itself, and no day that is not earlier. */
function averagesOneByOne({ days }: Shop, day: ShopDay) {
  const earlier = [...days].flatMap(([each, sheet]) => (each < day ? [sheet] : []));
  const mean = (measure: (sheet: DaySheet) => number) =>
    earlier.length === 0 ? null : earlier.reduce((sum, sheet) => sum + measure(sheet), 0) / earlier.length;
  const shown = [days.get(day), days.get(dayAfter(day, -1)), ...earlier].flatMap((sheet) =>
    sheet ? [...sheet.passed.keys(), ...sheet.worked.keys()] : [],
  );
  return {
    made: mean(({ made }) => [...made.values()].reduce((sum, pieces) => sum + pieces, 0)),
    scrapped: mean(({ outcomes }) =>
      [...outcomes].reduce((sum, [key, pieces]) => sum + (key.endsWith('|scrapped') ? pieces : 0), 0),
    ),
    passed: Object.fromEntries(
      [...new Set(shown)].map((stage) => [stage, mean(({ passed }) => countOf(passed, stage))]),
    ),
  };
}

describe('a clock in doubt', () => {
  function withDoubt() {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 10);
    shop.doubt('doubtful');
    shop.act({ kind: 'begin-spell', stage: stage.bore });
    const [pass] = shop.pass(tray, 'bore', { pieces: 3 });
    shop.flaw(tray, 'bore', { why: 'catch', outcome: mended });
    shop.later(nextDay);
    const [late] = shop.pass(tray, 'bore');
    shop.doubt('sound');
    if (!pass || !late) throw new Error('two passes');
    return { shop, tray, pass, late };
  }

  test('marks its days by their taps, not by pieces and not by spells, and counts them all the same', () => {
    const { shop } = withDoubt();
    expect([sunday, monday, tuesday].map((each) => dayReport(shop.shop, each).doubtful)).toEqual([0, 2, 1]);
    expect(doubtfulDays(shop.shop)).toEqual([tuesday, monday]);
    expect(dayReport(shop.shop, monday).stages[0]?.passed.day).toBe(3);
  });

  test('no longer marks a day whose taps of that time are taken back', () => {
    const { shop, late } = withDoubt();
    shop.undo([late]);
    expect(doubtfulDays(shop.shop)).toEqual([monday]);
    expect(shop.shop.days.has(tuesday)).toBe(false);
  });

  test('marks nothing by an undo alone', () => {
    const shop = aWorkshop();
    const pass = shop.pass(shop.tray('ash-copper', 2), 'bore');
    shop.doubt('doubtful');
    shop.undo(pass);
    expect(shop.log.at(-1)).toMatchObject({ kind: 'voided', clock: 'doubtful' });
    expect(doubtfulDays(shop.shop)).toEqual([]);
  });
});

describe('the time worked on a day', () => {
  function timed(elapsed: number | null) {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 6);
    shop.pace(elapsed);
    const pass = shop.pass(tray, 'bore');
    return { shop, tray, pass, worked: () => dayReport(shop.shop, monday).worked.day };
  }

  test.each([
    ['of a minute counts', 60_000, 60_000],
    ['of a quarter of an hour counts just so', longestStretch, 15 * 60_000],
    ['that is longer is a break and does not count', longestStretch + 1, 0],
    ['that nobody measured does not count', null, 0],
  ])('a stretch %s', (_, elapsed, counted) => {
    expect(timed(elapsed).worked()).toBe(counted);
  });

  test('adds passing, flawing, loading and the end of a spell, each to its stage', () => {
    const { shop, tray, worked } = timed(10_000);
    shop.flaw(tray, 'bore', { why: 'catch', outcome: mended });
    shop.load(tray, 'glue');
    shop.act({ kind: 'end-spell', stage: stage.glue });
    const at = dayReport(shop.shop, monday).stages.map((each) => [each.stage, each.worked.day]);
    expect(at).toEqual([
      ['bore', 20_000],
      ['glue', 20_000],
    ]);
    expect(worked()).toBe(40_000);
  });

  test('goes with the tap that is taken back', () => {
    const { shop, pass, worked } = timed(10_000);
    shop.undo(pass);
    expect(worked()).toBe(0);
  });
});
