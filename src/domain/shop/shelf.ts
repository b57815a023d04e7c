import type { ReasonId, VariantId } from '../log/ids.ts';
import { keyOf } from '../log/key.ts';
import type { Grade } from '../log/place.ts';
import type { ShelfPlace } from '../log/shelf-facts.ts';
import { addTo, type Counter } from './counter.ts';
import type { Projection } from './projection.ts';

/** What became of finished pieces; what was finished itself is in the ledger. */
export interface Shelf {
  /** What moves brought to a place less what they took from it: below 0 on the shelf, from which all moves begin. */
  readonly moved: Counter<`${VariantId}|${Grade}|${ShelfPlace}`>;
  /** Pieces that were lowered to seconds and not raised again, by what is to be seen on them. */
  readonly blemishes: Counter<`${VariantId}|${ReasonId}`>;
  /** Pieces sold at a price that is known, and what they brought, in minor units. */
  readonly priced: Counter<`${VariantId}|${Grade}`>;
  readonly takings: Counter<`${VariantId}|${Grade}`>;
}

export const shelf: Projection<Shelf> = {
  empty: () => ({ moved: new Map(), blemishes: new Map(), priced: new Map(), takings: new Map() }),
  add(state, { event, times }) {
    if (event.kind === 'raised' || (event.kind === 'flawed' && event.outcome.kind === 'second')) {
      const by = (event.kind === 'raised' ? -times : times) * event.pieces;
      for (const reason of event.reasons) {
        addTo(state.blemishes, { key: keyOf(event.of.variant, reason), by });
      }
    }
    if (event.kind !== 'shelf-moved') return;
    const { variant, grade, pieces, from, to, price } = event;
    const key = keyOf(variant, grade);
    addTo(state.moved, { key: keyOf(key, from), by: -times * pieces });
    addTo(state.moved, { key: keyOf(key, to), by: times * pieces });
    const sold = (to === 'sold' ? pieces : 0) - (from === 'sold' ? pieces : 0);
    if (price === null || sold === 0) return;
    addTo(state.priced, { key, by: times * sold });
    addTo(state.takings, { key, by: times * sold * price });
  },
};
