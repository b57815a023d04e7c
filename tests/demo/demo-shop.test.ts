import { describe, expect, test } from 'vitest';
import { demoDayStart, demoZone, variants, wantedForFair } from '../../shared/demo/demo-facts.ts';
import { demoShop } from '../../shared/demo/demo-shop.ts';
import { discWornFrom, failingWood } from '../../shared/demo/flaw-rates.ts';
import type { ShopEvent } from '../../src/domain/log/event.ts';
import type { StageId } from '../../src/domain/log/ids.ts';
import { readEvent } from '../../src/domain/log/read-event.ts';
import { shopDay, zoneAt } from '../../src/domain/log/zone.ts';
import { holds } from '../../src/domain/rollup/holds.ts';
import { yieldBySpecies } from '../../src/domain/rollup/species-yield.ts';
import { countsToCheck } from '../../src/domain/rollup/waiting.ts';
import { workInProcess } from '../../src/domain/rollup/wip.ts';
import { liveStages } from '../../src/domain/route/live-stages.ts';
import { shopOf } from '../../src/domain/shop/shop.ts';
import { tapTable } from '../../src/domain/study/log-of-taps.ts';
import { marksOf } from '../../src/domain/study/marks.ts';
import { studyOf } from '../../src/domain/study/study.ts';
import { routesIn } from '../../src/domain/study/study-routes.ts';
import { partRows } from '../../src/screens/stores/stores-view.ts';

const wednesdayAfternoon = Date.UTC(2026, 2, 4, 14);
const events = demoShop({ now: wednesdayAfternoon });
const shop = shopOf(events);
const stages = liveStages(shop.registers);

test('the same moment and seed tell the same story, another seed tells another', () => {
  expect(demoShop({ now: wednesdayAfternoon })).toEqual(events);
  expect(demoShop({ now: wednesdayAfternoon, seed: 7 })).not.toEqual(events);
});

test('every event of the demo passes the schema of the log', () => {
  expect(events.map(readEvent).filter(({ kind }) => kind !== 'known')).toEqual([]);
});

test('every event has the zone and the day of its own moment, in the weeks when the clocks change too', () => {
  // 25 October 2026: the last Sunday of October (IANA Time Zone Database, file europe, rule EU).
  const over = demoShop({ now: Date.UTC(2026, 9, 30, 14) });
  expect(new Set(over.map(({ zone }) => zone.offset))).toEqual(new Set([60, 0]));
  for (const { zone, day, stamp } of over) {
    expect(zone).toEqual(zoneAt(stamp.wall, demoZone));
    expect(day).toBe(shopDay(stamp.wall, { zone: demoZone, startHour: demoDayStart }));
  }
});

test('pieces stand at every stage of the route, and no count is below zero', () => {
  const standing = new Set(workInProcess(shop).map(({ stage }) => stage));
  expect(stages.filter((stage) => !standing.has(stage))).toEqual([]);
  expect(countsToCheck(shop)).toEqual([]);
});

test('360 hafts are wanted, in six woods with two ferrules', () => {
  expect(variants.reduce((sum, { good }) => sum + good, 0)).toBe(wantedForFair);
  expect(new Set(variants.map(({ wood }) => wood.id)).size).toBe(6);
  expect(new Set(variants.map(({ ferrule }) => ferrule)).size).toBe(2);
});

test('the batch is under way: some are finished as firsts and seconds, some are scrapped, most are in work', () => {
  const woods = yieldBySpecies(shop, stages);
  const sum = (measure: 'firsts' | 'seconds' | 'scrapped' | 'inFlight') =>
    woods.reduce((all, wood) => all + wood[measure], 0);
  expect(sum('firsts')).toBeGreaterThan(40);
  expect(sum('seconds')).toBeGreaterThan(0);
  expect(sum('scrapped')).toBeGreaterThan(5);
  expect(sum('inFlight')).toBeGreaterThan(wantedForFair / 2);
});

test('made and corrected pieces are in work, finished or scrapped', () => {
  for (const wood of yieldBySpecies(shop, stages)) {
    const { made, corrected, inFlight, firsts, seconds, scrapped } = wood;
    expect(made + corrected, wood.species).toBe(inFlight + firsts + seconds + scrapped);
  }
});

test('one wood fails far more often than any other at rough turning', () => {
  const shares = yieldBySpecies(shop, stages).map(({ species, stages: each }) => {
    const { share } = each.find(({ stage }) => stage === 'rough-turn') ?? { share: { of: 0, out: 0 } };
    return { species: `${species}`, failed: 1 - share.out / share.of };
  });
  const worst = shares.toSorted((a, b) => b.failed - a.failed);
  expect(worst[0]?.species).toBe(failingWood);
  expect(worst[0]?.failed).toBeGreaterThan(2 * (worst[1]?.failed ?? 0));
});

test('sanding scratches since its disc is worn', () => {
  const days = [...new Set(events.filter(({ kind }) => kind === 'passed').map(({ day }) => day))].sort();
  const worn = days[discWornFrom] ?? '';
  const rate = (wanted: (event: ShopEvent) => boolean) => {
    const sanded = events.filter(
      (event) =>
        (event.kind === 'passed' || event.kind === 'flawed') && event.stage === 'sand' && wanted(event),
    );
    return sanded.filter(({ kind }) => kind === 'flawed').length / sanded.length;
  };
  expect(rate(({ day }) => day >= worn)).toBeGreaterThan(3 * rate(({ day }) => day < worn));
});

