import type { StageId } from '../log/ids.ts';
import { factOf, factsOf, type Registers } from '../shop/registers.ts';

/**
 * Every stage that a batch in work goes through, in one order. The longest route gives the order; a stage that only
 * another route has stands right after the stage that it follows there.
 */
export function liveStages(registers: Registers): readonly StageId[] {
  const routes = factsOf(registers, 'batch')
    .filter(({ fact }) => !fact.retired)
    .map(({ fact }) => factOf(registers, { register: 'route', id: fact.route })?.stages ?? [])
    .toSorted((a, b) => b.length - a.length);
  return routes.reduce<readonly StageId[]>(withRoute, []);
}

function withRoute(order: readonly StageId[], route: readonly StageId[]): readonly StageId[] {
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
