/**
 * Whether dates and promises hold: shops are stopped half-way, the forecast learns what their taps tell by then, and the
 * shops go on to their end. What happens in them is worked out by `work-off.ts`, which knows nothing of the forecast.
 */
import { type Random, seededRandom } from '../../src/domain/chance/seeded-random.ts';
import { forecast } from '../../src/domain/plan/forecast/forecast-desk.ts';
import { minutesBeliefs } from '../../src/domain/plan/forecast/minutes-beliefs.ts';
import {
  modelOfShop,
  type ShopToPlan,
  type StandingToPlan,
} from '../../src/domain/plan/forecast/model-of-shop.ts';
import { handsWanted } from '../../src/domain/study/hands-wanted.ts';
import { pieceTimes } from '../../src/domain/study/piece-times.ts';
import { sentBack } from '../../src/domain/study/sent-back.ts';
import { survivalBySpecies } from '../../src/domain/study/survival.ts';
import { busyByDay, type UsualMinutes, usualByDay } from '../../src/domain/study/usual-by-day.ts';
import { type CalibrationRow, calibrationRow, meanOf, type Simulation } from './row.ts';
import { dayOf, stageNamed, tapsOfShop, variantNamed, woodNamed } from './taps-of-shop.ts';
import { type TrueShop, trueShop, woods } from './true-shop.ts';
import { isOpen, openBetween, openShop, traysToMake, type WorkedShop } from './work-off.ts';

const [hour, day] = [3_600_000, 86_400_000];
const replications = 400;
const confidence = 0.9;
/** Days that the forecast looks ahead. */
const ahead = 150;

export function calibrate({ seed, shops }: Simulation): readonly CalibrationRow[] {
  const random = seededRandom(seed);
  const looks = Array.from({ length: shops }, () => lookAt(random));
  const row = (id: string, what: string, values: readonly number[], band: CalibrationRow['band']) =>
    calibrationRow({ id, what, value: meanOf(values), band, shops: looks.length });
  const scene = 'stopped half-way';
  const inTime = (level: 'at50' | 'at85' | 'at95') =>
    looks.map(({ done, dates }) => (done <= (dates[level] ?? Number.POSITIVE_INFINITY) ? 1 : 0));
  const promises = looks.flatMap((each) => each.promises);
  return [
    row(
      'forecast-date-50',
      `${scene}: share of shops that are done by their 50 % date`,
      inTime('at50'),
      [0.45, 0.55],
    ),
    row('forecast-date-85', 'the same, by their 85 % date', inTime('at85'), [0.82, 0.88]),
    row('forecast-date-95', 'the same, by their 95 % date', inTime('at95'), [0.93, 0.97]),
    row(
      'forecast-promise-90',
      'promises at 90 % of a number of one variant, on a day before the 85 % date: share that is kept',
      promises.map(({ kept }) => kept),
      [0.88, 0.93],
    ),
    row(
      'forecast-promise-stated',
      'the same less the chance that was stated, which is more than 90 % as pieces come by the tray',
      promises.map(({ kept, chance }) => kept - chance),
      [-0.03, 0.03],
    ),
    row(
      'forecast-promise-all',
      'promises at 90 % of a number of all variants together: share that is kept',
      looks.flatMap(({ promise }) => promise.map(({ kept }) => kept)),
      null,
    ),
    row(
      'forecast-days',
      'the same: days from now to the end',
      looks.map(({ days }) => days),
      null,
    ),
  ];
}

function lookAt(random: Random) {
  const shop = trueShop(random);
  const trays = traysToMake(random);
  const world = openShop(shop, { trays, random });
  const pieces = trays.reduce((sum, tray) => sum + tray.pieces, 0);
  const now = halfWay(world, { pieces, share: 0.3 + 0.3 * random() });
  const shopToPlan = whatIsKnown({ shop, world, trays, now });
  const model = modelOfShop(shopToPlan);
  if (model.kind !== 'model') throw new Error(model.kind);
  const marks = Array.from(
    { length: ahead },
    (_, at) => Math.floor(now / day) * day + (at + 1) * day + 17 * hour,
  );
  const found = forecast({
    ...{ plan: model.plan, marks, replications, confidence },
    seed: Math.floor(random() * 2 ** 31),
  });
  if (found.kind !== 'forecast') throw new Error(found.kind);
  world.workUntil(Number.POSITIVE_INFINITY);
  const done = Math.max(...world.taps.map(({ at }) => at));
  const last = found.marks.findIndex(({ at }) => at >= (found.done.at85 ?? 0));
  const mark = Math.floor(random() * (last + 1));
  const at = found.marks[mark];
  const held = (good: number, finished: number, of = at?.all) =>
    of && of.safe > finished ? [{ kept: good >= of.safe ? 1 : 0, chance: of.chance }] : [];
  const goods = shopToPlan.variants.map((_, wood) => goodOf(world, { wood, by: at?.at ?? 0 }));
  const sumOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);
  return {
    ...{ done, dates: found.done, days: (done - now) / day },
    promise: held(sumOf(goods), sumOf(shopToPlan.variants.map(({ finished }) => finished))),
    promises: shopToPlan.variants.flatMap(({ finished }, wood) =>
      held(goods[wood] ?? 0, finished, at?.variants[wood]),
    ),
  };
}

