import type { BatchId, StageId } from '../log/ids.ts';
import type { Grade, Place, StagePlace } from '../log/place.ts';
import { factOf, type Registers } from '../shop/registers.ts';

/** The ordered stages of a batch's work; undefined when the batch or its route is not known. */
export function routeOfBatch(registers: Registers, batch: BatchId): readonly StageId[] | undefined {
  const route = factOf(registers, { register: 'batch', id: batch })?.route;
  return route && factOf(registers, { register: 'route', id: route })?.stages;
}

/** Where a piece of `grade` stands when it comes to the stage after `place`; the end of the route is finished. */
export function placeAfter(
  route: readonly StageId[],
  { stage, grade, redo }: StagePlace & { grade: Grade },
): Place {
  const here = route.indexOf(stage);
  const next = route[here + 1];
  if (next === undefined) return { at: 'finished', grade };
  const stillRepeats = redo !== null && route.indexOf(redo) > here;
  return { at: 'waiting', stage: next, grade, redo: stillRepeats ? redo : null };
}

/** Where a piece stands that `place.stage` sends back to an earlier stage; the later of two repeats stays. */
export function placeSentBack(
  route: readonly StageId[],
  { place, to }: { place: StagePlace; to: StageId },
): Place {
  const { stage, grade, redo } = place;
  const farthest = redo !== null && route.indexOf(redo) > route.indexOf(stage) ? redo : stage;
  return { at: 'waiting', stage: to, grade, redo: farthest };
}

/** The stages of `route` before `stage`, in order: where it can send a piece back to. */
export function stagesBefore(route: readonly StageId[], stage: StageId): readonly StageId[] {
  return route.slice(0, Math.max(0, route.indexOf(stage)));
}
