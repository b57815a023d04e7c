export interface PriceCheck {
  /** What is left of the price after the cost, as a fraction of the price; undefined at the price 0. */
  readonly margin: number | undefined;
  /** The least price, in whole minor units, that leaves the margin that is wanted. */
  readonly leastPrice: number;
  readonly verdict: 'below-cost' | 'below-margin' | 'enough';
}

/**
 * A price held against the cost of a good piece. The margin is a share of the price, not of the cost (common practice, no
 * source): at a cost of 60 a margin of 40 % asks for 100.
 *
 * @param options.price and cost in minor units, from 0
 * @param options.margin that is wanted, from 0 to less than 1
 * @throws {RangeError} for anything else
 * @example priceCheck({ price: 4500, cost: 3000, margin: 0.4 }) // margin 0.33, leastPrice 5000, below-margin
 */
export function priceCheck({
  price,
  cost,
  margin,
}: {
  readonly price: number;
  readonly cost: number;
  readonly margin: number;
}): PriceCheck {
  const isMoney = [price, cost].every((each) => each >= 0 && each < Number.POSITIVE_INFINITY);
  if (!(isMoney && margin >= 0 && margin < 1)) {
    throw new RangeError(`Not a price, a cost and a margin: ${price}, ${cost}, ${margin}`);
  }
  const leastPrice = roundUp(cost / (1 - margin));
  const isCovered = price >= cost;
  return {
    margin: price === 0 ? undefined : (price - cost) / price,
    leastPrice,
    verdict: isCovered ? (price >= leastPrice ? 'enough' : 'below-margin') : 'below-cost',
  };
}

/** To the next whole unit; what rounding has put above one is none. */
export const roundUp = (money: number): number => Math.ceil(money - 1e-9 * Math.max(1, Math.abs(money))) + 0;