/** The evening of the first day on which this share of the pieces is finished. */
function halfWay(world: WorkedShop, { pieces, share }: { pieces: number; share: number }): number {
  for (let evening = 18 * hour; ; evening += day) {
    world.workUntil(evening);
    const spots = world.spots(evening).flatMap((tray) => tray.spots);
    if (spots.filter(({ stage }) => stage === 8).length >= share * pieces) return evening;
  }
}

interface Stopped {
  readonly shop: TrueShop;
  readonly world: WorkedShop;
  readonly trays: readonly { readonly wood: number }[];
  readonly now: number;
}

/** What the app has by then: its taps, and where pieces stand. */
function whatIsKnown({ shop, world, now }: Stopped): ShopToPlan {
  const table = tapsOfShop(world.taps, now);
  const route = shop.stages.map((_, stage) => stageNamed(stage));
  const times = pieceTimes(table, {});
  const usual = minutesBeliefs(times);
  const usualOf: UsualMinutes = (stage, species, of) => usual?.(stage, species, of).median;
  const [byDay, busy] = [usualByDay(table, usualOf), busyByDay(table, usualOf)];
  const standings = standingsAt(world, now);
  const bench = new Set(route.filter((_, at) => shop.stages[at]?.cureHours === null));
  const wanted = handsWanted(table, {
    ...{ routes: { stages: route, byBatch: new Map() }, bench, each: 9, people: shop.people },
    waiting: standings.reduce((sum, { place, pieces }) => sum + (bench.has(place.stage) ? pieces : 0), 0),
  });
  const openDays = Array.from({ length: Math.ceil(now / day) }, (_, at) => at * day).filter((at) =>
    isOpen(at + 9 * hour),
  );
  return {
    ...{ now, goal: 'firsts', starts: [] },
    stages: shop.stages.map(({ cureHours }, at) =>
      cureHours === null
        ? { id: stageNamed(at), kind: 'work', resource: null }
        : { id: stageNamed(at), kind: 'hold', resource: at, cureMinutes: 60 * cureHours },
    ),
    resources: shop.stages.map(({ room }, at) => ({ name: `room ${at}`, capacity: room })),
    people: Array.from({ length: shop.people }, () => shiftsFrom(now)),
    variants: Array.from({ length: woods }, (_, wood) => ({
      ...{ id: variantNamed(wood), species: woodNamed(wood), route, wanted: 0, due: null },
      finished: goodOf(world, { wood, by: now }),
    })),
    standings,
    trials: survivalBySpecies(table, { routes: { stages: route, byBatch: new Map() } }),
    back: sentBack(table),
    times,
    days: openDays.map((at) => ({
      hours:
        (wanted({ from: at + 8 * hour, to: at + 17 * hour }) * shop.people * openBetween(at, at + day)) /
        60_000,
      busy: busy.get(dayOf(at)) ?? 0,
      usual: byDay.get(dayOf(at)) ?? 0,
    })),
  };
}

function shiftsFrom(now: number) {
  const today = Math.floor(now / day) * day;
  return Array.from({ length: 2 * ahead }, (_, at) => today + at * day)
    .filter((at) => isOpen(at + 9 * hour))
    .map((at) => ({ from: at + 8 * hour, to: at + 17 * hour, breakMinutes: 60 }));
}

function standingsAt(world: WorkedShop, now: number): readonly StandingToPlan[] {
  const counts = new Map<string, StandingToPlan>();
  for (const { wood, tray, spots } of world.spots(now))
    for (const { stage, second, redo, held } of spots) {
      if (stage === null || stage === 8) continue;
      const about = {
        stage: stageNamed(stage),
        grade: second ? ('second' as const) : ('first' as const),
        redo: redo === null ? null : stageNamed(redo),
      };
      const place =
        held === null ? { at: 'waiting' as const, ...about } : { at: 'held' as const, ...about, ready: held };
      const key = `${tray}|${JSON.stringify(place)}`;
      counts.set(key, { variant: variantNamed(wood), place, pieces: 1 + (counts.get(key)?.pieces ?? 0) });
    }
  return [...counts.values()];
}

function goodOf({ taps }: WorkedShop, { wood, by }: { wood: number; by: number }): number {
  return taps.filter((tap) => tap.wood === wood && tap.to.stage === 8 && !tap.to.second && tap.at <= by)
    .length;
}
