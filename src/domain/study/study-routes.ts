import type { BatchId, StageId } from '../log/ids.ts';
import { liveStages, withRoute } from '../route/live-stages.ts';
import { routeOfBatch } from '../route/route.ts';
import { factsOf, type Registers } from '../shop/registers.ts';

/** Which stages there are, as the set-up has them at the time of the question. */
export interface StudyRoutes {
  /** Every stage that a batch in work goes through, in one order. */
  readonly stages: readonly StageId[];
  /** The stages of each batch in their order; a batch that is left out goes through all of `stages`. */
  readonly byBatch: ReadonlyMap<BatchId, readonly StageId[]>;
}

/** The routes of a shop: those of batches that are done with too, since their pieces have been judged. */
export function routesIn(registers: Registers): StudyRoutes {
  const byBatch = new Map<BatchId, readonly StageId[]>();
  for (const { id } of factsOf(registers, 'batch')) {
    const route = routeOfBatch(registers, id);
    if (route) byBatch.set(id, route);
  }
  return { stages: liveStages(registers), byBatch };
}

/**
 * The stages that pieces of some batches go through, in the order of the shop; a stage that no batch in work has stands
 * where its own route has it. One that has judged a piece and stands on no route any more is not among them.
 */
export function stagesOf({ stages, byBatch }: StudyRoutes, batches: Iterable<BatchId>): readonly StageId[] {
  const routes = [...batches].map((batch) => byBatch.get(batch) ?? stages);
  const wanted = new Set(routes.flat());
  return routes.reduce<readonly StageId[]>(
    withRoute,
    stages.filter((stage) => wanted.has(stage)),
  );
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
