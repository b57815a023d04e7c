/** Lots and the lists that they are in: each lot is in one at a time, chained by `next`. */
import type { Floor } from './floor.ts';

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
