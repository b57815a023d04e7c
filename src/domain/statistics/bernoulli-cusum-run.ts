import { flawWeight } from './bernoulli-cusum.ts';

/** A Bernoulli CUSUM as a Markov chain: `flawed` is the share of flawed pieces while it is watched. */
export interface WatchedCusum {
  readonly p0: number;
  readonly p1: number;
  readonly threshold: number;
  readonly flawed: number;
}

/**
 * The exact chance that a Bernoulli CUSUM which starts at 0 signals within so many pieces. Its sums are whole numbers,
 * so it is a Markov chain with as many states as the threshold (D. Brook and D. A. Evans, An approach to the
 * probability distribution of cusum run length, Biometrika 59 (1972) 539-549; from memory).
 *
 * @param within pieces
 * @throws {RangeError} see `flawWeight`; also for a share or a threshold that cannot be
 */
export function bernoulliCusumAlarm(chain: WatchedCusum, within: number): number {
  const { weight, states } = statesOf(chain);
  const { flawed } = chain;
  let now = new Float64Array(states);
  now[0] = 1;
  let alarm = 0;
  for (let piece = 0; piece < within; piece += 1) {
    const next = new Float64Array(states);
    for (let sum = 0; sum < states; sum += 1) {
      const chance = now[sum] ?? 0;
      const down = Math.max(0, sum - 1);
      next[down] = (next[down] ?? 0) + chance * (1 - flawed);
      const up = sum + weight;
      if (up < states) next[up] = (next[up] ?? 0) + chance * flawed;
      else alarm += chance * flawed;
    }
    now = next;
  }
  return Math.min(1, alarm);
}

/**
 * The average number of pieces until a Bernoulli CUSUM that starts at 0 signals, exactly: the solution of
 * L(s) = 1 + (1 − p) L(max(0, s − 1)) + p L(s + weight), with L = 0 from the threshold on. Infinite when it never can.
 *
 * @throws {RangeError} as `bernoulliCusumAlarm`
 */
export function bernoulliCusumArl(chain: WatchedCusum): number {
  const { weight, states } = statesOf(chain);
  const { flawed } = chain;
  if (flawed === 0) return Number.POSITIVE_INFINITY;
  // From the top down, each state is left with a line L(s) = time + (1 − lost) · L(s − 1); those above it are put in.
  // Only positive numbers are added, so nothing is lost to rounding however long the run.
  const time = new Float64Array(states);
  const lost = new Float64Array(states);
  /** L(sum + weight) as spent + stay · L(sum), with stay + gone = 1. */
  const afterFlaw = (sum: number) => {
    let spent = 0;
    let gone = 0;
    if (sum + weight >= states) return { spent, gone: 1 };
    let stay = 1;
    for (let above = sum + weight; above > sum; above -= 1) {
      spent += stay * (time[above] ?? 0);
      gone += stay * (lost[above] ?? 0);
      stay *= 1 - (lost[above] ?? 0);
    }
    return { spent, gone };
  };
  for (let sum = states - 1; sum > 0; sum -= 1) {
    const { spent, gone } = afterFlaw(sum);
    const leaves = 1 - flawed + flawed * gone;
    time[sum] = (1 + flawed * spent) / leaves;
    lost[sum] = (flawed * gone) / leaves;
  }
  const { spent, gone } = afterFlaw(0);
  return (1 + flawed * spent) / (flawed * gone);
}

/**
 * The smallest whole threshold at which a shop whose share of flawed pieces stays `p0` sees a signal within `within`
 * pieces with at most the wanted chance.
 *
 * @throws {RangeError} for a chance that is not between 0 and 1, and see `flawWeight`
 */
export function bernoulliCusumThreshold({
  p0,
  p1,
  within,
  falseAlarm,
}: {
  readonly p0: number;
  readonly p1: number;
  readonly within: number;
  readonly falseAlarm: number;
}): number {
  if (!(falseAlarm > 0 && falseAlarm < 1)) throw new RangeError(`no chance of a false alarm: ${falseAlarm}`);
  const isQuiet = (threshold: number) =>
    bernoulliCusumAlarm({ p0, p1, threshold, flawed: p0 }, within) <= falseAlarm;
  let high = 1;
  while (!isQuiet(high)) high *= 2;
  let low = Math.floor(high / 2);
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (isQuiet(middle)) high = middle;
    else low = middle;
  }
  return high;
}

function statesOf({ p0, p1, threshold, flawed }: WatchedCusum): { weight: number; states: number } {
  if (!(flawed >= 0 && flawed <= 1)) throw new RangeError(`no share of flawed pieces: ${flawed}`);
  if (!(threshold > 0 && threshold < Number.POSITIVE_INFINITY))
    throw new RangeError(`no threshold of a CUSUM: ${threshold}`);
  return { weight: flawWeight({ p0, p1 }), states: Math.ceil(threshold) };
}
