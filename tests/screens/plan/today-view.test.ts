import { describe, expect, test } from 'vitest';
import type { ShopDay } from '../../../src/domain/log/ids.ts';
import type { PlanStudy } from '../../../src/domain/plan/plan-study.ts';
import { batchTargets } from '../../../src/domain/rollup/batch-targets.ts';
import { factOf } from '../../../src/domain/shop/registers.ts';
import { todayView } from '../../../src/screens/plan/today-view.ts';
import { aWorkshop, mondayMorning, type TestShop } from '../../support/a-shop.ts';
import { batch, clamps, person, species, stage } from '../../support/workshop.ts';

const hour = 3_600_000;
const usual = { from: 8 * 60, to: 17 * 60, breakMinutes: 0 };
const week = [usual, usual, usual, usual, usual, null, null];

function aShopWithHours(): TestShop {
  const shop = aWorkshop();
  shop.set({ register: 'person', id: person.edda, value: { name: 'Edda', retired: false, week } });
  return shop;
}

const time = (median: number) => ({ median, low: median, high: median, mean: median, pieces: 20 });
const study = (part: Partial<PlanStudy> = {}): PlanStudy => ({
  ...{
    starts: [],
    times: [],
    costs: null,
    constraint: null,
    planned: null,
    reviews: [],
    judged: 1,
    hours: [],
  },
  ...part,
});

const monday = { now: mondayMorning, today: '2026-03-02' as ShopDay };
const todayOf = (shop: TestShop, found: PlanStudy | null = study(), at = monday) =>
  todayView(shop.shop, { ...at, zone: 'Europe/London', study: found, batches: batchTargets(shop.shop) });
const inWords = ({ next }: ReturnType<typeof todayOf>) =>
  next.map(({ what, stage: at, pieces, why }) => `${what} ${pieces} ${at}: ${why.kind}`);

describe('today', () => {
  test('loads what the clamps take, by when nobody would be there to load it', () => {
    const shop = aShopWithHours();
    const tray = shop.tray('ash-copper', 12);
    shop.pass(tray, 'bore', { pieces: 12 });
    const { groups } = todayOf(shop);
    expect(groups).toHaveLength(1);
    expect(groups[0]).toMatchObject({ untimed: [stage.glue], timetable: { left: 0 } });
    // Eight clamps and 12 h of cure: eight until 17:00 cure over night, the other four next morning (London is UTC).
    expect(groups[0]?.advice).toMatchObject({
      kind: 'load',
      round: { stage: 'glue', pieces: clamps, from: mondayMorning },
      by: mondayMorning + 8 * hour - 60_000,
      more: 0,
      overNight: true,
    });
    expect(groups[0]?.timetable.rounds.map(({ pieces }) => pieces)).toEqual([8, 4]);
  });

  test('loading takes the time that it has taken, of the slowest wood', () => {
    const shop = aShopWithHours();
    const tray = shop.tray('ash-copper', 12);
    shop.pass(tray, 'bore', { pieces: 12 });
    const loading = (wood: keyof typeof species, median: number) =>
      ({ stage: stage.glue, species: species[wood], of: 'loading', time: time(median) }) as never;
    const { groups } = todayOf(shop, study({ times: [loading('ash', 3), loading('plum', 6)] }));
    const round = groups[0]?.timetable.rounds[0];
    expect(groups[0]?.untimed).toEqual([]);
    expect((round?.loaded ?? 0) - (round?.from ?? 0)).toBe(8 * 6 * 60_000);
  });

  test('what is cured and in the way comes first, then clamps, then what feeds the bottleneck, then the rest', () => {
    const shop = aShopWithHours();
    const tray = shop.tray('ash-copper', 30);
    shop.pass(tray, 'bore', { pieces: 20 });
    shop.load(tray, 'glue', { pieces: 8 });
    shop.later(13 * 60);
    shop.tray('plum-copper', 3, 'autumn');
    const times = [{ stage: stage.turn, species: species.ash, of: 'work', time: time(5) } as never];
    const hours = [
      {
        ...{ batch: batch.spring, minutes: 300, unknown: [] },
        stages: [
          { stage: stage.turn, minutes: 250 },
          { stage: stage.bore, minutes: 50 },
        ],
      },
    ];
    const now = mondayMorning + 24 * hour;
    expect(inWords(todayOf(shop, study({ times, hours }), { now, today: '2026-03-03' as ShopDay }))).toEqual([
      'unload 8 glue: places-wanted',
      'load 8 glue: places-free',
      'work 3 turn: bottleneck',
      'work 10 bore: feeds',
    ]);
  });

  test('a batch that will be late goes before what is furthest along', () => {
    const shop = aShopWithHours();
    const spring = factOf(shop.shop.registers, { register: 'batch', id: batch.spring });
    if (!spring) throw new Error('the workshop has a spring batch');
    shop.set({ register: 'batch', id: batch.spring, value: { ...spring, due: '2026-03-01' as ShopDay } });
    shop.tray('ash-copper', 5);
    shop.tray('ash-copper', 5, 'autumn');
    expect(inWords(todayOf(shop))).toEqual(['work 5 bore: due-first', 'work 5 turn: furthest']);
  });

  test('without anybody’s hours no round has a time, and what is next is told all the same', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 12);
    shop.pass(tray, 'bore', { pieces: 3 });
    const today = todayOf(shop, null);
    expect(today.hasHours).toBe(false);
    expect(today.groups[0]?.advice).toEqual({ kind: 'no-time' });
    expect(inWords(today)).toEqual(['work 9 bore: furthest']);
  });
});
