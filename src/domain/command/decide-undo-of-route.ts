import type { Shop } from '../shop/shop.ts';
import type { CommandOf } from './command.ts';
import { decideUndo, inForceOf } from './decide-undo.ts';
import { type Circumstances, type Decision, happens, refuse } from './decision.ts';
import { routeBrought, routeChangeIn, strandsPieces } from './undo-route.ts';

/** Takes back a change of route: its moves, and the route itself where no other word on it came since. */
export function decideUndoOfRoute(shop: Shop, command: CommandOf<'undo'>, at: Circumstances): Decision {
  const undone = decideUndo(shop, command, at);
  if (undone.kind === 'refused') return undone;
  const events = inForceOf(shop, command.events);
  const change = routeChangeIn(shop, events);
  if (strandsPieces(shop, { events, change })) return refuse({ kind: 'cannot-be-taken-back' });
  return happens([...(change ? [routeBrought(shop, change, at)] : []), ...undone.drafts]);
}
