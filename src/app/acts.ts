import type { ShopEvent } from '../domain/log/event.ts';
import { compareStamps } from '../domain/log/stamp.ts';
import { isVoidable, isVoided, type Voidable, type Voids } from '../domain/shop/voids.ts';

/** The events of one tap, or of one undo. */
export interface RecentAct {
  readonly events: readonly ShopEvent[];
}

/** How many acts are kept at hand for undo. */
const keptActs = 60;

/** Adds own events, in their order, to the acts: those of one tap carry one stamp. */
export function withEvents(acts: readonly RecentAct[], events: readonly ShopEvent[]): readonly RecentAct[] {
  const next = [...acts];
  for (const event of events) {
    // Beginning or ending a spell is no act that a person would speak of.
    if (event.kind === 'spell-begun' || event.kind === 'spell-ended') continue;
    const last = next.at(-1);
    const [first] = last?.events ?? [];
    if (last && first && compareStamps(first.stamp, event.stamp) === 0) {
      next[next.length - 1] = { events: [...last.events, event] };
    } else next.push({ events: [event] });
  }
  return next.slice(-keptActs);
}

/** What an act has that can be taken back and is still in force. */
export function inForce({ events }: RecentAct, voids: Voids): readonly Voidable[] {
  return events.filter(isVoidable).filter((event) => !isVoided(voids, event));
}

/** The latest act of the tally that still counts: what *undo last* takes back. */
export function lastUndoable(acts: readonly RecentAct[], voids: Voids): RecentAct | undefined {
  return acts.findLast((act) => inForce(act, voids).some((event) => event.kind !== 'voided'));
}

/** The latest undo that is in force, if nothing was tapped after it: what *put back* restores. */
export function lastPutBack(acts: readonly RecentAct[], voids: Voids): RecentAct | undefined {
  const last = acts.at(-1);
  return last && inForce(last, voids).some((event) => event.kind === 'voided') ? last : undefined;
}
