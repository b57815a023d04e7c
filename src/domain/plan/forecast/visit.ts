import { longAbsence, partDone } from './calendar.ts';
import { flawKind, nextGap, timeTogether } from './draw-beliefs.ts';
import { type Floor, LOADING, UNLOADING, WORK } from './floor.ts';
import { bitsAt } from './keyed-random.ts';
import { dropLot, newLot, piecesOf, putFirst, putLater, putWaiting, takeWaiting } from './lots.ts';

/** Lets a person begin on the first lot of a list, of which `canBegin` was true, at a moment of that person's hours. */
export function beginWork(floor: Floor, person: number, list: number): void {
  const { free, time } = floor;
  const lot = floor.heads[list] ?? 0;
  const stage = floor.stageOfList[list] ?? 0;
  const resource = floor.resourceOfList[list] ?? 0;
  const kind = floor.kindOfList[list] ?? 0;
  const isLoading = kind === LOADING;
  const all = piecesOf(floor, lot);
  const fit = isLoading ? Math.min(all, free[resource] ?? 0) : all;
  const ms = workOn(floor, floor.step[lot] ?? 0, isLoading, fit);
  // Mostly it is done before the next break, and nothing else has to be looked at.
  const isBeforeBreak = time + ms <= (floor.closes[person] ?? 0);
  const pieces = isBeforeBreak ? fit : piecesBeforeAbsence(floor, person, ms, fit);
  if (pieces === 0) {
    goAway(floor, person);
    // Whoever comes next has the luck of this visit.
    const step = floor.step[lot] ?? 0;
    floor.visits[step] = (floor.visits[step] ?? 0) - 1;
    return;
  }
  const taken = pieces === fit ? ms : Math.floor((ms * pieces) / fit + 0.5);

  let inHand = lot;
  if (pieces === all) takeWaiting(floor, list);
  else {
    inHand = splitOff(floor, lot, pieces);
    if (isLoading && floor.plan.begin.isShuffled) {
      takeWaiting(floor, list);
      putWaiting(floor, lot);
    }
  }
  if (isLoading) free[resource] = (free[resource] ?? 0) - pieces;
  else if (kind === WORK) free[resource] = (free[resource] ?? 0) - 1;
  floor.lotOf[person] = inHand;
  floor.listOf[person] = list;
  floor.begun[person] = time;
  if (isBeforeBreak) floor.at[person] = time + ms;
  else workBeyondBreak(floor, person, taken);
  floor.workedMs[stage] = (floor.workedMs[stage] ?? 0) + taken;
  if (!isLoading) floor.pieceVisits[stage] = (floor.pieceVisits[stage] ?? 0) + pieces;
}

/** 1 ÷ √pieces; trays are small, and a look costs less than a root. */
const roots = Float64Array.from({ length: 64 }, (_, pieces) => 1 / Math.sqrt(Math.max(1, pieces)));
const rootOver = (pieces: number): number => roots[pieces] ?? 1 / Math.sqrt(pieces);

/** ms, whole, that so many pieces take this time. */
function workOn(floor: Floor, step: number, isLoading: boolean, pieces: number): number {
  const { plan, visits } = floor;
  const visit = visits[step] ?? 0;
  visits[step] = visit + 1;
  floor.totalVisits += 1;
  const each = (isLoading ? floor.loadMs[step] : floor.workMs[step]) ?? 0;
  const third = (isLoading ? plan.loading.third[step] : plan.work.third[step]) ?? 0;
  const bits = bitsAt(floor.timeKey[step] ?? 0, visit);
  return Math.floor(floor.changeMs + timeTogether(each * pieces, third * rootOver(pieces), bits) + 0.5);
}

/** Whether a lot of a list can be begun on, and is then the first: a lathe is free, or as many places as make loading worth while. */
export function canBegin(floor: Floor, list: number): boolean {
  if (((floor.freeLists[list >> 5] ?? 0) & (1 << (list & 31))) !== 0) return true;
  const places = floor.free[floor.resourceOfList[list] ?? 0] ?? 0;
  if (places <= 0) return false;
  return floor.kindOfList[list] === WORK || bringOneThatFits(floor, list, places);
}

