import type { StageId } from '../log/ids.ts';
import { liveStages } from '../route/live-stages.ts';
import type { Registers } from '../shop/registers.ts';

/** The stages of the routes in work, in their order, and after them the others that were ever worked at. */
export function everyStage(registers: Registers, workedAt: Iterable<StageId>): readonly StageId[] {
  return [...new Set([...liveStages(registers), ...workedAt])];
}
