import { drawnFrom } from './drawn-without-return.ts';
import type { Part } from './tally.ts';

/** Flawed pieces so far that count as strange once `pieces` are done: `low` and fewer, `high` and more. */
export interface Gate {
  readonly pieces: number;
  readonly low: number;
  readonly high: number;
}

/** What rounding may add to a tail: two splits that are equally strange must count as such. */
const rounding = 1 + 1e-9;

/** For any number of pieces done, the counts whose tail is no larger than `tail`. What was asked once is kept. */
export function gatesAt(
  whole: Part,
  { tail, logs }: { readonly tail: number; readonly logs: Float64Array },
): (pieces: number) => Gate {
  const known = new Map<number, Gate>();
  return (pieces) => {
    const gate = known.get(pieces) ?? gateAt(whole, { pieces, bound: tail * rounding, logs });
    known.set(pieces, gate);
    return gate;
  };
}

function gateAt(
  whole: Part,
  { pieces, bound, logs }: { readonly pieces: number; readonly bound: number; readonly logs: Float64Array },
): Gate {
  const { least, most, atMost, atLeast } = drawnFrom(whole, { drawn: pieces, logs });
  return {
    pieces,
    low: firstWhere((count) => atMost(count) > bound, { least, most }) - 1,
    high: firstWhere((count) => atLeast(count) <= bound, { least, most }),
  };
}

/** The first whole number from `least` on at which a condition holds that then holds for good; one past `most` if none. */
function firstWhere(
  holds: (count: number) => boolean,
  { least, most }: { readonly least: number; readonly most: number },
): number {
  let low = least;
  let high = most + 1;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (holds(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}
