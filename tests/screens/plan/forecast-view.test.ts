import { describe, expect, test } from 'vitest';
import type { ShopDay } from '../../../src/domain/log/ids.ts';
import { forecast } from '../../../src/domain/plan/forecast/forecast-desk.ts';
import type { ForecastHistory } from '../../../src/domain/plan/forecast/forecast-history.ts';
import { historyAsked } from '../../../src/domain/plan/forecast/history-asked.ts';
import { withHistory } from '../../../src/domain/plan/forecast/planned-model.ts';
import { shopToPlan } from '../../../src/domain/plan/forecast/shop-to-plan.ts';
import type { StartAnswer } from '../../../src/domain/plan/starts/start-study.ts';
import { batchTargets } from '../../../src/domain/rollup/batch-targets.ts';
import {
  dayTyped,
  forecastPlan,
  promisesBy,
  stagesBehind,
  stripOf,
} from '../../../src/screens/plan/forecast-view.ts';
import {
  changesOf,
  emptyWhatIf,
  paybackOf,
  type WhatIfDraft,
  whatIfProblems,
} from '../../../src/screens/plan/what-if-view.ts';
import { aWorkshop, mondayMorning, type TestShop } from '../../support/a-shop.ts';
import { batch, clamps, person, species, stage, variant } from '../../support/workshop.ts';

const hour = 3_600_000;
const usual = { from: 8 * 60, to: 17 * 60, breakMinutes: 60 };
const week = [usual, usual, usual, usual, usual, null, null];
const day = (text: string) => text as ShopDay;
const today = day('2026-03-02');

const history: ForecastHistory = {
  ...{ trials: [], back: [], days: [] },
  times: [
    {
      ...{ stage: stage.turn, species: species.ash, of: 'work' },
      time: { mean: 5, median: 5, cv: 0.3, pieces: 40, minutes: 200 },
    } as ForecastHistory['times'][number],
  ],
};

function aShopWithHours(): TestShop {
  const shop = aWorkshop();
  shop.set({ register: 'person', id: person.edda, value: { name: 'Edda', retired: false, week } });
  return shop;
}

interface Known {
  readonly starts?: readonly StartAnswer[];
  readonly times?: ForecastHistory['times'];
  readonly until?: ShopDay;
}

/** The plan of the spring batch, by what its log would tell. */
function planOf({ shop }: TestShop, { starts, times = history.times, until }: Known = {}) {
  const at = { now: mondayMorning, today, zone: 'Europe/London' };
  const batches = batchTargets(shop).filter((each) => each.batch === batch.spring);
  const half = shopToPlan(shop, { ...at, goal: 'firsts', batches });
  const model = { history: { ...historyAsked(shop, at), each: 12 }, shop: half };
  const planned = withHistory(
    { ...model, withStarts: starts !== undefined },
    { history: { ...history, times }, starts: starts ?? [] },
  );
  return forecastPlan(shop, { ...at, batches, goal: 'firsts', until, shop: half, planned });
}

function asked(found: ReturnType<typeof planOf>) {
  if (found.kind !== 'ask') throw new Error(found.why);
  return found;
}

