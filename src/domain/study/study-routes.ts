import type { BatchId, StageId } from '../log/ids.ts';

/** Which stages there are, as the set-up has them at the time of the question. */
export interface StudyRoutes {
  /** Every stage that a batch in work goes through, in one order. */
  readonly stages: readonly StageId[];
  /** The stages of each batch in their order; a batch that is left out goes through all of `stages`. */
  readonly byBatch: ReadonlyMap<BatchId, readonly StageId[]>;
}

/**
 * The stages that pieces of some batches go through, in the order of the shop. A stage that has judged a piece of theirs
 * and stands on none of their routes any more is no longer among them.
 */
export function stagesOf({ stages, byBatch }: StudyRoutes, batches: Iterable<BatchId>): readonly StageId[] {
  const wanted = new Set<StageId>();
  for (const batch of batches) for (const stage of byBatch.get(batch) ?? stages) wanted.add(stage);
  return [...stages.filter((stage) => wanted.delete(stage)), ...wanted];
}

/** The stages that a piece of a batch has been through when it leaves a stage, that one with it. */
export function stagesUpTo(
  { stages, byBatch }: StudyRoutes,
  { batch, stage }: { readonly batch: BatchId; readonly stage: StageId },
): readonly StageId[] {
  const route = byBatch.get(batch) ?? stages;
  const last = route.indexOf(stage);
  return last < 0 ? [stage] : route.slice(0, last + 1);
}
