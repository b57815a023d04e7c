import type { Floor } from './floor.ts';
import { bitsAt, shareOf } from './keyed-random.ts';
import { piecesOf, putLater, putWaiting } from './lots.ts';

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