/** Whoever has a few clamps free looks for a tray that goes into them, the longest waiting first. */
function bringOneThatFits(floor: Floor, list: number, places: number): boolean {
  const { heads, next, plan, fills } = floor;
  const all = plan.capacity[floor.resourceOfList[list] ?? 0] ?? 0;
  let before = -1;
  let lot = heads[list] ?? -1;
  // A tray is not torn apart for the sake of a clamp or two.
  while (lot >= 0 && places < fills * Math.min(piecesOf(floor, lot), all)) {
    before = lot;
    lot = next[lot] ?? -1;
  }
  if (lot >= 0 && before >= 0) putFirst(floor, { list, lot, before });
  return lot >= 0;
}

/** When the person has worked so long they are free again, by the calendar; never where it ends before. */
function workBeyondBreak(floor: Floor, person: number, ms: number): void {
  const { first, from, worked, to } = floor.plan.calendar;
  const beyond = first[person + 1] ?? 0;
  let at = floor.stretch[person] ?? 0;
  const until = (worked[at] ?? 0) + floor.time - (from[at] ?? 0) + ms;
  while (at + 1 < beyond && until > (worked[at + 1] ?? 0)) at += 1;
  floor.stretch[person] = at;
  floor.closes[person] = to[at] ?? 0;
  const end = (from[at] ?? 0) + until - (worked[at] ?? 0);
  floor.at[person] = end > (to[at] ?? 0) ? Number.POSITIVE_INFINITY : end;
}

/**
 * How many of the pieces are done before the person is away for days: nobody leaves a half-done one behind. At least one
 * when the person has just come, since what takes longer than all hours between two absences would never be done.
 */
function piecesBeforeAbsence(floor: Floor, person: number, ms: number, pieces: number): number {
  const { first, from, to, worked, untilAway } = floor.plan.calendar;
  const at = floor.stretch[person] ?? 0;
  const left = (untilAway[at] ?? 0) - (worked[at] ?? 0) - (floor.time - (from[at] ?? 0));
  if (ms <= left) return pieces;
  const isBack =
    floor.time === from[at] && (at === first[person] || (from[at] ?? 0) - (to[at - 1] ?? 0) > longAbsence);
  return Math.max(isBack ? 1 : 0, Math.min(pieces, Math.floor((pieces * left) / ms)));
}

/** The person leaves, and is there again after the absence. */
function goAway(floor: Floor, person: number): void {
  const { first, from, worked, untilAway } = floor.plan.calendar;
  const beyond = first[person + 1] ?? 0;
  const until = untilAway[floor.stretch[person] ?? 0] ?? 0;
  let at = floor.stretch[person] ?? 0;
  while (at < beyond && (worked[at] ?? 0) < until) at += 1;
  // Gone for good where there are no more hours.
  floor.at[person] = at < beyond ? (from[at] ?? 0) : Number.POSITIVE_INFINITY;
}

/** A new lot of `many` pieces of a lot, firsts before seconds. */
function splitOff(floor: Floor, lot: number, many: number): number {
  const { step, pieces, firsts, redo } = floor;
  const part = newLot(floor);
  const taken = Math.min(many, firsts[lot] ?? 0);
  step[part] = step[lot] ?? 0;
  redo[part] = redo[lot] ?? -1;
  pieces[part] = many;
  firsts[part] = taken;
  pieces[lot] = (pieces[lot] ?? 0) - many;
  firsts[lot] = (firsts[lot] ?? 0) - taken;
  return part;
}

/** What the person had in hand goes on its way. */
export function endWork(floor: Floor, person: number): void {
  const { free } = floor;
  const lot = floor.lotOf[person] ?? 0;
  const list = floor.listOf[person] ?? 0;
  const kind = floor.kindOfList[list] ?? 0;
  floor.lotOf[person] = -1;
  if (kind === LOADING) {
    const stage = floor.stageOfList[list] ?? 0;
    floor.ready[lot] = floor.time + (floor.plan.cureMs[stage] ?? 0);
    putLater(floor, lot, stage);
    return;
  }
  const resource = floor.resourceOfList[list] ?? 0;
  free[resource] = (free[resource] ?? 0) + (kind === UNLOADING ? piecesOf(floor, lot) : 1);
  const step = floor.step[lot] ?? 0;
  const redo = floor.redo[lot] ?? -1;
  if (redo < 0 || redo === step) tryPieces(floor, lot);
  if (piecesOf(floor, lot) === 0) dropLot(floor, lot);
  else moveOn(floor, lot, person);
}

function moveOn(floor: Floor, lot: number, person: number): void {
  const { plan, step, redo } = floor;
  const here = step[lot] ?? 0;
  if (plan.isLast[here] === 1) {
    finish(floor, lot, person);
    return;
  }
  if (redo[lot] === here) redo[lot] = -1;
  step[lot] = here + 1;
  putWaiting(floor, lot);
}

