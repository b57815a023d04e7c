import type { TallyEvent, VoidEvent } from '../log/event.ts';
import { type EventId, eventKey, hasSeen, type VersionVector } from '../log/version-vector.ts';

/** Voids in force, by the key of the event they take back. */
export type Voids = Map<string, Set<string>>;

export type Voidable = TallyEvent | VoidEvent;

export function isVoided(voids: Voids, id: EventId): boolean {
  return voids.has(eventKey(id));
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
  const target = eventKey(event.event);
  const before = books.voids.get(target) ?? new Set<string>();
  const hadAny = before.size > 0;
  if (sign > 0) before.add(eventKey(event));
  else before.delete(eventKey(event));
  const hasAny = before.size > 0;
  if (hasAny) books.voids.set(target, before);
  else books.voids.delete(target);
  if (hadAny !== hasAny && hasSeen(books.seen, event.event)) {
    enforce(books, { event: event.event, sign: hasAny ? -1 : 1 });
  }
}
