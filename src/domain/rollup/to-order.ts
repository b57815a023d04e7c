import type { BatchId, PartId, VariantId } from '../log/ids.ts';
import { atStage } from '../log/place.ts';
import { addTo, type Counter, countOf } from '../shop/counter.ts';
import { placesOf } from '../shop/positions.ts';
import { factOf, factsOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';
import { allotted } from './allotted.ts';
import { needOf } from './can-start.ts';
import { isTold, partsOnHand, partsToClean } from './parts-on-hand.ts';

/** One part that should be ordered, in pieces. */
export interface ToOrder {
  readonly part: PartId;
  readonly order: number;
  /** What the plan takes beyond the pieces in work. */
  readonly forPlan: number;
  readonly lowMark: number;
  /** On hand less what the pieces in work will still take. */
  readonly free: number;
  /** Saved from scrap, and enough for so many fewer once they are cleaned. */
  readonly toClean: number;
}

/**
 * What is to be ordered so that the rest of the plan can be started and the low marks are still on the shelf then: plan + low
 * mark − free, of each part in use of which it is known how many there are. Scrap that is still to come is not in it: the
 * allowance for it belongs to the plan. Parts by name.
 */
export function toOrder(shop: Shop): readonly ToOrder[] {
  const taken = allotted(shop);
  const plan = partsOfPlan(shop);
  return factsOf(shop.registers, 'part').flatMap(({ id: part, fact }) => {
    if (fact.retired || !isTold(shop, part)) return [];
    const free = partsOnHand(shop, part) - countOf(taken, part);
    const forPlan = countOf(plan, part);
    const lowMark = fact.lowMark ?? 0;
    const order = forPlan + lowMark - free;
    return order > 0
      ? [{ part, order, forPlan, lowMark, free, toClean: Math.max(0, partsToClean(shop, part)) }]
      : [];
  });
}

/** Parts that the pieces take that are wanted and not begun. */
function partsOfPlan(shop: Shop): Counter<PartId> {
  const parts: Counter<PartId> = new Map();
  for (const { variant, pieces } of stillToStart(shop)) {
    const bill = factOf(shop.registers, { register: 'variant', id: variant })?.bill ?? [];
    for (const [part, each] of needOf(bill)) addTo(parts, { key: part, by: each * pieces });
  }
  return parts;
}

/**
 * Pieces that each batch in use wants and that are neither made nor in work. Only firsts count: a second is not what was
 * wanted. What is too much of one variant does not make up for another.
 */
export function stillToStart(
  shop: Shop,
): readonly { readonly batch: BatchId; readonly variant: VariantId; readonly pieces: number }[] {
  const live = factsOf(shop.registers, 'batch').filter(({ fact }) => !fact.retired);
  const begun = begunOf(shop, new Set(live.map(({ id }) => id)));
  return live.flatMap(({ id: batch, fact }) =>
    fact.wanted.flatMap(({ variant, good }) => {
      const pieces = good - countOf(begun, `${batch}|${variant}`);
      return pieces > 0 ? [{ batch, variant, pieces }] : [];
    }),
  );
}

/** Firsts that are finished or in work, by batch and variant. */
function begunOf(
  { trays, positions }: Shop,
  batches: ReadonlySet<BatchId>,
): Counter<`${BatchId}|${VariantId}`> {
  const begun: Counter<`${BatchId}|${VariantId}`> = new Map();
  for (const { tray, batch, variant } of trays.values()) {
    if (!batches.has(batch)) continue;
    for (const { place, pieces } of placesOf(positions, tray).values())
      if ((atStage(place) || place.at === 'finished') && place.grade === 'first')
        addTo(begun, { key: `${batch}|${variant}`, by: pieces });
  }
  return begun;
}