describe('the plan of a shop', () => {
  test('has its clamps, hours, cures and trays where they stand', () => {
    const shop = aShopWithHours();
    const tray = shop.tray('ash-copper', 12);
    shop.pass(tray, 'bore', { pieces: 10 });
    shop.load(tray, 'glue', { pieces: 4 });
    const { question, about } = asked(planOf(shop));
    const { plan } = question;
    expect(plan.resources).toMatchObject([{ capacity: clamps }]);
    const glue = about.stages.indexOf(stage.glue);
    expect(plan.stages[glue]).toEqual({ kind: 'hold', resource: 0, cureMinutes: 720 });
    expect(plan.people).toHaveLength(1);
    // Monday, nine o'clock: until seventeen, with an hour off that began halfway from eight; London is UTC in March.
    expect(plan.people[0]?.hours.slice(0, 2)).toEqual([
      { from: mondayMorning - hour, to: mondayMorning + 3 * hour },
      { from: mondayMorning + 4 * hour, to: mondayMorning + 8 * hour },
    ]);
    const lots = plan.lots.map(({ step, firsts, at }) => [step, firsts, at]);
    expect(lots).toHaveLength(3);
    expect(lots).toEqual(
      expect.arrayContaining([
        [0, 2, 'waiting'],
        [1, 6, 'waiting'],
        [1, 4, 'held'],
      ]),
    );
    expect(about.notes.some((note) => note.kind === 'stage-without-time' && note.stage === stage.sand)).toBe(
      true,
    );
  });

  test('is not asked without a time, or with nothing in work; advised starts are something', () => {
    const shop = aShopWithHours();
    expect(planOf(shop)).toEqual({ kind: 'cannot', why: 'nothing' });
    shop.tray('ash-copper', 12);
    expect(planOf(shop, { times: [] })).toEqual({
      kind: 'cannot',
      why: 'no-history',
    });
    const key = `${batch.spring}/${variant['ash-copper']}`;
    const smallest = { kind: 'starts', point: { starts: 20 } };
    const starts = [{ key, smallest } as StartAnswer];
    const { question, about } = asked(planOf(shop, { starts }));
    expect(about.starts).toBe(20);
    expect(question.plan.lots.map(({ firsts }) => firsts)).toEqual([12, 12, 8]);
  });

  test('a target of ten thousand is worked off fewer times, so that it ends', () => {
    const shop = aShopWithHours();
    shop.tray('ash-copper', 12);
    expect(asked(planOf(shop)).question.replications).toBe(2000);
    const smallest = { kind: 'starts', point: { starts: 12_000 } };
    const starts = [{ key: `${batch.spring}/${variant['ash-copper']}`, smallest } as StartAnswer];
    const { question } = asked(planOf(shop, { starts }));
    expect(question.replications).toBe(200);
    expect(question.plan.lots).toHaveLength(1001);
  });

  test('without hours the forecast says so, and by the last mark no more is promised than there is', () => {
    const shop = aWorkshop();
    shop.tray('ash-copper', 12);
    expect(forecast(asked(planOf(shop)).question)).toEqual({ kind: 'no-hands' });

    const open = aShopWithHours();
    open.tray('ash-copper', 12);
    const { question, about } = asked(planOf(open, { until: day('2026-05-01') }));
    const found = forecast({ ...question, replications: 100 });
    if (found.kind !== 'forecast') throw new Error(found.kind);
    const spring = batchTargets(open.shop).find((each) => each.batch === batch.spring);
    if (!spring) throw new Error('the workshop has a batch');
    const by = (until: string) =>
      promisesBy(open.shop, {
        ...{ forecast: found, keys: about.keys, batch: spring, day: day(until), zone: 'Europe/London' },
      });
    const row = by('2026-05-01')?.rows.find(({ target }) => target.variant === variant['ash-copper']);
    expect(row?.safe).toBeLessThanOrEqual(row?.middle ?? 0);
    expect(row?.high).toBeLessThanOrEqual(12);
    expect(row?.high).toBeGreaterThan(0);
    expect(by('2026-03-02')?.all).toMatchObject({ low: 0 });
    expect(by('2028-01-01')).toBeUndefined();
    const behind = stagesBehind(question.plan, { ids: about.stages, history });
    expect(behind.find((each) => each.stage === stage.turn)).toMatchObject({ timed: 40, tried: 0 });
    expect(behind.find((each) => each.stage === stage.glue)).toMatchObject({ timed: 0, cureMinutes: 720 });
  });

  test('what the log is asked: the days of the last weeks that have hours, and what waits for hands', () => {
    const shop = aShopWithHours();
    const tray = shop.tray('ash-copper', 12);
    shop.pass(tray, 'bore', { pieces: 8 });
    const found = historyAsked(shop.shop, { today, zone: 'Europe/London' });
    // 60 days before a Monday: eight weeks of five days, and Thursday and Friday before them.
    expect(found.days).toHaveLength(42);
    expect(found.days.at(-1)).toEqual({
      ...{ day: '2026-02-27', minutes: 480 },
      ...{ from: mondayMorning - 73 * hour, to: mondayMorning - 64 * hour },
    });
    expect(found).toMatchObject({ waiting: 4, each: 12, people: 1 });
    expect(found.bench).not.toContain(stage.glue);
  });
});

