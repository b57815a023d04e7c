import type { RouteId, StageId, StationId } from '../log/ids.ts';
import type { BatchFact } from '../set-up/batch-facts.ts';
import { byName, factOf, type Registers, unsortedFacts } from '../shop/registers.ts';

/**
 * Every stage that a batch in work goes through, in one order. The longest route gives the order; a stage that only
 * another route has stands right after the stage that it follows there.
 */
export function liveStages(registers: Registers): readonly StageId[] {
  const routes = firstBatches(registers)
    .toSorted(byName)
    .map(({ route }) => factOf(registers, { register: 'route', id: route })?.stages ?? [])
    .toSorted((a, b) => b.length - a.length);
  return routes.reduce<readonly StageId[]>(withRoute, []);
}

/** The stage that a station is used for; null when none was said, or pieces go through it no more. */
export function usualStage(registers: Registers, station: StationId): StageId | null {
  const stage = factOf(registers, { register: 'station', id: station })?.stage;
  return stage && liveStages(registers).includes(stage) ? stage : null;
}

/** Of each route the batch in work that is first by name: years leave hundreds of batches on a handful of routes. */
function firstBatches(registers: Registers): readonly BatchFact[] {
  const found = new Map<RouteId, BatchFact>();
  for (const { fact } of unsortedFacts(registers, 'batch')) {
    const known = found.get(fact.route);
    if (!fact.retired && (known === undefined || byName(fact, known) < 0)) found.set(fact.route, fact);
  }
  return [...found.values()];
}

/** An order with the stages of a route that it has not yet, each right after the stage that it follows there. */
export function withRoute(order: readonly StageId[], route: readonly StageId[]): readonly StageId[] {
  const merged = [...order];
  let after = -1;
  for (const stage of route) {
    const place = merged.indexOf(stage);
    if (place >= 0) after = place;
    else {
      after += 1;
      merged.splice(after, 0, stage);
    }
  }
  return merged;
}
