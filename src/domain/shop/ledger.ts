import type { SpeciesId, StageId, VariantId } from '../log/ids.ts';
import { keyOf } from '../log/key.ts';
import { atStage, type Grade, type Move } from '../log/place.ts';
import { addTo, type Counter } from './counter.ts';
import type { Projection } from './projection.ts';

/** `stage|species`. */
export type StageSpecies = `${StageId}|${SpeciesId}`;
/** `stage|species|grade|waiting or held`. */
type WipKey = `${StageSpecies}|${Grade}|${'waiting' | 'held'}`;

/**
 * Pieces by species as sums of moves. Conserved at every moment:
 * made + corrected = in process (sum of wip) + finished + scrapped.
 */
export interface Ledger {
  readonly made: Counter<`${SpeciesId}|${VariantId}`>;
  /** Pieces that recounts found (positive) or missed (negative). */
  readonly corrected: Counter<`${SpeciesId}|${VariantId}`>;
  readonly wip: Counter<WipKey>;
  readonly finished: Counter<`${SpeciesId}|${VariantId}|${Grade}`>;
  readonly scrapped: Counter<`${SpeciesId}|${VariantId}`>;
}

export const ledger: Projection<Ledger> = {
  empty: () => ({
    made: new Map(),
    corrected: new Map(),
    wip: new Map(),
    finished: new Map(),
    scrapped: new Map(),
  }),
  add(state, { event, times }) {
    if (!('moves' in event)) return;
    const { species, variant } = event.of;
    const outside = event.kind === 'recounted' ? state.corrected : state.made;
    for (const move of event.moves) {
      const by = times * move.pieces;
      if (!move.from) addTo(outside, { key: keyOf(species, variant), by });
      if (!move.to) addTo(outside, { key: keyOf(species, variant), by: -by });
      addAt(state, { place: move.from, of: event.of, by: -by });
      addAt(state, { place: move.to, of: event.of, by });
    }
  },
};

interface At {
  readonly place: Move['from'];
  readonly of: { readonly species: SpeciesId; readonly variant: VariantId };
  readonly by: number;
}

function addAt(state: Ledger, { place, of: { species, variant }, by }: At): void {
  if (!place) return;
  if (atStage(place)) {
    const key = keyOf(keyOf(place.stage, species), keyOf(place.grade, place.at));
    addTo(state.wip, { key, by });
  } else if (place.at === 'finished') {
    addTo(state.finished, { key: keyOf(keyOf(species, variant), place.grade), by });
  } else addTo(state.scrapped, { key: keyOf(species, variant), by });
}