describe('the calendar', () => {
  const dates = { today, due: null, at50: null, at85: null, at95: null };
  test('is of whole weeks from Monday on, and says how likely each day is', () => {
    const { each, cells } = stripOf({
      ...{ ...dates, today: day('2026-03-04'), due: day('2026-03-12') },
      ...{ at50: day('2026-03-06'), at85: day('2026-03-09'), at95: day('2026-03-10') },
    });
    expect(each).toBe('day');
    expect(cells.map(({ from }) => from).slice(0, 2)).toEqual(['2026-03-02', '2026-03-03']);
    expect(cells).toHaveLength(14);
    expect(cells.map(({ likeliness }) => likeliness).join(' ')).toBe(
      `${'before '.repeat(4)}at50 at50 at50 at85 at95 ${'after '.repeat(5)}`.trim(),
    );
    expect(cells.filter(({ marks }) => marks.length > 0).map(({ from, marks }) => [from, ...marks])).toEqual([
      ['2026-03-04', 'today'],
      ['2026-03-06', 'at50'],
      ['2026-03-09', 'at85'],
      ['2026-03-10', 'at95'],
      ['2026-03-12', 'due'],
    ]);
  });

  test('is of weeks when it is long, and ends also for dates beyond it', () => {
    const { each, cells } = stripOf({ ...dates, at50: day('2026-09-01') });
    expect(each).toBe('week');
    expect(cells.find(({ marks }) => marks.includes('at50'))?.from).toBe('2026-08-31');
    expect(stripOf({ ...dates, due: day('9999-01-01') }).cells).toHaveLength(110);
  });

  test('only days of the next twelve months can be asked about', () => {
    expect(dayTyped('2026-03-02', today)).toBe('2026-03-02');
    expect(dayTyped('2026-03-01', today)).toBeUndefined();
    expect(dayTyped('2027-03-04', today)).toBeUndefined();
    expect(dayTyped('', today)).toBeUndefined();
  });
});

describe('what if', () => {
  const at = { today, zone: 'Europe/London', now: mondayMorning };
  const changes = (draft: Partial<WhatIfDraft>) => changesOf({ ...emptyWhatIf, ...draft }, at);
  test('what is typed whole and right is a change, all else is none', () => {
    expect(changes({})).toEqual([]);
    expect(changes({ resource: '0', places: '12' })).toEqual([{ kind: 'places', resource: 0, capacity: 12 }]);
    expect(changes({ places: '12' })).toEqual([]);
    expect(changes({ resource: '0', places: '0' })).toEqual([]);
    expect(changes({ hold: '1', cureHours: '1,5' })).toEqual([{ kind: 'cure', stage: 1, minutes: 90 }]);
    expect(changes({ stage: '2', percent: '20', variant: '0', fewer: '5' })).toEqual([
      { kind: 'faster', stage: 2, percent: 20 },
      { kind: 'fewer', variant: 0, pieces: 5 },
    ]);
    const [helper] = changes({ saturday: '4' });
    if (helper?.kind !== 'helper') throw new Error('a helper was asked for');
    const nine = mondayMorning + 5 * 24 * hour;
    expect(helper.hours[0]).toEqual({ from: nine, to: nine + 4 * hour });
    // The clocks go forward on 29 March: nine o'clock stays nine o'clock.
    expect(helper.hours[4]?.from).toBe(nine + 28 * 24 * hour - hour);
    expect(
      Object.keys(whatIfProblems({ ...emptyWhatIf, percent: '96', price: 'x', saturday: '15' })),
    ).toEqual(['percent', 'saturday', 'price']);
  });

  test('a purchase pays by the hours that it saves on each good piece', () => {
    const saved = { low: -20, middle: -10, high: 5 };
    // 10 h at 30.00 on 100 pieces save 3.00 each: 900.00 take 300 pieces, three months of 100. At best 6.00: 150.
    expect(paybackOf({ price: '900', monthly: '100' }, { hours: saved, good: 100, rate: 3000 })).toEqual({
      ...{ kind: 'after', pieces: { soonest: 150, likely: 300, latest: null } },
      months: { soonest: 1.5, likely: 3, latest: null },
    });
    expect(paybackOf({ price: '', monthly: '100' }, { hours: saved, good: 100, rate: 3000 })).toBeUndefined();
    expect(paybackOf({ price: '900', monthly: '100' }, { hours: saved, good: 0, rate: 1 })).toBeUndefined();
  });
});
