import type { PartId } from '../log/ids.ts';
import { addTo, type Counter } from './counter.ts';
import type { Projection } from './projection.ts';

/** What the stores tell of their parts themselves; what pieces use and give back is in `partsUsed`. */
export interface Stores {
  /** Pieces that came in with deliveries. */
  readonly received: Counter<PartId>;
  /** Of these, pieces whose price is known, and what they cost together, in whole minor units. */
  readonly priced: Counter<PartId>;
  readonly paid: Counter<PartId>;
}

export const stores: Projection<Stores> = {
  empty: () => ({ received: new Map(), priced: new Map(), paid: new Map() }),
  add(state, { event, times }) {
    if (event.kind !== 'parts-received') return;
    for (const { part, pieces, cost } of event.parts) {
      addTo(state.received, { key: part, by: times * pieces });
      if (cost === null) continue;
      addTo(state.priced, { key: part, by: times * pieces });
      addTo(state.paid, { key: part, by: times * cost });
    }
  },
};