const studied = (log: readonly ShopEvent[]) => {
  const routes = routesIn(shopOf(log).registers);
  return studyOf(tapTable({ runs: [], events: log }), {
    ...{ routes, filter: {}, comparison: null, answered: [], charted: null },
  });
};

describe.each([
  ['a Monday', 2],
  ['a Tuesday', 3],
  ['a Wednesday', 4],
  ['a Thursday', 5],
  ['a Friday', 6],
  ['a Sunday', 8],
])('opened on %s', (_, day) => {
  test.each([9, 13, 18])('at %i o’clock there is one signal to find: the scratches', (hour) => {
    const { signals } = studied(demoShop({ now: Date.UTC(2026, 2, day, hour) })).signals;
    expect(
      signals.map(({ series, direction }) => [series.stage, series.species, series.of, direction]),
    ).toEqual([['sand', null, { kind: 'reason', reason: 'scratch' }, 'worse']]);
  });
});

test('before it a gouge was ground anew, with many pieces turned before and since, to be compared', () => {
  const [mark, ...others] = marksOf(shop.registers, { stage: 'rough-turn' as StageId, species: null });
  expect(others).toEqual([]);
  expect(mark?.note).toBe('Re-ground the gouge');
  const turned = events.filter((event) => event.kind === 'passed' && event.stage === 'rough-turn');
  const before = turned.filter(({ stamp }) => stamp.wall < (mark?.at ?? 0)).length;
  expect(before).toBeGreaterThan(100);
  expect(turned.length - before).toBeGreaterThan(100);
});

test('both hands learn to shape: about seven minutes for the first piece, about two in the end', () => {
  const shaping = studied(events).learning.filter(({ stage: at }) => at === 'shape');
  expect(shaping.map(({ person }) => person)).toEqual(['ida', 'tam']);
  for (const { curve, points } of shaping) {
    expect(curve.rate).toBeGreaterThan(0.8);
    expect(curve.rate).toBeLessThan(0.9);
    expect(curve.firstUnit).toBeGreaterThan(5.5);
    expect(curve.firstUnit).toBeLessThan(9);
    expect(points.at(-1)?.minutes).toBeLessThan(3);
  }
});

test('a prized piece is a tray of one; a tray was split, two were joined, one was recounted, taps were taken back', () => {
  const kinds = new Set(events.map(({ kind }) => kind));
  for (const kind of ['tray-split', 'tray-joined', 'recounted', 'voided', 'spell-begun', 'spell-ended']) {
    expect([...kinds], kind).toContain(kind);
  }
  expect(events.some((event) => event.kind === 'tray-made' && event.moves[0]?.pieces === 1)).toBe(true);
});

test('the stores have parts for all in work; one part is low, saved cores are to be cleaned, ferrules were counted', () => {
  const rows = partRows(shop);
  expect(rows.map(({ id }) => `${id}`)).toEqual(['awl-core', 'copper-ferrule', 'nickel-ferrule']);
  for (const { id, onHand, free, told } of rows) {
    expect(told, id).toBe(true);
    expect(onHand, id).toBeGreaterThan(0);
    expect(free, id).toBeGreaterThanOrEqual(0);
  }
  expect(rows.map(({ state }) => state)).toEqual(['fine', 'fine', 'low']);
  expect(rows.find(({ id }) => id === 'awl-core')?.toClean).toBeGreaterThan(0);
  const kinds = new Set(events.map(({ kind }) => kind));
  for (const kind of ['parts-received', 'parts-counted', 'parts-cleaned'])
    expect([...kinds], kind).toContain(kind);
});

describe.each([
  ['on a Wednesday afternoon', wednesdayAfternoon],
  ['on a Sunday', Date.UTC(2026, 2, 8, 12)],
  ['at three in the morning', Date.UTC(2026, 2, 5, 3)],
  ['on the day when the clocks go back', Date.UTC(2026, 9, 25, 11)],
  ['on the Monday after the clocks went forward', Date.UTC(2026, 2, 30, 7, 5)],
])('opened %s', (_, now) => {
  const log = demoShop({ now });

  test('nothing has happened yet that lies ahead', () => {
    expect(Math.max(...log.map(({ stamp }) => stamp.wall))).toBeLessThanOrEqual(now);
  });

  test('something is in clamps or on the rack', () => {
    expect(holds(shopOf(log)).length).toBeGreaterThan(0);
  });

  test('each station numbers its events without a gap, in the order of their stamps', () => {
    for (const station of new Set(log.map((event) => event.station))) {
      const own = log.filter((event) => event.station === station);
      expect(own.map(({ seq }) => seq)).toEqual(own.map((_each, index) => index + 1));
      expect(own.map(({ stamp }) => stamp.wall)).toEqual(
        own.map(({ stamp }) => stamp.wall).toSorted((a, b) => a - b),
      );
    }
  });
});
