import type { TrayFacts } from '../log/event.ts';
import type { TrayId } from '../log/ids.ts';
import type { Projection, SummedEvent } from './projection.ts';
import type { Voidable } from './voids.ts';

export interface TrayRecord extends TrayFacts {
  /** When it was made up or split off, ms UTC; 0 while no event in force says so. */
  made: number;
  /** Events in force that are about it. */
  events: number;
}

/**
 * Every tray that some event in force is about, by id. When one tablet takes back the making of a tray on which
 * another works, its pieces are still shown, with the count below zero that asks for a recount.
 */
export type Trays = Map<TrayId, TrayRecord>;

export const trays: Projection<Trays> = {
  empty: () => new Map(),
  add(state, { event, times }) {
    if (!('of' in event)) return;
    for (const { tray, code, variant, species, batch } of 'into' in event
      ? [event.of, event.into]
      : [event.of]) {
      const record = state.get(tray) ?? { tray, code, variant, species, batch, made: 0, events: 0 };
      if (record.events === 0) state.set(tray, record);
      record.events += times;
      if (tray === trayBegunBy(event)) record.made += times * event.stamp.wall;
      if (record.events === 0) state.delete(tray);
    }
  },
};

/** The tray that an event begins: made up, or split off another. */
export function trayBegunBy(event: SummedEvent | Voidable): TrayId | undefined {
  if (event.kind === 'tray-made') return event.of.tray;
  return event.kind === 'tray-split' ? event.into.tray : undefined;
}

/** What events carry of a tray. */
export function trayFacts({ made, events, ...facts }: TrayRecord): TrayFacts {
  return facts;
}
