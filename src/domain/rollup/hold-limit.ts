import type { ResourceId, StageId } from '../log/ids.ts';
import { factOf, type Registers, unsortedFacts } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';
import { heldAt } from './holds.ts';

/** What limits a hold: its clamps or rack, with all the stages that share them. */
export interface HoldLimit {
  /** null where the stage has places of its own. */
  readonly resource: ResourceId | null;
  /** Places in all; null is no limit. */
  readonly limit: number | null;
  /** Pieces in them, of all stages that share them. */
  readonly held: number;
  /** Places that are free, never below 0; Infinity where there is no limit. */
  readonly free: number;
}

/** The limit of a stage as the shop is now; undefined for a stage that holds nothing. */
export function holdLimit(shop: Shop, stage: StageId): HoldLimit | undefined {
  const fact = factOf(shop.registers, { register: 'stage', id: stage });
  if (fact?.kind !== 'hold') return undefined;
  const named = fact.resource ?? null;
  const shared = named === null ? undefined : factOf(shop.registers, { register: 'resource', id: named });
  // A stage that names what the shop has no word on falls back on its own places.
  const resource = shared ? named : null;
  const limit = shared ? shared.capacity : fact.capacity;
  const stages = resource === null ? [stage] : stagesOn(shop.registers, resource);
  const held = stages.reduce((sum, each) => sum + heldAt(shop.ledger, each), 0);
  return {
    resource,
    limit,
    held,
    free: limit === null ? Number.POSITIVE_INFINITY : Math.max(0, limit - held),
  };
}

/** The holds that share a resource; those that were put away may still hold pieces. */
export function stagesOn(registers: Registers, resource: ResourceId): readonly StageId[] {
  const found: StageId[] = [];
  for (const { id, fact } of unsortedFacts(registers, 'stage')) {
    if (fact.kind === 'hold' && fact.resource === resource) found.push(id);
  }
  return found;
}

/** That nothing more goes in than what is free. */
export function isFull({ free, resource }: HoldLimit): {
  readonly kind: 'hold-is-full';
  readonly free: number;
  readonly resource?: ResourceId;
} {
  return { kind: 'hold-is-full', free, ...(resource === null ? {} : { resource }) };
}
