import { type CompiledPlan, kindsOfLuck } from './compiled-plan.ts';
import { bitsAt, shareOf } from './keyed-random.ts';

/**
 * The shop floor of one replication: where lots are and what people do. Everything is allotted once and set back for each
 * replication, so that nothing is made while it runs. Lots are numbers; a lot is in one list at a time, chained by `next`.
 */
export interface Floor {
  readonly plan: CompiledPlan;
  /** ms UTC. It stands here since a number with a fraction that is handed from function to function costs memory. */
  time: number;
  /** Of a lot. `redo` is a step or −1; `ready` is when its cure ends, or before which it is not there. */
  readonly step: Int32Array;
  readonly pieces: Int32Array;
  readonly firsts: Int32Array;
  readonly redo: Int32Array;
  readonly ready: Float64Array;
  readonly next: Int32Array;
  /** In which lots are put down at the beginning. */
  readonly order: Int32Array;
  /** Lots below `used` were in use; `spare` begins the chain of those that are no longer. */
  used: number;
  spare: number;
  /**
   * Lists of lots that can be taken up: in each due class two for each stage, of what is to be unloaded and, one more, of
   * what waits to be worked on or loaded. A class has a multiple of 32 lists. −1 is nothing.
   */
  readonly heads: Int32Array;
  readonly tails: Int32Array;
  readonly listsOfClass: number;
  readonly stageOfList: Int32Array;
  /** Where lots wait for a step; what is to be unloaded there stands in the list before. */
  readonly listOfStep: Int32Array;
  readonly resourceOfList: Int32Array;
  /** `WORK`, `LOADING` or `UNLOADING`. */
  readonly kindOfList: Uint8Array;
  /** A bit for each list with a lot in it, and how many lots. */
  readonly masks: Int32Array;
  readonly lengths: Int32Array;
  /** Room for the lists that can be begun on. */
  readonly able: Int32Array;
  /** Lots that are not ready yet, by stage where they cure; the last list is of those that are yet to come. */
  readonly laterHeads: Int32Array;
  readonly laterTails: Int32Array;
  /** Those of these lists that ever have a lot, and when the first of all is ready; Infinity when none is waited for. */
  readonly laterLists: Int32Array;
  soonest: number;
  /** Of a resource: places that are free. */
  readonly free: Int32Array;
  /** Of a person: when free, or next at work; the lot in hand, −1 for none, and its list; the stretch of the calendar. */
  readonly at: Float64Array;
  readonly lotOf: Int32Array;
  readonly listOf: Int32Array;
  readonly stretch: Int32Array;
  /** When that stretch ends, and when the work in hand was begun. */
  readonly closes: Float64Array;
  readonly begun: Float64Array;
  /** 1 for who is at hand with nothing to do; `at` is then Infinity. */
  readonly idle: Uint8Array;
  idlers: number;
  /** Standard normal numbers of a stage that its variants share. */
  readonly luck: Float64Array;
  /** Of a step, drawn for the replication: ms of a piece, chances of the three flaws as parts of one, and draws so far. */
  readonly workMs: Float64Array;
  readonly loadMs: Float64Array;
  readonly gapScale: Float64Array;
  readonly backPart: Float64Array;
  readonly lostPart: Float64Array;
  readonly gap: Float64Array;
  readonly gaps: Int32Array;
  readonly visits: Int32Array;
  readonly flawKey: Int32Array;
  readonly timeKey: Int32Array;
  /** Drawn too: the part of a tray for which there must be places before it is loaded. */
  fills: number;
  /** What each visit takes beside the work on its pieces, ms. */
  changeMs: number;
  /** The lists of a class that are of holds, the others, and all, a bit for each; whether people see to the first first. */
  readonly holdLists: Int32Array;
  readonly benchLists: Int32Array;
  /** Those that can always be begun on, since nothing has to be free for them but hands. */
  readonly freeLists: Int32Array;
  readonly allLists: Int32Array;
  tends: boolean;
  /** How often people go by the rule; where they did not, a stream says what they looked at. */
  orderly: number;
  pickKey: number;
  picks: number;
  /** Pieces that are neither finished nor scrapped; visits of lots; good ones that are missing, over all variants. */
  left: number;
  totalVisits: number;
  shortOf: number;
  /** When the last piece left, and when every variant had its good ones; Infinity until then. */
  doneAt: number;
  enoughAt: number;
  /** Of a variant: good ones that are missing, pieces finished as seconds, scrapped. */
  readonly missing: Int32Array;
  readonly asSeconds: Int32Array;
  readonly scrapped: Int32Array;
  /** Good ones by variant × mark, each in the first mark at or after its end; beyond the last they are not kept. */
  readonly marks: Float64Array;
  readonly goodAt: Int32Array;
  mark: number;
  /** Of a stage, over all replications so far: ms that people worked there, and visits of pieces. */
  readonly workedMs: Float64Array;
  readonly pieceVisits: Float64Array;
}

