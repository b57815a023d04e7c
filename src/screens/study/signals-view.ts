import { pChart } from '../../domain/statistics/p-chart.ts';
import type { ChartMark } from '../../domain/study/marks.ts';
import type { SignalSeries } from '../../domain/study/signal-series.ts';

/** A series as its control chart draws it: a point for each tray that was judged, numbered from 1 in the order of the work. */
export interface SeriesChart {
  readonly at: readonly number[];
  readonly shares: readonly number[];
  readonly centre: readonly number[];
  readonly low: readonly number[];
  readonly high: readonly number[];
  /** Places, among the points, of those beyond the limits. */
  readonly flagged: readonly number[];
  readonly codes: readonly string[];
  readonly counts: readonly { readonly flawed: number; readonly pieces: number }[];
}

export function seriesChart({ tally: { counts, sizes }, trays }: SignalSeries): SeriesChart {
  const { centre = 0, points, signals } = pChart(counts, sizes);
  const strange = new Set(signals.map(({ index }) => index));
  return {
    at: points.map((_, place) => place + 1),
    shares: points.map(({ value }) => value),
    centre: points.map(() => centre),
    low: points.map(({ low }) => low),
    high: points.map(({ high }) => high),
    flagged: points.flatMap(({ index }, place) => (strange.has(index) ? [place] : [])),
    codes: points.map(({ index }) => trays[index]?.code ?? ''),
    counts: points.map(({ index }) => ({ flawed: counts[index] ?? 0, pieces: sizes[index] ?? 0 })),
  };
}

/**
 * The top of the scale of shares: above every tray, and above the limits of most; those of a tray of two or three pieces
 * would press all others to the foot.
 */
export function topShare({ shares, high }: SeriesChart): number {
  const usual = high.toSorted((a, b) => a - b)[Math.floor(high.length / 2)] ?? 1;
  return Math.min(1, 1.15 * Math.max(usual, ...shares));
}

/** Where a moment (ms UTC) lies among the points of a series: halfway before the first tray that began after it. */
export function placeOf(at: number, { trays, tally }: SignalSeries): number {
  const judged = trays.filter((_, index) => (tally.sizes[index] ?? 0) > 0);
  const next = judged.findIndex(({ from }) => from >= at);
  return (next < 0 ? judged.length : next) + 0.5;
}

/** Marks as lines of a chart; those after the last tray stand at its end. */
export function markLines(
  marks: readonly Pick<ChartMark, 'at' | 'note'>[],
  series: SignalSeries,
): readonly { readonly at: number; readonly label: string }[] {
  return marks
    .toSorted((a, b) => a.at - b.at)
    .map(({ at, note }) => ({ at: placeOf(at, series), label: note }));
}
