import { type ChartOptions, type ControlChart, mean, shewhartChart } from './control-chart.ts';
import { countedIn } from './counted.ts';

export interface GChartOptions extends ChartOptions {
  /** Limits by the geometric distribution that leave this chance outside, half of it at each end; 3 sigma when left out. */
  readonly falseAlarm?: number;
}

/**
 * g chart for rare flaws: good pieces between one flaw and the next, a geometric number. A long gap is better work.
 *
 * Without `falseAlarm` the limits are ḡ ± 3 √(ḡ(ḡ + 1)), cut at 0 (F. C. Kaminsky, J. C. Benneyan, R. D. Davis and
 * R. J. Burke, Statistical control charts based on a geometric distribution, Journal of Quality Technology 24 (1992)
 * 63-69; from memory). They are far from even: the lower one is always 0, so they show better work only. With it a gap
 * of g is beyond when P(G ≤ g) or P(G ≥ g) is below half of the chance (after J. C. Benneyan, Number-between g-type
 * statistical quality control charts, Health Care Management Science 4 (2001) 305-318; from memory). Where one flaw in
 * eight hundred pieces is more than usual, the lower limit is 0 all the same: use the Bernoulli CUSUM to find worse.
 *
 * @param gaps good pieces between flaws, oldest first; the pieces since the last flaw are no gap yet
 * @throws {RangeError} for a gap that is negative or no number, or a `falseAlarm` that is not between 0 and 1
 * @example gChart([10, 30, 20]).centre // => 20
 */
export function gChart(gaps: readonly number[], options: GChartOptions = {}): ControlChart {
  const counted = countedIn(
    gaps,
    gaps.map(() => 1),
  );
  const centre = options.centre ?? mean(gaps);
  const typical = centre ?? 0;
  const chart = shewhartChart(
    counted.map(({ index, count }) => ({ index, value: count, sigma: Math.sqrt(typical * (typical + 1)) })),
    { ...options, ...(centre === undefined ? {} : { centre }), least: 0 },
  );
  if (options.falseAlarm === undefined || centre === undefined) return chart;
  return withLimits(chart, probabilityLimits(centre, options.falseAlarm));
}

/** The gaps at which the chance of one as short, and of one as long, is half of `falseAlarm`; whole gaps lie between. */
function probabilityLimits(centre: number, falseAlarm: number): { low: number; high: number } {
  if (!(falseAlarm > 0 && falseAlarm < 1)) throw new RangeError(`no chance of a false alarm: ${falseAlarm}`);
  if (centre === 0) return { low: 0, high: 0 };
  // Log of the chance that a piece is good; the centre is the mean (1 − p) ÷ p of the geometric distribution.
  const good = -Math.log1p(1 / centre);
  return {
    low: Math.max(0, Math.log1p(-falseAlarm / 2) / good - 1),
    high: Math.log(falseAlarm / 2) / good,
  };
}

function withLimits(chart: ControlChart, limits: { low: number; high: number }): ControlChart {
  const points = chart.points.map((point) => ({ ...point, ...limits }));
  return {
    ...chart,
    points,
    signals: points
      .filter(({ value, low, high }) => value < low * (1 - 1e-12) || value > high * (1 + 1e-12))
      .map(({ index }) => ({ index, rule: 'beyond-limits' })),
  };
}
