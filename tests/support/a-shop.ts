import * as v from 'valibot';
import type { Command, Spot } from '../../src/domain/command/command.ts';
import { decide } from '../../src/domain/command/decide.ts';
import type { Circumstances, Decision } from '../../src/domain/command/decision.ts';
import { piecesAt } from '../../src/domain/command/draw.ts';
import type { Problem } from '../../src/domain/command/problem.ts';
import type { Draft, Outcome, RecountReason, ShopEvent } from '../../src/domain/log/event.ts';
import { stationId, type TrayId } from '../../src/domain/log/ids.ts';
import type { Grade } from '../../src/domain/log/place.ts';
import { readEvent } from '../../src/domain/log/read-event.ts';
import { nextStamp, type Stamp, stampZero, witnessStamp } from '../../src/domain/log/stamp.ts';
import { shopDay, zoneAt } from '../../src/domain/log/zone.ts';
import type { RegisterSet } from '../../src/domain/set-up/register.ts';
import { factOf } from '../../src/domain/shop/registers.ts';
import { addEvent, emptyShop, type Shop } from '../../src/domain/shop/shop.ts';
import { isVoidable } from '../../src/domain/shop/voids.ts';
import {
  type BatchName,
  batch,
  person,
  type ReasonName,
  reason,
  type StageName,
  setUpFacts,
  stage,
  type VariantName,
  variant,
} from './workshop.ts';

const keptEvents = new WeakSet<ShopEvent>();

/** An event as a store gives it back, and frozen: whoever changes it is found out. */
function asKept(event: ShopEvent): ShopEvent {
  if (keptEvents.has(event)) return event;
  const read = readEvent(deepFreeze(JSON.parse(JSON.stringify(event))));
  if (read.kind !== 'known') throw new Error(`${event.kind} is not readable: ${JSON.stringify(read)}`);
  keptEvents.add(read.event);
  return read.event;
}

function deepFreeze(value: unknown): unknown {
  if (typeof value === 'object' && value !== null) Object.values(Object.freeze(value)).forEach(deepFreeze);
  return value;
}

/** A spot as a test names it: the first grade, waiting, and as many pieces shown as the log holds. */
export interface At {
  readonly grade?: Grade;
  readonly held?: boolean;
  /** What the screen showed, when that is not what the log holds. */
  readonly shown?: number;
}
export type FlawAt = At & {
  readonly why: ReasonName | readonly ReasonName[];
  readonly outcome: Outcome;
  readonly pieces?: number;
};

export interface ShopOptions {
  readonly station?: string;
  /** Letter of the station's tray codes; null is a station that has none yet. */
  readonly letter?: string | null;
  /** The letter is the one that the shop has on record for the station, as in the app. */
  readonly onRecord?: boolean;
  /** The tablet's clock at the start, ms UTC. */
  readonly now?: number;
}

export const mended: Outcome = { kind: 'mended' };
export const lowered: Outcome = { kind: 'second' };
export const backTo = (name: StageName): Outcome => ({ kind: 'sent-back', to: stage[name] });
export const scrapped = (...saved: Extract<Outcome, { kind: 'scrapped' }>['saved']): Outcome => ({
  kind: 'scrapped',
  saved,
});

/** Monday 2 March 2026, 9 o'clock in London and in UTC. */
export const mondayMorning = Date.UTC(2026, 2, 2, 9);
const minute = 60_000;

/**
 * One tablet with its own copy of the shop, for tests: it judges commands, numbers and stamps the events as a store
 * does, and refuses to record an event that its own schema would call damaged. A minute passes with each act.
 */
