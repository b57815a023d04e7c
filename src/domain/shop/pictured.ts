import type { VariantId } from '../log/ids.ts';
import { addTo, type Counter } from './counter.ts';
import type { Projection } from './projection.ts';

/** How many photos show a variant as it is: its own, and those of its pieces that show no flaw. */
export type Pictured = Counter<VariantId>;

export const pictured: Projection<Pictured> = {
  empty: () => new Map(),
  add(state, { event, times }) {
    if (event.kind === 'photo-taken' && event.shows.kind === 'variant') {
      addTo(state, { key: event.shows.variant, by: times });
    } else if (event.kind === 'piece-photographed' && event.reasons.length === 0) {
      addTo(state, { key: event.of.variant, by: times });
    }
  },
};
