import type { Draft } from '../log/event.ts';
import { placeKey } from '../log/place.ts';
import { addTo, type Counter } from '../shop/counter.ts';
import { placesOf } from '../shop/positions.ts';
import type { Shop } from '../shop/shop.ts';
import { trayBegunBy } from '../shop/trays.ts';
import { isVoided, type Voidable } from '../shop/voids.ts';
import type { CommandOf } from './command.ts';
import { type Circumstances, type Decision, envelopeAt, happens, refuse } from './decision.ts';

/** Takes back the events of one tap together; those of a change of route are for decide-undo-of-route. */
export function decideUndo(shop: Shop, { events }: CommandOf<'undo'>, at: Circumstances): Decision {
  const inForce = inForceOf(shop, events);
  if (inForce.length === 0) return refuse({ kind: 'already-taken-back' });
  if (inForce.some((event) => leavesPiecesBehind(shop, event)))
    return refuse({ kind: 'cannot-be-taken-back' });
  return happens(inForce.map((event): Draft => ({ ...envelopeAt(at), kind: 'voided', event })));
}

export function inForceOf({ voids }: Shop, events: readonly Voidable[]): readonly Voidable[] {
  return events.filter((event) => !isVoided(voids, event));
}

/** Whether events belong to a change of route, as they are or as what an undo of theirs took back. */
export function isOfRoute(events: readonly Voidable[]): boolean {
  return events.some((event) =>
    event.kind === 'voided' ? isOfRoute([event.event]) : event.kind === 'rerouted',
  );
}

/**
 * Whether taking back an event would take a tray away while something is left on it: its pieces have moved on
 * since, and nobody would see them any more.
 */
function leavesPiecesBehind({ positions }: Shop, event: Voidable): boolean {
  const tray = trayBegunBy(event);
  if (tray === undefined || !('moves' in event)) return false;
  const left: Counter = new Map();
  for (const [key, { pieces }] of placesOf(positions, tray)) addTo(left, { key, by: pieces });
  for (const move of event.moves) {
    if (move.tray === tray && move.to) addTo(left, { key: placeKey(move.to), by: -move.pieces });
  }
  return left.size > 0;
}
