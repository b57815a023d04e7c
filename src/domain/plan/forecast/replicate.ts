import { clearFloor } from './clear-floor.ts';
import { drawBeliefs, unloadsFirst, whim } from './draw-beliefs.ts';
import { type Floor, LOADING } from './floor.ts';
import { keyOf } from './keyed-random.ts';
import { releaseReady } from './lots.ts';
import { beginWork, canBegin, endWork } from './visit.ts';

/** Names the stream of the order of lots; `drawBeliefs` names the others. */
export const ORDER = 16;

/**
 * Works the plan off once, by discrete events, with the luck of this replication; what came of it stands on the floor
 * until the next one. Ends when nothing is left, when nothing can go on (then `doneAt` stays Infinity), at the end of
 * everybody's calendar, and after `mostVisits`.
 *
 * There is no list of events: people are few, so the next one to be free is found by looking at each; lots that cure
 * at a stage are ready in the order in which they were loaded, so the first one of each list is the next.
 *
 * The rule by which people choose: what is due first; of that clamps and racks before benches, since a cure goes on while
 * they do something else; then what is nearest to its end, by the order of the stages; there what has come first, and at
 * a hold loading before unloading. A hold is loaded when enough of a tray finds place in it, or as many of all its places
 * are free; who takes up a tray does all of it. It is no best schedule, but what a sensible shop does without one. Where
 * the plan does not say that it holds (`takes`), people go by it more or less often, see to clamps first or do not, empty
 * or fill them first, and put what is left of a torn tray behind the others; which of the trays that wait now they take
 * first nobody knows.
 */
export function replicate(
  floor: Floor,
  { seed, replication }: { readonly seed: number; readonly replication: number },
): void {
  const key = keyOf(keyOf(0, seed), replication);
  clearFloor(floor, keyOf(key, ORDER));
  drawBeliefs(floor, key);
  while (floor.left > 0 && floor.totalVisits < floor.plan.mostVisits) {
    const person = nextPerson(floor);
    const isFree = person >= 0 && !(floor.idlers > 0 && floor.soonest < (floor.at[person] ?? 0));
    floor.time = isFree
      ? (floor.at[person] ?? 0)
      : floor.idlers > 0
        ? floor.soonest
        : Number.POSITIVE_INFINITY;
    if (floor.time === Number.POSITIVE_INFINITY) return;
    releaseReady(floor);
    if (isFree) {
      if ((floor.lotOf[person] ?? -1) >= 0) endWork(floor, person);
      findWork(floor, person);
    }
    if (floor.idlers > 0) wakeIdlers(floor);
  }
}

/** The one who is free first, the first of those who are at once; −1 when nobody will be. */
function nextPerson({ at, plan }: Floor): number {
  let found = -1;
  let soonest = Number.POSITIVE_INFINITY;
  for (let person = 0; person < plan.people; person += 1) {
    const when = at[person] ?? soonest;
    if (when < soonest) {
      soonest = when;
      found = person;
    }
  }
  return found;
}

function wakeIdlers(floor: Floor): void {
  const { idle, plan } = floor;
  for (let person = 0; person < plan.people; person += 1) {
    if (idle[person] === 0) continue;
    idle[person] = 0;
    floor.idlers -= 1;
    findWork(floor, person);
  }
}

/** Gives the person something to do, or lets them wait for it, or for their hours. */
function findWork(floor: Floor, person: number): void {
  if (floor.time >= (floor.closes[person] ?? 0) && !comesIn(floor, person)) return;
  if (takeUp(floor, person)) return;
  floor.idle[person] = 1;
  floor.idlers += 1;
  floor.at[person] = Number.POSITIVE_INFINITY;
}

/** Whether the person is there, at the beginning of another stretch; else it is noted when that will be. */
function comesIn(floor: Floor, person: number): boolean {
  const { time } = floor;
  const { first, from, to } = floor.plan.calendar;
  const beyond = first[person + 1] ?? 0;
  let stretch = floor.stretch[person] ?? 0;
  while (stretch < beyond && (to[stretch] ?? 0) <= time) stretch += 1;
  floor.stretch[person] = stretch;
  const begins = stretch < beyond ? (from[stretch] ?? 0) : Number.POSITIVE_INFINITY;
  if (begins > time) {
    floor.at[person] = begins;
    return false;
  }
  floor.closes[person] = to[stretch] ?? 0;
  return true;
}

function takeUp(floor: Floor, person: number): boolean {
  const share = whim(floor);
  if (share >= 0) return takeAny(floor, person, share);
  for (let due = 0; due < floor.plan.classes; due += 1) {
    if (floor.tends && takeLatest(floor, person, due, floor.holdLists)) return true;
    if (takeLatest(floor, person, due, floor.tends ? floor.benchLists : floor.allLists)) return true;
  }
  return false;
}

/** Begins on what is nearest to its end, of some of the lists of a class; false when nothing can be begun on. */
function takeLatest(floor: Floor, person: number, due: number, among: Int32Array): boolean {
  const first = due * among.length;
  for (let word = among.length - 1; word >= 0; word -= 1) {
    let lists = (floor.masks[first + word] ?? 0) & (among[word] ?? 0);
    while (lists !== 0) {
      const bit = 31 - Math.clz32(lists);
      const list = (first + word) * 32 + bit;
      if (canBegin(floor, list)) {
        const unloading = floor.kindOfList[list] === LOADING ? (floor.lengths[list - 1] ?? 0) : 0;
        const chosen = unloadsFirst(floor, unloading, floor.lengths[list] ?? 0) ? list - 1 : list;
        floor.picks += 1;
        beginWork(floor, person, chosen);
        return true;
      }
      lists &= ~(1 << bit);
    }
  }
  return false;
}

/** The same where somebody takes what comes to hand: each lot that can be begun on is as likely, at a hold first where people tend to it. */
function takeAny(floor: Floor, person: number, share: number): boolean {
  return (
    (floor.tends && takeAnyOf(floor, person, { share, among: floor.holdLists })) ||
    takeAnyOf(floor, person, { share, among: floor.allLists })
  );
}

function takeAnyOf(
  floor: Floor,
  person: number,
  { share, among }: { readonly share: number; readonly among: Int32Array },
): boolean {
  const { masks, lengths, able } = floor;
  let found = 0;
  let lots = 0;
  for (let word = 0; word < masks.length; word += 1) {
    const wanted = among[word % among.length] ?? 0;
    for (let lists = (masks[word] ?? 0) & wanted; lists !== 0; lists &= lists - 1) {
      const list = word * 32 + 31 - Math.clz32(lists & -lists);
      if (!canBegin(floor, list)) continue;
      able[found] = list;
      found += 1;
      lots += lengths[list] ?? 0;
    }
  }
  if (found === 0) return false;
  let left = Math.floor(share * lots);
  let at = 0;
  while (at < found - 1 && left >= (lengths[able[at] ?? 0] ?? 0)) {
    left -= lengths[able[at] ?? 0] ?? 0;
    at += 1;
  }
  floor.picks += 1;
  beginWork(floor, person, able[at] ?? 0);
  return true;
}
