import type { PartId } from '../log/ids.ts';
import { addTo, type Counter } from './counter.ts';
import type { Projection, SummedEvent } from './projection.ts';

/**
 * What became of parts, piece by piece: with `partsUsed`, which has what pieces in work took and gave back, all there is to
 * know of the stores.
 */
export interface Stores {
  /** Pieces that came in with deliveries. */
  readonly received: Counter<PartId>;
  /** Of these, pieces whose price is known, and what they cost together, in whole minor units. */
  readonly priced: Counter<PartId>;
  readonly paid: Counter<PartId>;
  /** What counts have added to the shelf and taken from it. */
  readonly corrected: Counter<PartId>;
  /** Saved from scrap, to be cleaned before they are used again. */
  readonly saved: Counter<PartId>;
  /** What counts have added to what is to be cleaned, and taken from it. */
  readonly savedCorrected: Counter<PartId>;
  /** Cleaned, and back on the shelf. */
  readonly cleaned: Counter<PartId>;
  readonly lostInCleaning: Counter<PartId>;
  /** Deliveries and counts by which it is known how many there are; of a part without one nobody has said. */
  readonly told: Counter<PartId>;
}

export const stores: Projection<Stores> = {
  empty: () => ({
    received: new Map(),
    priced: new Map(),
    paid: new Map(),
    corrected: new Map(),
    saved: new Map(),
    savedCorrected: new Map(),
    cleaned: new Map(),
    lostInCleaning: new Map(),
    told: new Map(),
  }),
  add(state, { event, times }) {
    switch (event.kind) {
      case 'parts-received':
        for (const line of event.parts) addLine(state, { line, times });
        return;
      case 'parts-counted': {
        const { part: key, heap, pieces } = event;
        addTo(heap === 'shelf' ? state.corrected : state.savedCorrected, { key, by: times * pieces });
        if (heap === 'shelf') addTo(state.told, { key, by: times });
        return;
      }
      case 'parts-cleaned':
        addTo(state.cleaned, { key: event.part, by: times * event.back });
        addTo(state.lostInCleaning, { key: event.part, by: times * event.lost });
        return;
      case 'flawed':
        for (const { part, pieces } of event.toClean ?? [])
          addTo(state.saved, { key: part, by: times * pieces });
    }
  },
};

type Delivery = Extract<SummedEvent, { kind: 'parts-received' }>;

function addLine(
  state: Stores,
  { line: { part: key, pieces, cost }, times }: { line: Delivery['parts'][number]; times: number },
): void {
  addTo(state.received, { key, by: times * pieces });
  addTo(state.told, { key, by: times });
  if (cost === null) return;
  addTo(state.priced, { key, by: times * pieces });
  addTo(state.paid, { key, by: times * cost });
}