export function aShop({
  station = 'bench',
  letter = 'A',
  onRecord = false,
  now = mondayMorning,
}: ShopOptions = {}) {
  const shop = emptyShop();
  const log: ShopEvent[] = [];
  const own = v.parse(stationId, station);
  let seq = 0;
  let stamp: Stamp = stampZero;
  let ids = 0;
  const here = {
    now,
    person: null as Circumstances['person'],
    elapsed: null as number | null,
    clock: 'sound' as Circumstances['clock'],
  };

  function circumstances(): Circumstances {
    const zone = 'Europe/London';
    return {
      ...here,
      zone: zoneAt(here.now, zone),
      day: shopDay(here.now, { zone, startHour: 4 }),
      station: own,
      letter: onRecord ? (factOf(shop.registers, { register: 'station', id: own })?.letter ?? null) : letter,
      newId: () => {
        ids += 1;
        return `${station}-${ids}`;
      },
    };
  }

  function record(drafts: readonly Draft[]): readonly ShopEvent[] {
    stamp = nextStamp(stamp, here.now);
    here.now += minute;
    return drafts.map((draft) => {
      seq += 1;
      return take({ ...draft, station: own, seq, stamp } as ShopEvent);
    });
  }

  function take(event: ShopEvent): ShopEvent {
    const kept = asKept(event);
    if (addEvent(shop, kept)) log.push(kept);
    return kept;
  }

  const judge = (command: Command): Decision => decide(shop, command, circumstances());

  function act(command: Command): readonly ShopEvent[] {
    const decision = judge(command);
    if (decision.kind === 'refused') throw new Error(`refused: ${JSON.stringify(decision.problem)}`);
    return record(decision.drafts);
  }

  function spot(tray: TrayId, name: StageName, { grade = 'first', held = false, shown }: At = {}): Spot {
    const place = { tray, stage: stage[name], at: held ? 'held' : 'waiting', grade } as const;
    return { ...place, shown: shown ?? piecesAt(shop.positions, place) };
  }

  return {
    shop: shop as Shop,
    log: log as readonly ShopEvent[],
    station: own,
    judge,
    act,
    spot,
    /** Records drafts as they are, for what no command of this version writes. */
    record,
    /** The problem for which a command is refused; throws when it is not. */
    refusal(command: Command): Problem {
      const decision = judge(command);
      if (decision.kind === 'events') throw new Error('the command was not refused');
      return decision.problem;
    },
    set: (set: RegisterSet) => act({ kind: 'set', set }),
    /** Makes up one tray and returns its id. */
    tray(name: VariantName, pieces: number, its: BatchName = 'spring'): TrayId {
      act({ kind: 'make-trays', variant: variant[name], batch: batch[its], pieces, trays: 1 });
      return newestTray(shop);
    },
    pass: (tray: TrayId, name: StageName, { pieces = 1, ...at }: At & { pieces?: number } = {}) =>
      act({ kind: 'pass', spot: spot(tray, name, at), pieces }),
    flaw: (tray: TrayId, name: StageName, { why, outcome, pieces = 1, ...at }: FlawAt) =>
      act({
        kind: 'flaw',
        spot: spot(tray, name, at),
        pieces,
        reasons: [why].flat().map((each) => reason[each as ReasonName]),
        outcome,
      }),
    load: (tray: TrayId, name: StageName, { pieces = 1, ...at }: At & { pieces?: number } = {}) =>
      act({ kind: 'load', spot: spot(tray, name, at), pieces }),
    /** Splits pieces off and returns the id of the new tray. */
    split(tray: TrayId, name: StageName, { pieces = 1, ...at }: At & { pieces?: number } = {}): TrayId {
      act({ kind: 'split', spot: spot(tray, name, at), pieces });
      return newestTray(shop);
    },
    join: (tray: TrayId, into: TrayId) => act({ kind: 'join', tray, into }),
    recount(
      tray: TrayId,
      name: StageName,
      { counted, why = 'miscounted', ...at }: At & { counted: number; why?: RecountReason },
    ) {
      const { shown, ...where } = spot(tray, name, at);
      return act({ kind: 'recount', spot: where, counted, why, note: '' });
    },
    /** Takes back what can be taken back of the given events. */
    undo: (events: readonly ShopEvent[]) => act({ kind: 'undo', events: events.filter(isVoidable) }),
    later(minutes: number) {
      here.now += minutes * minute;
    },
    by(name: keyof typeof person | null) {
      here.person = name && person[name];
    },
    /** Time since the last tap of the spell, ms, for the acts that follow. */
    pace(elapsed: number | null) {
      here.elapsed = elapsed;
    },
    clock: () => here.now,
    /** Whether the tablet's clock can be believed, for the acts that follow. */
    doubt(clock: Circumstances['clock']) {
      here.clock = clock;
    },
    /** Takes in what another tablet has. */
    receive(events: readonly ShopEvent[]) {
      for (const event of events) {
        if (event.station !== own) stamp = witnessStamp(stamp, { seen: event.stamp, now: here.now });
        take(event);
      }
    },
  };
}

export type TestShop = ReturnType<typeof aShop>;

/** A shop whose stages, woods, variants and batches are set up. */
export function aWorkshop(options: ShopOptions = {}): TestShop {
  const shop = aShop(options);
  for (const set of setUpFacts) shop.set(set);
  return shop;
}

/** Tablets that all know the set-up, the first of which has made it. */
export function tablets(...letters: readonly string[]): readonly TestShop[] {
  const [first, ...others] = letters.map((letter, index) =>
    aShop({ station: `tablet-${index + 1}`, letter }),
  );
  if (!first) return [];
  for (const set of setUpFacts) first.set(set);
  for (const other of others) other.receive(first.log);
  return [first, ...others];
}

/** Brings the logs of all tablets to every one of them. */
export function meet(...all: readonly TestShop[]): void {
  for (const one of all) for (const other of all) if (one !== other) one.receive([...other.log]);
}

export { isVoidable };

function newestTray(shop: Shop): TrayId {
  const newest = [...shop.trays.keys()].at(-1);
  if (newest === undefined) throw new Error('no tray was made');
  return newest;
}

/** Says after how many minutes the glue of a workshop may come out without being asked about. */
export function sayLeastTime(shop: TestShop, leastMinutes: number): void {
  const fact = factOf(shop.shop.registers, { register: 'stage', id: stage.glue });
  if (fact?.kind !== 'hold') throw new Error('gluing is a hold');
  shop.set({ register: 'stage', id: stage.glue, value: { ...fact, leastMinutes } });
}