/** The trial of each piece of a lot: the stream of the step says how many pass before the next flaw. */
function tryPieces(floor: Floor, lot: number): void {
  const { gap, firsts, step } = floor;
  const here = step[lot] ?? 0;
  const all = piecesOf(floor, lot);
  let at = gap[here] ?? 0;
  if (at < 0) at = nextGap(floor, here);
  if (at < all) {
    const whole = firsts[lot] ?? 0;
    let lastBack = -1;
    while (at < all) {
      lastBack = flaw(floor, lot, at < whole, lastBack);
      at += 1 + nextGap(floor, here);
    }
  }
  gap[here] = at - all;
}

/** A piece of the lot meets a flaw; gives the lot of what was last sent back from this one, −1 for none. */
function flaw(floor: Floor, lot: number, isFirst: boolean, lastBack: number): number {
  const { plan, pieces, firsts, step, backPart, lostPart } = floor;
  const here = step[lot] ?? 0;
  const kind = flawKind(floor, here);
  const sentBack = backPart[here] ?? 0;
  // Whatever it is, the piece is no first of this lot any more.
  if (isFirst) firsts[lot] = (firsts[lot] ?? 0) - 1;
  if (kind >= (lostPart[here] ?? 0)) return lastBack;
  pieces[lot] = (pieces[lot] ?? 0) - 1;
  if (kind >= sentBack) {
    const variant = plan.variantOf[here] ?? 0;
    floor.scrapped[variant] = (floor.scrapped[variant] ?? 0) + 1;
    leave(floor, 1);
    return lastBack;
  }
  const to = targetOf(floor, here, kind / sentBack);
  const isSame = lastBack >= 0 && step[lastBack] === to;
  const back = isSame ? lastBack : newLot(floor);
  if (!isSame) {
    step[back] = to;
    pieces[back] = 0;
    firsts[back] = 0;
    floor.redo[back] = here;
    putWaiting(floor, back);
  }
  pieces[back] = (pieces[back] ?? 0) + 1;
  if (isFirst) firsts[back] = (firsts[back] ?? 0) + 1;
  return back;
}

function targetOf({ plan }: Floor, step: number, share: number): number {
  const last = (plan.backFrom[step + 1] ?? 0) - 1;
  let at = plan.backFrom[step] ?? 0;
  while (at < last && share >= (plan.backShare[at] ?? 1)) at += 1;
  return plan.backTo[at] ?? 0;
}

function finish(floor: Floor, lot: number, person: number): void {
  const { plan, marks, goodAt, missing } = floor;
  const variant = plan.variantOf[floor.step[lot] ?? 0] ?? 0;
  const pieces = piecesOf(floor, lot);
  const firsts = floor.firsts[lot] ?? 0;
  const good = plan.countsSeconds ? pieces : firsts;
  floor.asSeconds[variant] = (floor.asSeconds[variant] ?? 0) + pieces - firsts;
  while (floor.mark < marks.length && (marks[floor.mark] ?? 0) < floor.time) floor.mark += 1;
  let place = variant * (marks.length + 1) + floor.mark;
  goodAt[place] = (goodAt[place] ?? 0) + good;
  // The last stage is done piece by piece too: at the end of a day a part of the tray in hand is finished.
  for (let mark = floor.mark - 1; mark >= 0 && (marks[mark] ?? 0) > (floor.begun[person] ?? 0); mark -= 1) {
    const part = Math.floor(
      good *
        partDone(floor.plan.calendar, {
          ...{ begun: floor.begun[person] ?? 0, ended: floor.time, at: marks[mark] ?? 0 },
          last: floor.stretch[person] ?? 0,
        }),
    );
    goodAt[place] = (goodAt[place] ?? 0) - part;
    place -= 1;
    goodAt[place] = (goodAt[place] ?? 0) + part;
  }
  const wanted = missing[variant] ?? 0;
  if (wanted > 0) {
    const found = Math.min(wanted, good);
    missing[variant] = wanted - found;
    floor.shortOf -= found;
    if (floor.shortOf === 0) floor.enoughAt = floor.time;
  }
  dropLot(floor, lot);
  leave(floor, pieces);
}

function leave(floor: Floor, pieces: number): void {
  floor.left -= pieces;
  if (floor.left === 0) floor.doneAt = floor.time;
}
