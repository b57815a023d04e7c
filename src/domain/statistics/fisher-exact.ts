import { type Count, demandCount } from './counts.ts';

/** Chances, if both shares are the same, of counts as far apart as these. */
export interface FisherExact {
  /** Either way: all tables that are no likelier than the one found. */
  readonly twoSided: number;
  /** The first share as low as found, or lower. */
  readonly less: number;
  /** The first share as high as found, or higher. */
  readonly greater: number;
}

/** Tables whose chances differ by less than this share are equally likely, as in R's fisher.test. */
const TIE = 1 + 1e-7;

/** The hypergeometric chances of `first.k`, as multiples of the likeliest one, going out from it in one direction. */
function* outwards(from: number, to: number, ratio: (x: number) => number): Generator<[number, number]> {
  const step = Math.sign(to - from);
  let weight = 1;
  for (let x = from; x !== to; x += step) {
    weight *= step > 0 ? ratio(x) : 1 / ratio(x - 1);
    // What has faded to nothing adds nothing, nor does what lies beyond it.
    if (weight === 0) return;
    yield [x + step, weight];
  }
}

/**
 * Fisher's exact test on two counts, given both totals. Sums the hypergeometric distribution relative to its mode, so
 * that no logarithm of a factorial cancels; n = 10⁵ takes a few milliseconds. A chance below about 10⁻³⁰⁰ comes
 * out as 0; without a piece on either side all are 1.
 * Source: R. A. Fisher, Statistical Methods for Research Workers, 5th ed. (1934), section 21.02; two-sided by the sum
 * of the chances not above the one observed, as R's fisher.test does.
 */
export function fisherExact(first: Count, second: Count): FisherExact {
  demandCount(first);
  demandCount(second);
  const drawn = first.k + second.k;
  const low = Math.max(0, drawn - second.n);
  const high = Math.min(first.n, drawn);
  const ratio = (x: number) => ((first.n - x) / (x + 1)) * ((drawn - x) / (second.n - drawn + x + 1));
  const mode = Math.min(
    high,
    Math.max(low, Math.floor(((drawn + 1) * (first.n + 1)) / (first.n + second.n + 2))),
  );
  const weights: [number, number][] = [
    [mode, 1],
    ...outwards(mode, low, ratio),
    ...outwards(mode, high, ratio),
  ];
  const found = weights.find(([x]) => x === first.k)?.[1] ?? 0;
  // Small ones first, so that none is lost beside the large ones.
  const ascending = weights.toSorted(([, a], [, b]) => a - b);
  const total = sum(ascending);
  return {
    twoSided: share(
      ascending.filter(([, weight]) => weight <= found * TIE),
      total,
    ),
    less: share(
      ascending.filter(([x]) => x <= first.k),
      total,
    ),
    greater: share(
      ascending.filter(([x]) => x >= first.k),
      total,
    ),
  };
}

const sum = (weights: readonly (readonly [number, number])[]) =>
  weights.reduce((so, [, weight]) => so + weight, 0);

const share = (weights: readonly (readonly [number, number])[], total: number) =>
  Math.min(1, sum(weights) / total);
