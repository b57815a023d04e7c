/**
 * A shop that is worked off piece by piece and day by day. It knows nothing of the forecast: it is written for itself, with
 * plain objects and what is true, so that the one can be held to the other.
 */
import type { Random } from '../../src/domain/chance/seeded-random.ts';
import { gets, normal, sends, type TrueShop, type TrueStage, woods } from './true-shop.ts';

const [minute, hour, day] = [60_000, 3_600_000, 86_400_000];

/** Where a piece stands: `stage` past the last is finished, null is scrapped. `redo` is the stage that sent it back. */
export interface Spot {
  readonly stage: number | null;
  readonly second: boolean;
  readonly redo: number | null;
  /** When its cure ends; null where it is in none. */
  readonly held: number | null;
}

/** What a tap says. */
export interface Tapped {
  readonly at: number;
  readonly person: number;
  readonly wood: number;
  readonly tray: number;
  readonly stage: number;
  readonly pieces: number;
  readonly elapsed: number;
  /** ms of it that went into the pieces, without interruptions. */
  readonly worked: number;
  readonly begins: boolean;
  /** null where pieces were put to their cure. */
  readonly from: Spot | null;
  readonly to: Spot;
}

interface Tray {
  readonly name: number;
  readonly wood: number;
  /** Each with what it was until `since`. */
  pieces: { now: Spot; before: Spot; since: number }[];
  /** When the next hand may take it up. */
  ready: number;
}

interface Person {
  at: number;
  mood: { day: number; factor: number };
}

/** Monday to Friday, eight to twelve and one to five. */
export function isOpen(at: number): boolean {
  const hours = (at % day) / hour;
  return Math.floor(at / day) % 7 < 5 && ((hours >= 8 && hours < 12) || (hours >= 13 && hours < 17));
}

/** The moment when somebody who stands there at `at` has worked for `ms`. */
function worked(at: number, ms: number): number {
  let [now, left] = [at, ms];
  for (;;) {
    const ends = nextChange(now);
    if (!isOpen(now)) now = ends;
    else if (left <= ends - now) return now + left;
    else {
      left -= ends - now;
      now = ends;
    }
  }
}

/** When the doors open or close next. */
function nextChange(at: number): number {
  const today = Math.floor(at / day) * day;
  const changes = [8, 12, 13, 17, 32].map((hours) => today + hours * hour);
  return changes.find((change) => change > at) ?? today + 2 * day;
}

export interface WorkedShop {
  /** Lets people work until then; true when nothing is left to do. */
  readonly workUntil: (until: number) => boolean;
  /** In no order. */
  readonly taps: readonly Tapped[];
  /** Where each piece stands then, tray by tray; people have worked until then, or longer on what they had in hand. */
  readonly spots: (
    at: number,
  ) => readonly { readonly wood: number; readonly tray: number; readonly spots: readonly Spot[] }[];
}