/** What is done with the lots of a list. */
export const [WORK, LOADING, UNLOADING] = [0, 1, 2];

/** @param marks moments at which good ones are counted, ascending */
export function newFloor(plan: CompiledPlan, marks: readonly number[]): Floor {
  const steps = plan.stageOf.length;
  // A lot has at least one piece, and what a hold takes of one is another for a moment.
  const lots = plan.pieces + plan.people + 1;
  const listsOfClass = 32 * Math.max(1, Math.ceil((2 * plan.stages) / 32));
  const lists = plan.classes * listsOfClass;
  const stageOfList = Int32Array.from({ length: lists }, (_, list) => (list % listsOfClass) >> 1);
  const isHold = (list: number) => (plan.cureMs[list >> 1] ?? -1) >= 0;
  const isFree = (list: number) =>
    isHold(list) ? list % 2 === 0 : plan.resourceOf[list >> 1] === plan.resources - 1;
  const integers = (length: number) => new Int32Array(length);
  const numbers = (length: number) => new Float64Array(length);
  return {
    plan,
    time: plan.now + 0.5,
    step: integers(lots),
    pieces: integers(lots),
    firsts: integers(lots),
    redo: integers(lots),
    ready: numbers(lots),
    next: integers(lots),
    used: 0,
    spare: -1,
    heads: integers(lists),
    tails: integers(lists),
    masks: integers(lists / 32),
    listsOfClass,
    lengths: integers(lists),
    stageOfList,
    resourceOfList: stageOfList.map((stage) => plan.resourceOf[stage] ?? 0),
    kindOfList: Uint8Array.from(stageOfList, (stage, list) =>
      (plan.cureMs[stage] ?? -1) < 0 ? WORK : list % 2 === 0 ? UNLOADING : LOADING,
    ),
    laterHeads: integers(plan.stages + 1),
    laterTails: integers(plan.stages + 1),
    soonest: 0.5,
    laterLists: Int32Array.from([
      ...[...plan.cureMs.keys()].filter((stage) => (plan.cureMs[stage] ?? -1) >= 0),
      plan.stages,
    ]),
    free: integers(plan.resources),
    at: numbers(plan.people),
    lotOf: integers(plan.people),
    listOf: integers(plan.people),
    stretch: integers(plan.people),
    closes: numbers(plan.people),
    begun: numbers(plan.people),
    idle: new Uint8Array(plan.people),
    idlers: 0,
    order: integers(plan.begin.order.length),
    holdLists: bitsOf(listsOfClass, isHold),
    benchLists: bitsOf(listsOfClass, (list) => !isHold(list)),
    freeLists: bitsOf(lists, (list) => isFree(list % listsOfClass)),
    allLists: bitsOf(listsOfClass, () => true),
    tends: true,
    listOfStep: plan.stageOf.map(
      (stage, step) => (plan.classOf[plan.variantOf[step] ?? 0] ?? 0) * listsOfClass + 2 * stage + 1,
    ),
    able: integers(lists),
    luck: numbers(plan.stages * kindsOfLuck),
    workMs: numbers(steps),
    loadMs: numbers(steps),
    gapScale: numbers(steps),
    backPart: numbers(steps),
    lostPart: numbers(steps),
    gap: numbers(steps),
    gaps: integers(steps),
    visits: integers(steps),
    flawKey: integers(steps),
    timeKey: integers(steps),
    fills: 0.5,
    changeMs: 0.5,
    orderly: 0.5,
    pickKey: 0,
    picks: 0,
    left: 0,
    totalVisits: 0,
    shortOf: 0,
    doneAt: 0.5,
    enoughAt: 0.5,
    missing: integers(plan.variants),
    asSeconds: integers(plan.variants),
    scrapped: integers(plan.variants),
    marks: Float64Array.from(marks),
    goodAt: integers(plan.variants * (marks.length + 1)),
    mark: 0,
    workedMs: numbers(plan.stages),
    pieceVisits: numbers(plan.stages),
  };
}

