/** A figure and how sure it is: from `low` to `high`, most likely `likely`. */
export interface Likely {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

export interface Purchase {
  /** Minor units. */
  readonly price: number;
  /** What each good piece then costs less, minor units; below 0 it costs more. */
  readonly savedEach: Likely;
  /** Good pieces. */
  readonly piecesAMonth: number;
}

/** After how much it has paid for itself; `null` is never. */
interface After {
  readonly soonest: number;
  readonly likely: number | null;
  readonly latest: number | null;
}

export type Payback =
  /** Even at best it saves nothing. */
  | { readonly kind: 'never' }
  /** Whole pieces, and months to the tenth; `months` is null while no pieces are made. */
  | { readonly kind: 'after'; readonly pieces: After; readonly months: After | null };

/**
 * How many good pieces a purchase takes to pay for itself (price ÷ saving a piece, rounded up), and how many months.
 * Simple payback: no interest, no wear, no value left in the end.
 *
 * @throws {RangeError} for a price or a pace below 0, or that are no numbers
 * @example
 * payback({ price: 300000, savedEach: { low: 200, likely: 300, high: 400 }, piecesAMonth: 200 })
 * // pieces 750, 1000 or 1500; months 3.8, 5 or 7.5
 */
export function payback({ price, savedEach, piecesAMonth }: Purchase): Payback {
  if (!(price >= 0 && piecesAMonth >= 0)) {
    throw new RangeError(`Not a price and a pace: ${price}, ${piecesAMonth}`);
  }
  const { low, likely, high } = savedEach;
  const soonest = piecesFor(price, high);
  if (soonest === null) return { kind: 'never' };
  const pieces = { soonest, likely: piecesFor(price, likely), latest: piecesFor(price, low) };
  if (piecesAMonth === 0) return { kind: 'after', pieces, months: null };
  const monthsOf = (count: number) => Math.ceil((10 * count) / piecesAMonth) / 10;
  return {
    kind: 'after',
    pieces,
    months: {
      soonest: monthsOf(soonest),
      likely: pieces.likely === null ? null : monthsOf(pieces.likely),
      latest: pieces.latest === null ? null : monthsOf(pieces.latest),
    },
  };
}

function piecesFor(price: number, savedEach: number): number | null {
  if (price === 0) return 0;
  return savedEach > 0 ? Math.ceil(price / savedEach) : null;
}