export function openShop(
  shop: TrueShop,
  {
    trays,
    random,
  }: {
    readonly trays: readonly { readonly wood: number; readonly pieces: number }[];
    readonly random: Random;
  },
): WorkedShop {
  const taps: Tapped[] = [];
  const fresh: Spot = { stage: 0, second: false, redo: null, held: null };
  const floor: Tray[] = trays.map(({ wood, pieces }, name) => ({
    ...{ name, wood, ready: 0 },
    pieces: Array.from({ length: pieces }, () => ({ now: fresh, before: fresh, since: 0 })),
  }));
  const people = Array.from(
    { length: shop.people },
    (): Person => ({ at: 8 * hour, mood: { day: -1, factor: 1 } }),
  );
  /** Pieces in clamps, by stage, until when. */
  const clamped: { stage: number; tray: Tray; pieces: number; until: number }[] = [];

  const stageOf = (tray: Tray) => tray.pieces[0]?.now.stage ?? null;
  const isOver = (tray: Tray) => stageOf(tray) === null || stageOf(tray) === shop.stages.length;

  function moodOn(person: Person, at: number): number {
    const today = Math.floor(at / day);
    if (person.mood.day !== today)
      person.mood = { day: today, factor: Math.exp(shop.moods * normal(random)) };
    return person.mood.factor;
  }

  /** Lets the person do one piece; gives the ms of work, without an interruption. */
  function doOne(stage: TrueStage, mean: number, person: Person): number {
    const sd = Math.sqrt(Math.log1p(stage.cv ** 2));
    const work = mean * Math.exp(sd * normal(random) - sd ** 2 / 2) * moodOn(person, person.at);
    const pause = random() < shop.interrupted ? -Math.log(1 - random()) * shop.away : 0;
    person.at = worked(person.at, (work + pause) * minute);
    return work * minute;
  }

  function free(stage: number, at: number): number {
    const taken = clamped.filter((each) => each.stage === stage && each.until > at);
    return (shop.stages[stage]?.room ?? 0) - taken.reduce((sum, { pieces }) => sum + pieces, 0);
  }

  function canBegin(tray: Tray, at: number): boolean {
    const stage = stageOf(tray);
    if (isOver(tray) || stage === null || tray.ready > at) return false;
    const isWaiting = tray.pieces[0]?.now.held === null;
    const needs = Math.min(tray.pieces.length, shop.stages[stage]?.room ?? 0);
    return shop.stages[stage]?.cureHours === null || !isWaiting || free(stage, at) >= shop.fills * needs;
  }

  function choose(at: number): Tray | undefined {
    const able = floor.filter((tray) => canBegin(tray, at));
    const held = able.filter((tray) => shop.stages[stageOf(tray) ?? 0]?.cureHours !== null);
    const can = shop.tends && held.length > 0 ? held : able;
    const last = Math.max(...can.map((tray) => stageOf(tray) ?? 0));
    const wanted = random() < shop.orderly ? can.filter((tray) => stageOf(tray) === last) : can;
    return wanted[Math.floor(random() * wanted.length)];
  }

  function work(person: Person, tray: Tray): void {
    const [who, stage] = [people.indexOf(person), stageOf(tray) ?? 0];
    const here = shop.stages[stage];
    if (!here) return;
    person.at = worked(person.at, shop.change * minute);
    if (here.cureHours !== null && tray.pieces[0]?.now.held === null) {
      load(person, tray, stage);
      return;
    }
    let last = person.at;
    for (const [index, piece] of tray.pieces.entries()) {
      const ms = doOne(here, here.minutes[tray.wood] ?? 1, person);
      const to = outcome(here, stage, tray.wood, piece.now);
      taps.push({
        ...{ at: person.at, person: who, wood: tray.wood, tray: tray.name, stage, pieces: 1 },
        ...{ elapsed: openBetween(last, person.at), worked: ms, begins: index === 0, from: piece.now, to },
      });
      last = person.at;
      piece.before = piece.now;
      piece.now = to;
      piece.since = person.at;
    }
    for (const each of clamped) if (each.tray === tray && each.stage === stage) each.until = person.at;
    sortOut(tray, person.at);
  }

  function load(person: Person, tray: Tray, stage: number): void {
    const here = shop.stages[stage];
    if (!here) return;
    const fits = Math.max(1, Math.min(tray.pieces.length, free(stage, person.at)));
    if (fits < tray.pieces.length) {
      floor.push({ ...tray, pieces: tray.pieces.splice(fits) });
    }
    const began = person.at;
    let ms = 0;
    for (const _ of tray.pieces) ms += doOne(here, here.loading[tray.wood] ?? 1, person);
    const held = person.at + (here.cureHours ?? 0) * hour;
    const [first] = tray.pieces;
    if (!first) return;
    const to = { ...first.now, held };
    taps.push({
      ...{ at: person.at, person: people.indexOf(person), wood: tray.wood, tray: tray.name, stage },
      ...{ pieces: tray.pieces.length, elapsed: openBetween(began, person.at), worked: ms },
      ...{ begins: true, from: null, to },
    });
    for (const piece of tray.pieces) {
      piece.before = piece.now;
      piece.now = { ...piece.now, held };
      piece.since = person.at;
    }
    tray.ready = held;
    clamped.push({ stage, tray, pieces: tray.pieces.length, until: Number.POSITIVE_INFINITY });
  }

  function outcome(here: TrueStage, stage: number, wood: number, from: Spot): Spot {
    const on: Spot = {
      stage: stage + 1,
      second: from.second,
      redo: from.redo === null || from.redo <= stage ? null : from.redo,
      held: null,
    };
    if (random() < (here.back[wood] ?? 0)) return { ...on, stage: gets, redo: sends };
    if (random() < (here.lost[wood] ?? 0)) return { ...on, stage: null };
    return random() < (here.lowered[wood] ?? 0) ? { ...on, second: true } : on;
  }

  /** Pieces that go another way than the others become trays of their own. */
  function sortOut(tray: Tray, at: number): void {
    tray.ready = at;
    const ways = new Map<string, Tray['pieces']>();
    for (const piece of tray.pieces) {
      const way = `${piece.now.stage}|${piece.now.redo}`;
      ways.set(way, [...(ways.get(way) ?? []), piece]);
    }
    const [main = [], ...others] = [...ways.values()].sort((a, b) => b.length - a.length);
    tray.pieces = main;
    for (const pieces of others) floor.push({ ...tray, pieces });
  }

  return {
    taps,
    workUntil(until) {
      for (;;) {
        if (floor.every(isOver)) return true;
        const person = people.reduce((soonest, each) => (each.at < soonest.at ? each : soonest));
        if (person.at > until) return false;
        if (!isOpen(person.at)) {
          person.at = nextChange(person.at);
          continue;
        }
        const tray = choose(person.at);
        if (tray) work(person, tray);
        else person.at += 5 * minute;
      }
    },
    spots: (at) =>
      floor.map((tray) => ({
        wood: tray.wood,
        tray: tray.name,
        spots: tray.pieces.map(({ now, before, since }) => (since <= at ? now : before)),
      })),
  };
}

/** ms between two moments that are hours of work. */
export function openBetween(from: number, to: number): number {
  let [now, sum] = [from, 0];
  while (now < to) {
    const next = Math.min(nextChange(now), to);
    if (isOpen(now)) sum += next - now;
    now = next;
  }
  return sum;
}

/** Trays of 6 to 12 pieces, 40 to 70 of each wood, in any order. */
export function traysToMake(random: Random): readonly { readonly wood: number; readonly pieces: number }[] {
  const trays = Array.from({ length: woods }, (_, wood) => {
    let left = 40 + Math.floor(31 * random());
    const of: { wood: number; pieces: number }[] = [];
    while (left > 0) {
      const pieces = Math.min(left, 6 + Math.floor(7 * random()));
      of.push({ wood, pieces });
      left -= pieces;
    }
    return of;
  }).flat();
  return trays
    .map((tray) => ({ tray, place: random() }))
    .sort((a, b) => a.place - b.place)
    .map(({ tray }) => tray);
}
