import type { StageId } from '../log/ids.ts';
import { factOf, factsOf, type Registers } from '../shop/registers.ts';

/** Every stage that a batch in work goes through, in the order of its route; routes are laid one after another. */
export function liveStages(registers: Registers): readonly StageId[] {
  const stages = new Set<StageId>();
  for (const { fact } of factsOf(registers, 'batch')) {
    const route = fact.retired ? undefined : factOf(registers, { register: 'route', id: fact.route });
    for (const stage of route?.stages ?? []) stages.add(stage);
  }
  return [...stages];
}
