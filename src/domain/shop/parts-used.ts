import type { PartId } from '../log/ids.ts';
import { addTo, type Counter } from './counter.ts';
import type { Projection } from './projection.ts';

/** Signed sum of parts: used by pieces (negative), come back by send-back or saved from scrap (positive). */
export type PartsUsed = Counter<PartId>;

export const partsUsed: Projection<PartsUsed> = {
  empty: () => new Map(),
  add(state, { event, times }) {
    if (event.kind !== 'passed' && event.kind !== 'flawed') return;
    for (const { part, pieces } of event.parts) addTo(state, { key: part, by: times * pieces });
  },
};
