import { type Random, seededRandom } from '../../src/domain/chance/seeded-random.ts';
import type { ShopEvent } from '../../src/domain/log/event.ts';
import type { TrayId } from '../../src/domain/log/ids.ts';
import { dayAfter, shopDay } from '../../src/domain/log/zone.ts';
import { stagesOfTray, traysAtStage } from '../../src/domain/rollup/waiting.ts';
import { type Stretch, workingStretches } from './calendar.ts';
import {
  batch,
  type DemoVariant,
  demoDayStart,
  demoFacts,
  demoZone,
  gougeGround,
  people,
  stageIds,
  stageOf,
  stations,
  variants,
} from './demo-facts.ts';
import { drawWeighted } from './draw-weighted.ts';
import { doer, type Hand, rest, tendHolds, workAt, workOn } from './hands.ts';
import { readMeter } from './meter.ts';
import { tendStores } from './stores.ts';
import { openTeller, type Teller } from './teller.ts';

/** Working days that the demo's batch has run for. */
export const demoDays = 10;
/** Blanks started for each good haft wanted, a tenth more. */
const startsPerGood = 1.1;
const traySize = 10;
/** Working day on whose morning the gouge is ground anew: half of what was turned comes after it. */
const groundOn = 4;
/** The last half hour (ms) belongs to clamps and rack. */
const lastRounds = 30 * 60_000;
const usualSeed = 20260302;

/**
 * The log of the demo shop as of `now` (ms UTC): a workshop of two that makes hafts for leatherworkers' awls,
 * half way through a batch. The same arguments give the same log.
 */
export function demoShop({ now, seed = usualSeed }: { now: number; seed?: number }): readonly ShopEvent[] {
  const teller = openTeller();
  const random = seededRandom(seed);
  const stretches = workingStretches(now, demoDays).map((stretch, index, all) =>
    index === all.length - 1 ? { ...stretch, to: stretch.to - lastRounds } : stretch,
  );
  const start = stretches[0]?.from ?? now;
  const hands: readonly Hand[] = [
    { station: stations.lathe, letter: 'A', person: people.ida, at: start, stage: null, done: new Map() },
    { station: stations.bench, letter: 'C', person: people.tam, at: start, stage: null, done: new Map() },
  ];
  setUp(teller, { at: start, due: dayAfter(shopDay(now, { zone: demoZone, startHour: demoDayStart }), 16) });
  const plan = startPlan();
  let lastDay = -1;
  for (const stretch of stretches) {
    if (stretch.day !== lastDay) {
      goToStores(hands, { teller, stretch });
      makeUpTrays(hands, { teller, plan, stretch, random });
      oddJobs(hands, { teller, stretch, random });
    }
    lastDay = stretch.day;
    workStretch(hands, { teller, stretch, random });
  }
  const last = stretches.at(-1);
  if (last) lastLoads(hands, { teller, stretch: { ...last, to: last.to + lastRounds }, random });
  return teller.events;
}

/** The last thing the maker did: a tray glued up and one sealed, both on their way into clamps and rack. */
function lastLoads(hands: readonly Hand[], { teller, stretch, random }: StretchOfWork): void {
  const shift = { teller, random, day: stretch.day, until: stretch.to };
  for (const [index, stage] of [stageOf('glue-up'), stageOf('seal')].entries()) {
    const hand = hands[index];
    if (!hand) continue;
    hand.at = Math.max(hand.at, stretch.to - lastRounds);
    workAt(hand, { stage, shift });
    tendHolds(hand, shift);
    rest(hand, teller);
  }
}

function setUp(teller: Teller, { at, due }: { at: number; due: string }): void {
  const doing = { station: stations.lathe, letter: 'A', person: null, at: at - 3_600_000, elapsed: null };
  for (const set of demoFacts(due)) teller.tell({ kind: 'set', set }, doing);
}

interface Start {
  readonly variant: DemoVariant;
  pieces: number;
}

/** What is still to be made up, by variant. */
function startPlan(): Start[] {
  return variants.map((variant) => ({ variant, pieces: Math.round(variant.good * startsPerGood) }));
}

