import type { PartId, VariantId } from '../log/ids.ts';
import type { VariantFact } from '../set-up/facts.ts';
import { type Counter, countOf } from '../shop/counter.ts';
import { factsOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';
import { allotted } from './allotted.ts';
import { isTold, partsOnHand } from './parts-on-hand.ts';

/** How many pieces of a variant the free parts are enough for. */
export interface CanStart {
  readonly variant: VariantId;
  /** null while nobody has said of any of its parts how many there are. */
  readonly pieces: number | null;
  /** The part that is used up first; the first on the bill where several are. */
  readonly limit: PartId | null;
  /** Parts of the bill of which nobody has said how many there are: the number takes no account of them. */
  readonly untold: readonly PartId[];
}

/**
 * For each variant in use that has a bill, by name: what could be started now if nothing else were. Free is what is on hand
 * less what the pieces in work will still take.
 */
export function canStart(shop: Shop): readonly CanStart[] {
  const taken = allotted(shop);
  return factsOf(shop.registers, 'variant')
    .filter(({ fact }) => !fact.retired && fact.bill.length > 0)
    .map(({ id, fact }) => ({ variant: id, ...startOf(shop, { bill: needOf(fact.bill), taken }) }));
}

/** Pieces of each part that one piece of a variant takes, in the order of the bill. */
export function needOf(bill: VariantFact['bill']): ReadonlyMap<PartId, number> {
  const need = new Map<PartId, number>();
  for (const { part, each } of bill) need.set(part, (need.get(part) ?? 0) + each);
  return need;
}

function startOf(
  shop: Shop,
  { bill, taken }: { bill: ReadonlyMap<PartId, number>; taken: Counter<PartId> },
): Omit<CanStart, 'variant'> {
  let pieces: number | null = null;
  let limit: PartId | null = null;
  const untold: PartId[] = [];
  for (const [part, each] of bill) {
    if (!isTold(shop, part)) {
      untold.push(part);
      continue;
    }
    const free = partsOnHand(shop, part) - countOf(taken, part);
    const enough = Math.max(0, Math.floor(free / each));
    if (pieces === null || enough < pieces) {
      pieces = enough;
      limit = part;
    }
  }
  return { pieces, limit, untold };
}
