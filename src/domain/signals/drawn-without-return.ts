/**
 * Flawed pieces among the first so many, when the flawed ones of a whole lie in it in any order: the hypergeometric
 * distribution. Tails are summed from the asked-for count outwards, so a small one keeps all its digits.
 */
export interface Drawn {
  readonly least: number;
  readonly most: number;
  /** P(at most `count`), 0 below the least. */
  readonly atMost: (count: number) => number;
  /** P(at least `count`), 0 above the most. */
  readonly atLeast: (count: number) => number;
}

/** Logarithms of the factorials of 0 to n: sums of logarithms, exact to some 1e-13 for thousands of pieces. */
export function logFactorials(n: number): Float64Array {
  const logs = new Float64Array(n + 1);
  for (let i = 1; i <= n; i += 1) logs[i] = (logs[i - 1] ?? 0) + Math.log(i);
  return logs;
}

/** A term this much smaller than what was summed changes no digit of it. */
const negligible = 1e-18;

/**
 * @param whole flawed pieces, and pieces, of the whole
 * @param options.drawn pieces that are drawn
 * @param options.logs logarithms of factorials up to the pieces of the whole at least
 */
export function drawnFrom(
  { flawed, pieces }: { readonly flawed: number; readonly pieces: number },
  { drawn, logs }: { readonly drawn: number; readonly logs: Float64Array },
): Drawn {
  const least = Math.max(0, drawn - (pieces - flawed));
  const most = Math.min(flawed, drawn);
  const log = (n: number) => logs[n] ?? Number.NEGATIVE_INFINITY;
  const choose = (n: number, k: number) => log(n) - log(k) - log(n - k);
  const all = choose(pieces, drawn);
  const chance = (count: number) =>
    Math.exp(choose(flawed, count) + choose(pieces - flawed, drawn - count) - all);
  /** P(count + 1) ÷ P(count). */
  const ratio = (count: number) =>
    ((flawed - count) * (drawn - count)) / ((count + 1) * (pieces - flawed - drawn + count + 1));

  return {
    least,
    most,
    atMost(count) {
      if (count < least) return 0;
      if (count >= most) return 1;
      let term = chance(count);
      let sum = 0;
      for (let at = count; at >= least && term > sum * negligible; at -= 1) {
        sum += term;
        term /= at > least ? ratio(at - 1) : 1;
      }
      return Math.min(1, sum);
    },
    atLeast(count) {
      if (count > most) return 0;
      if (count <= least) return 1;
      let term = chance(count);
      let sum = 0;
      for (let at = count; at <= most && term > sum * negligible; at += 1) {
        sum += term;
        term *= ratio(at);
      }
      return Math.min(1, sum);
    },
  };
}