/** A bit for each list of which it is so, in words of 32. */
function bitsOf(lists: number, isSo: (list: number) => boolean): Int32Array {
  const words = new Int32Array(lists / 32);
  for (let list = 0; list < lists; list += 1)
    if (isSo(list)) words[list >> 5] = (words[list >> 5] ?? 0) | (1 << (list & 31));
  return words;
}

/** Sets everything back to how it is now; lots that nobody knows the order of are in one of the replication's own. */
export function clearFloor(floor: Floor, key: number): void {
  const { plan } = floor;
  const { begin, now } = plan;
  floor.step.set(begin.step);
  floor.firsts.set(begin.firsts);
  floor.pieces.set(begin.pieces);
  floor.redo.set(begin.redo);
  floor.ready.set(begin.ready);
  floor.used = begin.step.length;
  floor.spare = -1;
  for (const list of [floor.heads, floor.tails, floor.laterHeads, floor.laterTails, floor.lotOf])
    list.fill(-1);
  for (const count of [
    floor.masks,
    floor.lengths,
    floor.asSeconds,
    floor.scrapped,
    floor.goodAt,
    floor.gaps,
    floor.visits,
  ])
    count.fill(0);
  floor.gap.fill(-1);
  floor.free.set(plan.capacity);
  floor.missing.set(plan.missing);
  floor.idle.fill(0);
  floor.idlers = 0;
  floor.at.fill(now);
  floor.stretch.set(plan.calendar.first.subarray(0, plan.people));
  floor.closes.fill(Number.NEGATIVE_INFINITY);
  floor.left = plan.pieces;
  floor.totalVisits = 0;
  floor.shortOf = plan.missing.reduce((sum, pieces) => sum + pieces, 0);
  floor.doneAt = plan.pieces === 0 ? now : Number.POSITIVE_INFINITY;
  floor.enoughAt = floor.shortOf === 0 ? now : Number.POSITIVE_INFINITY;
  floor.mark = 0;
  floor.soonest = Number.POSITIVE_INFINITY;
  const { order } = floor;
  order.set(begin.order);
  if (begin.isShuffled) shuffle(order, key);
  for (let at = 0; at < order.length; at += 1) placeAtFirst(floor, order[at] ?? 0);
}

/** R. A. Fisher and F. Yates; each order is as likely. */
function shuffle(order: Int32Array, key: number): void {
  for (let last = order.length - 1; last > 0; last -= 1) {
    const other = Math.floor(shareOf(bitsAt(key, last)) * (last + 1));
    const lot = order[last] ?? 0;
    order[last] = order[other] ?? 0;
    order[other] = lot;
  }
}

function placeAtFirst(floor: Floor, lot: number): void {
  const { plan } = floor;
  const stage = plan.stageOf[floor.step[lot] ?? 0] ?? 0;
  if (plan.begin.isHeld[lot] === 1) {
    const resource = plan.resourceOf[stage] ?? 0;
    floor.free[resource] = (floor.free[resource] ?? 0) - piecesOf(floor, lot);
    putLater(floor, lot, stage);
  } else if ((floor.ready[lot] ?? 0) > plan.now) putLater(floor, lot, plan.stages);
  else putWaiting(floor, lot);
}

