import type { PartId } from '../log/ids.ts';
import { countOf } from '../shop/counter.ts';
import type { Shop } from '../shop/shop.ts';

type Sums = Pick<Shop, 'stores' | 'partsUsed'>;

/**
 * Pieces of a part that lie ready on the shelf: received, corrected by counts and cleaned, less what pieces in work took and
 * with what they gave back. Below 0 the log has missed something: it asks for a count.
 */
export function partsOnHand({ stores, partsUsed }: Sums, part: PartId): number {
  return (
    countOf(stores, `received|${part}`) +
    countOf(stores, `corrected|${part}`) +
    countOf(stores, `cleaned|${part}`) +
    countOf(partsUsed, part)
  );
}

/** Pieces of a part that scrap has saved and that are still to be cleaned; below 0 it asks for a count. */
export function partsToClean({ stores }: Sums, part: PartId): number {
  return (
    countOf(stores, `saved|${part}`) +
    countOf(stores, `saved-corrected|${part}`) -
    countOf(stores, `cleaned|${part}`) -
    countOf(stores, `lost|${part}`)
  );
}

/** Whether anybody has said how many there are of a part: by a delivery or a count. Unknown is not zero. */
export function isTold({ stores }: Sums, part: PartId): boolean {
  return countOf(stores, `told|${part}`) > 0;
}
