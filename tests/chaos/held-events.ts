import type { Held, TapKind } from '../support/tap-ledger.ts';

/** As much of a record of the app's store as the books need. */
export interface EventSketch {
  readonly station: string;
  readonly seq: number;
  readonly event: {
    readonly kind: string;
    readonly stamp: { readonly wall: number; readonly tick: number };
    readonly outcome?: { readonly kind: string };
  };
}

/** The records of the store for the books, in the order in which they were written. */
export function heldOf(records: readonly EventSketch[]): readonly Held[] {
  return records
    .toSorted(
      ({ seq: a, event: { stamp: one } }, { seq: b, event: { stamp: other } }) =>
        one.wall - other.wall || one.tick - other.tick || a - b,
    )
    .map(({ station, seq, event }) => ({
      key: `${station}/${seq}`,
      text: JSON.stringify(event),
      tap: tapOf(event),
    }));
}

function tapOf({ kind, outcome }: EventSketch['event']): TapKind | null {
  if (kind === 'passed') return 'pass';
  if (kind === 'voided') return 'undo';
  if (kind !== 'flawed') return null;
  return outcome?.kind === 'mended' || outcome?.kind === 'scrapped' ? outcome.kind : null;
}
