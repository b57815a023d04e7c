import type { ShopEvent, TallyEvent, VoidEvent } from '../log/event.ts';
import type { StationId } from '../log/ids.ts';
import { type EventId, eventKey, hasSeen, type VersionVector } from '../log/version-vector.ts';

/** Keys of the voids in force, by station and number of the event that they take back. */
export type Voids = Map<StationId, Map<number, Set<string>>>;

export type Voidable = TallyEvent | VoidEvent;

/** Whether an undo can take an event back: set-up is set anew instead, and a spell is no act of its own. */
export function isVoidable(event: ShopEvent): event is Voidable {
  return event.kind !== 'set-up' && event.kind !== 'spell-begun' && event.kind !== 'spell-ended';
}

export function isVoided(voids: Voids, id: EventId): boolean {
  return voidsInForce(voids, id) > 0;
}

/** How many voids take an event back. */
export function voidsInForce(voids: Voids, { station, seq }: EventId): number {
  return voids.get(station)?.get(seq)?.size ?? 0;
}

interface Books {
  readonly seen: VersionVector;
  readonly voids: Voids;
  /** Adds (1) or takes back (-1) the deltas of a tally event. */
  readonly post: (event: TallyEvent, sign: 1 | -1) => void;
}

/**
 * Brings an event into force (1) or out of it (-1). A tally event posts its deltas. A void in force keeps its
 * target out of force, however many voids there are; the copy that it carries says what to take back, so a
 * void may come before its target, twice, or be voided itself.
 */
export function enforce(books: Books, { event, sign }: { event: Voidable; sign: 1 | -1 }): void {
  if (event.kind !== 'voided') {
    books.post(event, sign);
    return;
  }
  const { station, seq } = event.event;
  const ofStation = books.voids.get(station) ?? new Map<number, Set<string>>();
  const before = ofStation.get(seq) ?? new Set<string>();
  const hadAny = before.size > 0;
  if (sign > 0) before.add(eventKey(event));
  else before.delete(eventKey(event));
  const hasAny = before.size > 0;
  if (hasAny) ofStation.set(seq, before);
  else ofStation.delete(seq);
  if (ofStation.size > 0) books.voids.set(station, ofStation);
  else books.voids.delete(station);
  if (hadAny !== hasAny && hasSeen(books.seen, event.event)) {
    enforce(books, { event: event.event, sign: hasAny ? -1 : 1 });
  }
}
