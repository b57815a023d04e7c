import fc from 'fast-check';
import type { Command } from '../../src/domain/command/command.ts';
import { stagesToAskAbout } from '../../src/domain/command/decide-set-up.ts';
import type { Outcome, ShopEvent } from '../../src/domain/log/event.ts';
import type { TrayId } from '../../src/domain/log/ids.ts';
import { atStage, type StagePlace } from '../../src/domain/log/place.ts';
import { shelfPlaces } from '../../src/domain/log/shelf-facts.ts';
import { eventKey } from '../../src/domain/log/version-vector.ts';
import { partsToClean } from '../../src/domain/rollup/parts-on-hand.ts';
import { stagesBefore } from '../../src/domain/route/route.ts';
import { qualityLimits } from '../../src/domain/sampling/quality-limits.ts';
import { calledBy } from '../../src/domain/set-up/register.ts';
import type { Standing } from '../../src/domain/shop/positions.ts';
import { factOf } from '../../src/domain/shop/registers.ts';
import { aPhoto } from './a-photo.ts';
import { aShop, aWorkshop, isVoidable, mended, type TestShop } from './a-shop.ts';
import {
  batch,
  lot,
  part,
  partFacts,
  reason,
  route,
  routeStages,
  setUpFacts,
  species,
  stage,
  variant,
} from './workshop.ts';

/**
 * Random histories of a shop with three tablets that see each other's events now and then: every command, screens
 * that show an old count, undos of undos, and the same act taken back on several tablets.
 */
const acts = {
  meet: 3,
  later: 1,
  make: 2,
  pass: 9,
  flaw: 6,
  raise: 3,
  load: 3,
  split: 2,
  join: 3,
  recode: 1,
  recount: 2,
  read: 1,
  photo: 1,
  shelf: 1,
  receive: 2,
  count: 2,
  clean: 2,
  sample: 1,
  reroute: 1,
  set: 1,
  undo: 4,
  'undo-everywhere': 2,
  spell: 1,
} as const;
type Act = keyof typeof acts;

export interface Step {
  readonly act: Act;
  readonly tablet: number;
  /** What the act is about: each picks one of what is there. */
  readonly a: number;
  readonly b: number;
  readonly c: number;
}

const stepWith = (names: readonly Act[]) =>
  fc.record({
    act: fc.constantFrom(...names.flatMap((name) => Array<Act>(acts[name]).fill(name))),
    tablet: fc.nat(2),
    a: fc.nat(99),
    b: fc.nat(99),
    c: fc.nat(99),
  });

/** Long enough that acts meet: fast-check would draw mostly short ones. */
const length = { minLength: 1, maxLength: 50, size: 'max' } as const;
const allActs = Object.keys(acts) as Act[];
export const histories = fc.array(stepWith(allActs), length);
export const historiesWithout = (...names: readonly Act[]) =>
  fc.array(stepWith(allActs.filter((act) => !names.includes(act))), length);

/** The set-up, made once by a station of its own. */
const office = aWorkshop({ station: 'office', letter: 'X' });
for (const set of partFacts) office.set(set);
for (const id of Object.values(lot))
  office.set({ register: 'lot', id, value: { name: id, species: species.ash, retired: false } });
const setUpLog = office.log;

export interface Played {
  readonly tablets: readonly TestShop[];
  /** Every event that any tablet has, by station and number. */
  readonly log: readonly ShopEvent[];
}

/** Plays a history; `watch` sees each command before it is judged. Refused commands change nothing. */
export function play(
  steps: readonly Step[],
  watch: (tablet: TestShop, command: Command) => void = () => undefined,
): Played {
  const tablets = ['A', 'C', 'E'].map((letter) =>
    aShop({ station: `tablet-${letter.toLowerCase()}`, letter }),
  );
  for (const tablet of tablets) tablet.receive(setUpLog);
  const perform = (tablet: TestShop, command: Command | undefined) => {
    if (!command) return;
    watch(tablet, command);
    if (tablet.judge(command).kind === 'events') tablet.act(command);
  };
  for (const step of [{ act: 'make', tablet: 0, a: 0, b: 8, c: 0 } as const, ...steps]) {
    const tablet = pick(tablets, step.tablet);
    if (!tablet) continue;
    if (step.act === 'meet') tablet.receive([...(pick(tablets, step.tablet + 1 + (step.a % 2))?.log ?? [])]);
    else if (step.act === 'later') tablet.later(step.a - 20);
    else if (step.act === 'undo-everywhere') {
      const command = undoOf(tablet, step);
      for (const each of tablets) perform(each, command);
    } else perform(tablet, commandOf(tablet, step));
  }
  const log = new Map(tablets.flatMap((tablet) => tablet.log.map((event) => [eventKey(event), event])));
  return { tablets, log: [...log.values()] };
}