export const piecesOf = (floor: Floor, lot: number): number => floor.pieces[lot] ?? 0;

/** A lot that is not in use; its fields are those of one before it. */
export function newLot(floor: Floor): number {
  const lot = floor.spare;
  if (lot < 0) {
    floor.used += 1;
    return floor.used - 1;
  }
  floor.spare = floor.next[lot] ?? -1;
  return lot;
}

export function dropLot(floor: Floor, lot: number): void {
  floor.next[lot] = floor.spare;
  floor.spare = lot;
}

/** Lets a lot wait for its step, at the end of the list of it. */
export function putWaiting(floor: Floor, lot: number): void {
  append(floor, lot, floor.listOfStep[floor.step[lot] ?? 0] ?? 0);
}

/** Puts a lot at the end of a list. */
function append({ heads, tails, next, masks, lengths }: Floor, lot: number, list: number): void {
  const tail = tails[list] ?? -1;
  lengths[list] = (lengths[list] ?? 0) + 1;
  next[lot] = -1;
  tails[list] = lot;
  if (tail >= 0) {
    next[tail] = lot;
    return;
  }
  heads[list] = lot;
  masks[list >> 5] = (masks[list >> 5] ?? 0) | (1 << (list & 31));
}

/** Takes the first lot off a list. */
export function takeWaiting(floor: Floor, list: number): void {
  const { heads, tails, next, masks, lengths } = floor;
  lengths[list] = (lengths[list] ?? 0) - 1;
  const after = next[heads[list] ?? 0] ?? -1;
  heads[list] = after;
  if (after >= 0) return;
  tails[list] = -1;
  masks[list >> 5] = (masks[list >> 5] ?? 0) & ~(1 << (list & 31));
}

/** Puts a lot of a list, which comes after `before` there, at the head of it. */
export function putFirst(
  { heads, tails, next }: Floor,
  { list, lot, before }: { readonly list: number; readonly lot: number; readonly before: number },
): void {
  next[before] = next[lot] ?? -1;
  if (tails[list] === lot) tails[list] = before;
  next[lot] = heads[list] ?? -1;
  heads[list] = lot;
}

/** Puts a lot where it belongs by when it is ready, behind those that are ready as soon: nearly always at the end. */
export function putLater(floor: Floor, lot: number, list: number): void {
  const { laterHeads, laterTails, ready, next } = floor;
  const when = ready[lot] ?? 0;
  if (when < floor.soonest) floor.soonest = when;
  const tail = laterTails[list] ?? -1;
  if (tail < 0 || (ready[tail] ?? 0) <= when) {
    next[lot] = -1;
    laterTails[list] = lot;
    if (tail < 0) laterHeads[list] = lot;
    else next[tail] = lot;
    return;
  }
  let before = -1;
  let after = laterHeads[list] ?? -1;
  while (after >= 0 && (ready[after] ?? 0) <= when) {
    before = after;
    after = next[after] ?? -1;
  }
  next[lot] = after;
  if (before < 0) laterHeads[list] = lot;
  else next[before] = lot;
}

/** Lets what is ready by now be taken up. */
export function releaseReady(floor: Floor): void {
  const { time } = floor;
  if (time < floor.soonest) return;
  const { laterHeads, laterTails, laterLists, ready, next, plan } = floor;
  let soonest = Number.POSITIVE_INFINITY;
  for (let at = 0; at < laterLists.length; at += 1) {
    const list = laterLists[at] ?? 0;
    let lot = laterHeads[list] ?? -1;
    while (lot >= 0 && (ready[lot] ?? 0) <= time) {
      const after = next[lot] ?? -1;
      const waits = floor.listOfStep[floor.step[lot] ?? 0] ?? 0;
      append(floor, lot, list < plan.stages ? waits - 1 : waits);
      lot = after;
    }
    laterHeads[list] = lot;
    if (lot < 0) laterTails[list] = -1;
    else if ((ready[lot] ?? 0) < soonest) soonest = ready[lot] ?? 0;
  }
  floor.soonest = soonest;
}
