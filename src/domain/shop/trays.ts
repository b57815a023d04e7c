import type { TrayFacts } from '../log/event.ts';
import type { TrayId } from '../log/ids.ts';
import type { Projection } from './projection.ts';

export interface TrayRecord extends TrayFacts {
  /** When it was made up, ms UTC. */
  readonly made: number;
}

/** Every tray that was made up or split off, by id. */
export type Trays = Map<TrayId, TrayRecord>;

export const trays: Projection<Trays> = {
  empty: () => new Map(),
  add(state, { event, sign }) {
    const facts =
      event.kind === 'tray-made' ? event.of : event.kind === 'tray-split' ? event.into : undefined;
    if (!facts) return;
    if (sign > 0) state.set(facts.tray, { ...facts, made: event.stamp.wall });
    else state.delete(facts.tray);
  },
};

/** What events carry of a tray. */
export function trayFacts({ made, ...facts }: TrayRecord): TrayFacts {
  return facts;
}