function pick<Item>(items: readonly Item[], index: number): Item | undefined {
  return items[index % Math.max(1, items.length)];
}

type StageStanding = Standing & { readonly tray: TrayId; readonly place: StagePlace };

function standings({ shop }: TestShop): readonly StageStanding[] {
  return [...shop.positions.working].flatMap(([tray, places]) =>
    [...places.values()].flatMap(({ place, ...rest }) => (atStage(place) ? [{ ...rest, tray, place }] : [])),
  );
}

function commandOf(tablet: TestShop, step: Step): Command | undefined {
  const { act, a, b, c } = step;
  if (act === 'make') {
    const its = pick(Object.values(variant), a) ?? variant['ash-copper'];
    return {
      kind: 'make-trays',
      variant: its,
      batch: batch.spring,
      pieces: 1 + (b % 12),
      trays: 1 + (c % 2),
    };
  }
  if (act === 'set') {
    const set = pick(setUpFacts, a);
    return (
      set && {
        kind: 'set',
        set: { ...set, value: { ...set.value, name: `${calledBy(set.value)} ${b}` } } as typeof set,
      }
    );
  }
  if (act === 'undo') return undoOf(tablet, step);
  if (act === 'reroute') return rerouteOf(tablet, step);
  if (act === 'join') {
    const trays = [...tablet.shop.trays.keys()];
    const [tray, into] = [pick(trays, a), pick(trays, b)];
    return tray && into && { kind: 'join', tray, into };
  }
  if (act === 'recode') {
    const tray = pick([...tablet.shop.trays.keys()], a);
    return tray && { kind: 'recode', tray };
  }
  if (act === 'raise') return raisedBack(tablet, step);
  if (act === 'read') return meterRead(step);
  if (act === 'photo') return photographed(tablet, step);
  if (act === 'shelf') return onShelf(step);
  if (act === 'receive' || act === 'count' || act === 'clean' || act === 'sample')
    return inStores(tablet, step);
  if (act === 'spell') return { kind: a % 2 ? 'begin-spell' : 'end-spell', stage: stage.turn };
  return atSpot(tablet, step);
}

function atSpot(tablet: TestShop, { act, a, b, c }: Step): Command | undefined {
  const standing = pick(standings(tablet), a);
  if (!standing) return undefined;
  const { tray, place, pieces: there } = standing;
  // Every fourth screen is behind: it shows two pieces more than the log holds.
  const shown = Math.max(0, there) + (c % 4 === 0 ? 2 : 0);
  const { stage: at, grade } = place;
  const spot = { tray, stage: at, at: place.at, grade, shown };
  const pieces = 1 + (b % Math.max(1, shown));
  switch (act) {
    case 'pass':
    case 'load':
    case 'split':
      return { kind: act, spot, pieces };
    case 'recount':
      return { kind: 'recount', spot, counted: b % 12, why: 'miscounted', note: '' };
    default: {
      const earlier = stagesBefore(
        routeStages.map((name) => stage[name]),
        at,
      );
      const outcomes: readonly Outcome[] = [
        mended,
        { kind: 'second' },
        { kind: 'scrapped', saved: [part['copper-ferrule'], part.core].slice(b % 3) },
        ...earlier.map((to): Outcome => ({ kind: 'sent-back', to })),
      ];
      const reasons = [reason.catch, reason.gap].slice(c % 2);
      return { kind: 'flaw', spot, pieces, reasons, outcome: pick(outcomes, c) ?? mended };
    }
  }
}

/** Seconds at a stage, or finished ones of a variant or of one tray, are firsts again; some screens are behind. */
function raisedBack(tablet: TestShop, { a, b, c }: Step): Command | undefined {
  const gone = [reason.catch, reason.gap].slice(c % 3);
  if (c % 2) {
    const of = pick([...tablet.shop.trays.values()], a);
    const tray = of && c % 4 === 1 ? of.tray : null;
    return of && { kind: 'raise-finished', variant: of.variant, tray, pieces: 1 + (b % 2), gone };
  }
  const standing = pick(
    standings(tablet).filter(({ place }) => place.grade === 'second'),
    a,
  );
  if (!standing) return undefined;
  const { tray, place, pieces: there } = standing;
  const shown = Math.max(0, there) + (c % 4 === 0 ? 2 : 0);
  const spot = { tray, stage: place.stage, at: place.at, shown };
  return { kind: 'raise', spot, pieces: 1 + (b % Math.max(1, shown)), gone };
}

