import type { PartId } from '../../domain/log/ids.ts';
import { allotted } from '../../domain/rollup/allotted.ts';
import { isTold, partsOnHand, partsToClean } from '../../domain/rollup/parts-on-hand.ts';
import type { PartFact } from '../../domain/set-up/facts.ts';
import { countOf } from '../../domain/shop/counter.ts';
import { factsOf } from '../../domain/shop/registers.ts';
import type { Shop } from '../../domain/shop/shop.ts';

/** How a part stands, the worst first: what is wrong with its count comes before what is wrong with its number. */
export type PartState = 'below-zero' | 'untold' | 'short' | 'low' | 'fine';

/** A part as the stores have it, in pieces. */
export interface PartRow {
  readonly id: PartId;
  readonly fact: PartFact;
  readonly onHand: number;
  readonly allotted: number;
  readonly free: number;
  readonly toClean: number;
  /** Whether anybody has said how many there are. */
  readonly told: boolean;
  readonly state: PartState;
}

/** Every part in use, and those put away of which something is left; by name. */
export function partRows(shop: Shop): readonly PartRow[] {
  const taken = allotted(shop);
  return factsOf(shop.registers, 'part').flatMap(({ id, fact }) => {
    const counts = {
      onHand: partsOnHand(shop, id),
      allotted: countOf(taken, id),
      toClean: partsToClean(shop, id),
      told: isTold(shop, id),
    };
    const isGone = counts.onHand === 0 && counts.toClean === 0 && counts.allotted === 0;
    if (fact.retired && isGone) return [];
    const free = counts.onHand - counts.allotted;
    return [{ id, fact, ...counts, free, state: stateOf(fact, { ...counts, free }) }];
  });
}

function stateOf(
  { lowMark }: PartFact,
  { onHand, toClean, told, free }: Omit<PartRow, 'id' | 'fact' | 'state' | 'allotted'>,
): PartState {
  if (onHand < 0 || toClean < 0) return 'below-zero';
  if (!told) return 'untold';
  if (free < 0) return 'short';
  return lowMark !== undefined && lowMark !== null && free <= lowMark ? 'low' : 'fine';
}
