import type { Draft } from '../log/event.ts';
import type { PersonId, ShopDay, StationId } from '../log/ids.ts';
import type { Zone } from '../log/zone.ts';
import type { Problem } from './problem.ts';

/** What a command is judged with besides the shop: time, chance and the person come in as arguments. */
export interface Circumstances {
  /** The tablet's clock, ms UTC. */
  readonly now: number;
  readonly zone: Zone;
  readonly day: ShopDay;
  /** Whether the tablet's clock can be believed. */
  readonly clock: 'sound' | 'doubtful';
  readonly person: PersonId | null;
  readonly station: StationId;
  /** Letter of the station for the codes of new trays; null until it has one. */
  readonly letter: string | null;
  /** Milliseconds since the last tap of the spell; null at a break. */
  readonly elapsed: number | null;
  readonly newId: () => string;
}

export type Decision =
  | { readonly kind: 'events'; readonly drafts: readonly Draft[] }
  | { readonly kind: 'refused'; readonly problem: Problem };

export function happens(drafts: readonly Draft[]): Decision {
  return { kind: 'events', drafts };
}

export function refuse(problem: Problem): Decision {
  return { kind: 'refused', problem };
}

/** The part of an event's envelope that is known before the store numbers and stamps it. */
export function envelopeAt({
  zone,
  day,
  clock,
  person,
}: Omit<Circumstances, 'newId'>): Pick<Draft, 'zone' | 'day' | 'person' | 'clock'> {
  return { zone, day, person, ...(clock === 'doubtful' ? { clock } : {}) };
}