/** On each of the first mornings some trays are made up, of the variants with most left to start. */
function makeUpTrays(
  hands: readonly Hand[],
  { teller, plan, stretch, random }: StretchOfWork & { plan: Start[] },
): void {
  const [hand] = hands;
  if (!hand) return;
  hand.at = Math.max(hand.at, stretch.from);
  const many = stretch.day === 0 ? 7 : 4;
  for (let made = 0; made < many; made += 1) {
    const next = drawWeighted(plan, { weight: ({ pieces }) => pieces, random });
    if (!next) return;
    const pieces = Math.min(next.pieces, traySize);
    next.pieces -= pieces;
    hand.at += 60_000;
    teller.tell({ kind: 'make-trays', variant: next.variant.id, batch, pieces, trays: 1 }, doer(hand, null));
  }
}

interface StretchOfWork {
  readonly teller: Teller;
  readonly stretch: Stretch;
  readonly random: Random;
}

function workStretch(hands: readonly Hand[], { teller, stretch, random }: StretchOfWork): void {
  for (const hand of hands) hand.at = Math.max(hand.at, stretch.from);
  const busy = new Set(hands);
  while (busy.size > 0) {
    const hand = [...busy].reduce((first, each) => (each.at < first.at ? each : first));
    const before = hand.at;
    const worked =
      hand.at < stretch.to && workOn(hand, { teller, random, day: stretch.day, until: stretch.to });
    if (!worked || hand.at === before) busy.delete(hand);
  }
  for (const hand of hands) rest(hand, teller);
}

/** The second hand comes by the stores before the work begins. */
function goToStores(
  hands: readonly Hand[],
  { teller, stretch }: Pick<StretchOfWork, 'teller' | 'stretch'>,
): void {
  const hand = hands[1];
  if (!hand) return;
  hand.at = Math.max(hand.at, stretch.from);
  tendStores(teller, { day: stretch.day, doing: doer(hand, null) });
}

/** What happens once in a batch, on some mornings: a prized piece, a gouge ground, a split, a join, recounts. */
function oddJobs(hands: readonly Hand[], { teller, stretch }: StretchOfWork): void {
  const [hand] = hands;
  if (!hand || hand.at >= stretch.to) return;
  const doing = doer(hand, null);
  readMeter(teller, { day: stretch.day, doing });
  const sand = stageOf('sand');
  const [first, second] = traysAtStage(teller.shop, sand).filter(({ waiting }) => waiting.first > 3);
  if (stretch.day === 2 && variants[0]) {
    teller.tell({ kind: 'make-trays', variant: variants[0].id, batch, pieces: 1, trays: 1 }, doing);
  }
  if (stretch.day === groundOn) teller.tell({ kind: 'set', set: gougeGround(Math.round(hand.at)) }, doing);
  if (stretch.day === 4 && first) {
    const spot = {
      tray: first.tray.tray,
      stage: sand,
      at: 'waiting',
      grade: 'first',
      shown: first.waiting.first,
    } as const;
    teller.tell({ kind: 'split', spot, pieces: 2 }, doing);
  }
  if (stretch.day === 6 && second) {
    const spot = { tray: second.tray.tray, stage: sand, at: 'waiting', grade: 'first' } as const;
    teller.tell({ kind: 'recount', spot, counted: second.waiting.first - 1, why: 'lost', note: '' }, doing);
  }
  if (stretch.day === 8) joinTwins(teller, { doing });
}

/** Joins the smallest tray that has a twin of its variant to that twin. */
function joinTwins(teller: Teller, { doing }: { doing: ReturnType<typeof doer> }): void {
  const inWork = [...teller.shop.trays.values()]
    .map((record) => ({ record, pieces: piecesInWork(teller, record.tray) }))
    .filter(({ pieces }) => pieces > 0)
    .toSorted((a, b) => a.pieces - b.pieces);
  for (const { record } of inWork) {
    const twin = inWork.find((each) => each.record !== record && each.record.variant === record.variant);
    if (!twin) continue;
    teller.tell({ kind: 'join', tray: record.tray, into: twin.record.tray }, doing);
    return;
  }
}

function piecesInWork(teller: Teller, tray: TrayId): number {
  return stagesOfTray(teller.shop, tray)
    .filter(({ stage }) => stageIds.includes(stage))
    .reduce((sum, { waiting, held }) => sum + waiting.first + waiting.second + held.first + held.second, 0);
}
