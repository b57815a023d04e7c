import type { SpellEvent, TallyEvent } from '../log/event.ts';

/** An event whose deltas are added up; only tally events can be voided. */
export type SummedEvent = TallyEvent | SpellEvent;

/**
 * A sum over the log. `add` adds an event's deltas in place, as often as `times` says (below 0 it takes them back), and
 * looks at nothing but the event, so the order of arrival cannot matter. The state is plain data: it is stored whole
 * in a snapshot. It changes in place because copying it costs 400 times the addition itself.
 */
export interface Projection<State> {
  empty(): State;
  add(state: State, entry: { readonly event: SummedEvent; readonly times: number }): void;
}