/** The meter shows something of a lot; every third time the air of the room is read too. */
function meterRead({ a, b, c }: Step): Command | undefined {
  const air = c % 3 === 0 ? { celsius: b - 20, humidity: 10 * a } : null;
  const of = pick(Object.values(lot), a);
  return of && { kind: 'read-moisture', lot: of, percent: 50 + b, air };
}

/** A photo of a tray, of a variant or of a criterion, or one that is let go. */
function photographed({ shop }: TestShop, { a, b, c }: Step): Command | undefined {
  const photo = aPhoto((b % 16).toString(16));
  const tray = pick([...shop.trays.keys()], a);
  const of = pick(Object.values(variant), a);
  const commands: readonly (Command | undefined)[] = [
    tray && { kind: 'photograph-piece', tray, stage: stage.grade, reasons: [reason.gap].slice(b % 2), photo },
    of && { kind: 'photograph', shows: { kind: 'variant', variant: of }, photo },
    { kind: 'photograph', shows: { kind: 'criterion', reason: reason.gap, verdict: 'good' }, photo },
    { kind: 'let-photos-go', photos: [photo.hash] },
  ];
  return pick(commands, c);
}

/** Finished pieces go from one place to another; every screen shows three, whatever is there. */
function onShelf({ a, b, c }: Step): Command | undefined {
  const of = pick(Object.values(variant), a);
  const [from, to] = [pick(shelfPlaces, b), pick(shelfPlaces, c)];
  if (!of || !from || !to || from === to) return undefined;
  const line = {
    variant: of,
    grade: b % 2 ? 'first' : 'second',
    from,
    pieces: 1 + (a % 3),
    shown: 3,
  } as const;
  return { kind: 'move-on-shelf', to, lines: [{ ...line, price: to === 'sold' ? 100 * a : null }] };
}

/** What is done in the stores; every second screen is behind, and shows two more to be cleaned than there are. */
function inStores({ shop }: TestShop, { act, a, b, c }: Step): Command | undefined {
  const its = pick(partFacts, a);
  if (its?.register !== 'part') return undefined;
  const { id } = its;
  if (act === 'receive') {
    const other = pick(partFacts, a + 1);
    const cost = c % 3 === 0 ? null : c;
    const more = other?.register === 'part' && b % 2 ? [{ part: other.id, pieces: 1 + c, cost: null }] : [];
    return { kind: 'receive-parts', parts: [{ part: id, pieces: 1 + b, cost }, ...more], note: '' };
  }
  if (act === 'count') {
    const heap = c % 3 === 0 ? 'to-clean' : 'shelf';
    return { kind: 'count-parts', part: id, heap, counted: b, why: 'miscounted', note: '' };
  }
  if (act === 'sample') {
    const limit = pick(qualityLimits, c) ?? '1';
    return { kind: 'sample-parts', part: id, lot: 1 + b * c, limit, bad: c % 4, note: '' };
  }
  const shown = Math.max(0, partsToClean(shop, id)) + (c % 4 < 2 ? 2 : 0);
  return { kind: 'clean-parts', part: id, back: b % (shown + 1), lost: c % 2, shown };
}

/** Takes back one of the last few acts that the tablet knows, undos among them. */
function undoOf(tablet: TestShop, { a }: Step): Command | undefined {
  const event = pick(tablet.log.filter(isVoidable).slice(-5), a);
  return event && { kind: 'undo', events: [event] };
}

function rerouteOf({ shop }: TestShop, { a, b, c }: Step): Command {
  const now = factOf(shop.registers, { register: 'route', id: route.haft })?.stages ?? [];
  const without = now.filter((_, index) => now.length < 4 || index !== a % now.length);
  const stages = b % 2 ? [...without.slice(b % 3), ...without.slice(0, b % 3)] : [...without, stage.wax];
  const asked = stagesToAskAbout(shop, { route: route.haft, stages });
  const destinations = new Map(
    asked.flatMap((each, index) => {
      const to = pick(stages, c + index);
      return to ? [[each.stage, to] as const] : [];
    }),
  );
  return { kind: 'change-route', route: route.haft, name: 'Haft', stages, destinations };
}
