import { keyOf } from '../log/key.ts';
import { addTo, type Counter } from './counter.ts';
import type { StageSpecies } from './ledger.ts';
import type { Projection } from './projection.ts';

/**
 * Judged visits per stage × species. A visit ends in one pass or one flaw; a repeat (a piece that this or a
 * later stage had sent back) is no first visit and counts in neither.
 */
export interface Visits {
  /** First visits that ended, the denominator of first-pass yield. */
  readonly first: Counter<StageSpecies>;
  /** First visits that ended in a pass, the numerator. */
  readonly clean: Counter<StageSpecies>;
  /** Visits of pieces that came again. */
  readonly repeat: Counter<StageSpecies>;
}

export const visits: Projection<Visits> = {
  empty: () => ({ first: new Map(), clean: new Map(), repeat: new Map() }),
  add(state, { event, times }) {
    if (event.kind !== 'passed' && event.kind !== 'flawed') return;
    const key: StageSpecies = keyOf(event.stage, event.of.species);
    const first = times * (event.pieces - event.again);
    addTo(state.first, { key, by: first });
    addTo(state.repeat, { key, by: times * event.again });
    if (event.kind === 'passed') addTo(state.clean, { key, by: first });
  },
};
