import { type RuleSignal, type RunRule, runRules } from './run-rules.ts';

/** One point with its own limits, in the unit of the chart. */
export interface ChartPoint {
  /** Where it stands in what was handed in; what gives no point leaves a gap in these. */
  readonly index: number;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export interface ControlChart {
  /** Not yet known while there is no point. */
  readonly centre: number | undefined;
  readonly points: readonly ChartPoint[];
  readonly signals: readonly RuleSignal[];
}

export interface ChartOptions {
  /** Half the distance between the limits in standard deviations; 3 when left out. */
  readonly sigmas?: number;
  /** Patterns that are signals; only points beyond the limits when left out. */
  readonly rules?: readonly RunRule[];
  /** A centre that is known from before, instead of that of these points. */
  readonly centre?: number;
}

/** A point before it has limits: its value and the standard deviation that chance gives it. */
export interface Measured {
  readonly index: number;
  readonly value: number;
  readonly sigma: number;
}

/** The moving range of two neighbours over this is their standard deviation: d2 for n = 2, as tables print it. */
export const d2 = 1.128;

/**
 * A Shewhart chart: limits at `sigmas` standard deviations from the centre, cut to what a value can be. One- and
 * two-sigma zones of the rules are thirds of that distance.
 */
export function shewhartChart(
  measured: readonly Measured[],
  {
    centre,
    sigmas = 3,
    rules = ['beyond-limits'],
    least = Number.NEGATIVE_INFINITY,
    most = Number.POSITIVE_INFINITY,
  }: ChartOptions & { readonly least?: number; readonly most?: number },
): ControlChart {
  if (centre === undefined || measured.length === 0) return { centre, points: [], signals: [] };
  const deviations = measured.map(({ value, sigma }) =>
    deviation(value, { centre, sigma: (sigma * sigmas) / 3 }),
  );
  return {
    centre,
    points: measured.map(({ index, value, sigma }) => ({
      index,
      value,
      low: Math.max(least, centre - sigmas * sigma),
      high: Math.min(most, centre + sigmas * sigma),
    })),
    signals: runRules(deviations, rules).map(({ index, rule }) => ({
      index: measured[index]?.index ?? index,
      rule,
    })),
  };
}

/**
 * Distance from the centre in standard deviations. Where chance leaves no room at all, any distance is beyond every limit;
 * what rounding makes of none is none.
 */
export function deviation(
  value: number,
  { centre, sigma }: { readonly centre: number; readonly sigma: number },
): number {
  const distance = value - centre;
  return Math.abs(distance) <= 1e-12 * Math.max(Math.abs(value), Math.abs(centre)) ? 0 : distance / sigma;
}

/** Mean absolute difference of neighbours; not yet known with fewer than two. */
export function meanMovingRange(values: readonly number[]): number | undefined {
  return mean(movingRanges(values));
}

export function movingRanges(values: readonly number[]): number[] {
  return values.slice(1).map((value, at) => Math.abs(value - (values[at] ?? value)));
}

export function mean(values: readonly number[]): number | undefined {
  return values.length === 0 ? undefined : values.reduce((sum, value) => sum + value, 0) / values.length;
}
