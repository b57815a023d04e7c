import type { ChartPlan } from './chart-plan.ts';
import type { ChartProps } from './chart-props.ts';
import { placeBetween } from './chart-scales.ts';

/** A name written into a band, around its middle; px from the corner of the plot. */
export interface AreaLabel {
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

/** How much of its colour a band is washed with, by its place among the bands: two neighbours are told apart. */
export const areaCover = (nth: number): number => (nth % 2 === 0 ? 0.34 : 0.14);

/** Along how many places of the field a name is tried. */
const tries = 80;

type Edge = readonly { readonly left: number; readonly high: number }[];

/** The height of an edge at a distance from the start, on the straight line between its points; px. */
const heightAt = (edge: Edge, left: number): number => {
  const after = edge.findIndex((point) => point.left >= left);
  const [from, to] = [edge[after - 1], edge[after]];
  if (!to) return edge.at(-1)?.high ?? 0;
  if (!from) return to.high;
  return from.high + ((to.high - from.high) * (left - from.left)) / (to.left - from.left);
};

interface Place {
  readonly text: string;
  readonly half: number;
  readonly middle: number;
  /** Middle height and clear height of the band there, px from the foot. */
  readonly up: number;
  readonly clear: number;
}

/** Whether two names would run into each other. */
const touch = (a: Place, b: Place, fontPx: number): boolean =>
  Math.abs(a.middle - b.middle) < a.half + b.half && Math.abs(a.up - b.up) < fontPx;

/**
 * The names of bands, each where there is most room for it, of those that are half as high there as a line of text: its
 * rim keeps a name readable that lies on its neighbours too. The other bands are read along the points.
 */
export const areaLabels = (
  { x, y, series }: ChartProps,
  { field, y: ends, leftOf }: ChartPlan,
  { fontPx, widthOf }: { fontPx: number; widthOf: (text: string) => number },
): readonly AreaLabel[] => {
  const [first, last] = [leftOf(x.values[0] ?? 0), leftOf(x.values.at(-1) ?? 0)];
  const edgeOf = (values: readonly (number | null)[] | undefined): Edge =>
    x.values.map((at, place) => ({
      left: leftOf(at),
      high: field.height * placeBetween(ends, values?.[place] ?? ends[0], y.scale === 'log'),
    }));
  const areas = series.filter(({ drawn }) => drawn === 'area');
  const wished = areas.flatMap(({ label, values }, nth): Place[] => {
    const [top, foot] = [edgeOf(values), edgeOf(areas[nth - 1]?.values)];
    const half = widthOf(label) / 2;
    const room = last - first - 2 * half;
    if (room < 0) return [];
    const places = Array.from({ length: tries + 1 }, (_, step): Place => {
      const middle = first + half + (room * step) / tries;
      const along = [middle - half / 2, middle, middle + half / 2];
      const ceiling = Math.min(...along.map((left) => heightAt(top, left)));
      const floor = Math.max(...along.map((left) => heightAt(foot, left)));
      return { text: label, half, middle, up: (ceiling + floor) / 2, clear: ceiling - floor };
    });
    return [places.reduce((most, each) => (each.clear > most.clear ? each : most))];
  });
  // The roomiest first: of two that would touch, the narrower band goes without.
  const placed = new Set<Place>();
  for (const each of wished.toSorted((a, b) => b.clear - a.clear))
    if (each.clear >= 0.5 * fontPx && ![...placed].some((other) => touch(each, other, fontPx)))
      placed.add(each);
  return wished
    .filter((each) => placed.has(each))
    .map(({ text, middle, up }) => ({ text, x: middle, y: field.top + field.height - up }));
};
