import type { ChartSeries } from './chart-props.ts';

/** What a point looks like: series are told apart by it, not by colour alone. */
export type PointShape = 'disc' | 'square' | 'triangle' | 'cross' | 'strange';

/** How a series is drawn: dashes and gaps in px, none for an unbroken line; the shape of its points, if it has any. */
export interface SeriesLook {
  dash: readonly number[];
  shape: PointShape | undefined;
}

const shapes: readonly PointShape[] = ['disc', 'square', 'triangle', 'cross'];
const unbroken: readonly (readonly number[])[] = [[], [26, 7], [26, 7, 5, 7]];
const broken: readonly (readonly number[])[] = [
  [12, 8],
  [4, 6],
  [14, 6, 4, 6],
];

const hasPoints = ({ drawn }: Pick<ChartSeries, 'drawn'>): boolean =>
  drawn === 'points' || drawn === 'line-points';

/** The looks of some series that are shown together: the second of a kind gets another dash, another shape. */
export const seriesLooks = (series: readonly Pick<ChartSeries, 'drawn'>[]): readonly SeriesLook[] =>
  series.map((one, nth) => {
    const before = series.slice(0, nth);
    const dashes = one.drawn === 'dashed' ? broken : unbroken;
    const alike = before.filter(({ drawn }) => drawn === one.drawn).length;
    const pointed = before.filter(hasPoints).length;
    return {
      // Bands are told apart by their wash and their names.
      dash: one.drawn === 'area' ? [] : (dashes[alike % dashes.length] ?? []),
      shape: hasPoints(one) ? shapes[pointed % shapes.length] : undefined,
    };
  });

/** Which series the flagged points belong to: the first that has points; −1 without one. */
export const flaggedSeries = (series: readonly Pick<ChartSeries, 'drawn'>[]): number =>
  series.findIndex(hasPoints);

/** A shape as the commands of a path, around its middle: for a canvas and for an SVG alike. */
export const shapePath = (shape: PointShape, x: number, y: number, r: number): string => {
  switch (shape) {
    case 'disc':
      return `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
    case 'square':
      return `M${x - r} ${y - r}h${2 * r}v${2 * r}h${-2 * r}Z`;
    case 'triangle':
      return `M${x} ${y - 1.2 * r}L${x + 1.2 * r} ${y + r}H${x - 1.2 * r}Z`;
    case 'cross': {
      const a = 0.4 * r;
      return `M${x - a} ${y - r}h${2 * a}v${r - a}h${r - a}v${2 * a}h${a - r}v${r - a}h${-2 * a}v${a - r}h${a - r}v${-2 * a}h${r - a}Z`;
    }
    case 'strange': {
      const b = 1.8 * r;
      return `M${x} ${y - b}L${x + b} ${y}L${x} ${y + b}L${x - b} ${y}Z`;
    }
  }
};
