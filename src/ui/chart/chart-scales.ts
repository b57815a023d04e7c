import type { ChartFrame, ChartProps } from './chart-props.ts';

export type Ends = readonly [least: number, most: number];

/** Where a value lies between the ends of its scale: 0 at the least, 1 at the most. */
export const placeBetween = ([least, most]: Ends, value: number, log: boolean): number =>
  log ? Math.log(value / least) / Math.log(most / least) : (value - least) / (most - least);

/** The round step next to a wish: 1, 2 or 5 times a power of ten. */
const roundStep = (wish: number): number => {
  const power = 10 ** Math.floor(Math.log10(wish));
  return power * ([1, 2, 5].find((part) => part * power >= wish * (1 - 1e-9)) ?? 10);
};

/** A number free of the dust that sums and products leave behind their twelfth place. */
const dusted = (value: number): number => Number(value.toPrecision(12));

/** The multiples of a step between two ends. */
const multiples = ([least, most]: Ends, step: number): readonly number[] => {
  const first = Math.ceil(least / step - 1e-9);
  const last = Math.floor(most / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, nth) => dusted((first + nth) * step));
};

/** The powers of ten between two ends, each times these parts. */
const inDecades = ([least, most]: Ends, parts: readonly number[]): readonly number[] => {
  const first = Math.floor(Math.log10(least));
  const count = Math.floor(Math.log10(most)) - first + 1;
  return Array.from({ length: count }, (_, nth) => parts.map((part) => part * 10 ** (first + nth)))
    .flat()
    .map(dusted)
    .filter((value) => value >= least && value <= most);
};

const known = (values: readonly (number | null)[], log: boolean): readonly number[] =>
  values.filter((value): value is number => value !== null && Number.isFinite(value) && (!log || value > 0));

const endsOf = (values: readonly number[]): Ends =>
  values.reduce<Ends>(
    ([least, most], value) => [Math.min(least, value), Math.max(most, value)],
    [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
  );

const smallestGap = (values: readonly number[]): number =>
  values.slice(1).reduce((least, value, nth) => Math.min(least, value - (values[nth] ?? value)), Infinity);

/** The ends of the x scale: room for a whole bar at both, or for a point. */
export const xEnds = ({ x, series }: ChartProps): Ends => {
  if (x.values.length === 0) return [1, 2];
  const [least, most] = endsOf(x.values);
  if (x.scale === 'log') {
    const room = most > least ? (most / least) ** 0.03 : 2;
    return [least / room, most * room];
  }
  if (!(most > least)) return [least - 1, least + 1];
  const bars = series.some(({ drawn }) => drawn === 'bars');
  const room = bars ? 0.6 * smallestGap(x.values) : 0.025 * (most - least);
  return [least - room, most + room];
};

/** The ends of the y scale, on round numbers where they are not given; from 0 where that costs little, and under bars. */
export const yEnds = ({ y, series, band }: ChartProps): Ends => {
  const log = y.scale === 'log';
  const values = known(
    [...series.flatMap((one) => one.values), ...(band ? [...band.low, ...band.high] : [])],
    log,
  );
  const [seenLeast, seenMost] = values.length > 0 ? endsOf(values) : ([log ? 1 : 0, log ? 10 : 1] as const);
  if (log) return [y.least ?? seenLeast / 1.2, y.most ?? seenMost * 1.2];
  const fromNought =
    seenLeast >= 0 &&
    (series.some(({ drawn }) => drawn === 'bars' || drawn === 'area') || seenLeast < 0.5 * seenMost);
  const least = y.least ?? (fromNought ? 0 : seenLeast);
  const most = Math.max(y.most ?? seenMost, least);
  const span = most - least || Math.abs(most) || 1;
  const step = roundStep(span / 5);
  return [
    y.least ?? (fromNought ? 0 : dusted(step * Math.floor((least - 0.05 * span) / step))),
    y.most ?? dusted(step * Math.ceil((most + 0.05 * span) / step)),
  ];
};

/** Ticks without those that read like the one before: a rounded label twice would say that nothing lies between. */
const toldApart = (ticks: readonly number[], show: (value: number) => string): readonly number[] =>
  ticks.filter((tick, nth) => nth === 0 || show(tick) !== show(ticks[nth - 1] ?? tick));

/** Ticks of the y scale, some three lines of text apart. */
export const yTicks = (
  { y }: ChartProps,
  ends: Ends,
  heightPx: number,
  fontPx: number,
): readonly number[] => {
  const count = Math.max(2, Math.floor(heightPx / (3 * fontPx)));
  if (y.scale !== 'log') return toldApart(multiples(ends, roundStep((ends[1] - ends[0]) / count)), y.show);
  const all = [[1, 2, 5], [1, 3], [1]].map((parts) => inDecades(ends, parts));
  const enough = all.find((ticks) => ticks.length <= count + 1) ?? all.at(-1) ?? [];
  const long = ends[1] / ends[0] > 30;
  return toldApart(
    long && enough.length > 1 ? enough : multiples(ends, roundStep((ends[1] - ends[0]) / count)),
    y.show,
  );
};

/** Choices of ticks for the x scale, from the most to a few. */
function* xChoices({ x }: ChartProps, ends: Ends): Generator<readonly number[]> {
  if (x.scale === 'time') {
    // Only moments of the data: no zone need be known, and every label is one that the reading line says too.
    for (let stride = 1; stride < x.values.length; stride += 1)
      yield x.values.filter((_, nth) => nth % stride === 0);
    return;
  }
  if (x.scale === 'log') for (const parts of [[1, 2, 5], [1, 3], [1]]) yield inDecades(ends, parts);
  const whole = x.values.every(Number.isInteger);
  for (let count = 20; count > 1; count -= 1) {
    const step = roundStep((ends[1] - ends[0]) / count);
    if (!whole || step >= 1) yield multiples(ends, step);
  }
}

/** Ticks of the x scale: as many as have room for their labels. */
export const xTicks = (
  props: ChartProps,
  ends: Ends,
  widthPx: number,
  { fontPx, widthOf }: Pick<ChartFrame, 'fontPx' | 'widthOf'>,
): readonly number[] => {
  const { show, scale, values } = props.x;
  const leftOf = (tick: number) => widthPx * placeBetween(ends, tick, scale === 'log');
  const fits = (ticks: readonly number[]): boolean =>
    ticks.every((tick, nth) => {
      const before = ticks[nth - 1];
      if (before === undefined) return true;
      const apart = leftOf(tick) - leftOf(before);
      return apart >= (widthOf(show(tick)) + widthOf(show(before))) / 2 + fontPx;
    });
  for (const ticks of xChoices(props, ends)) {
    const different = toldApart(ticks, show);
    if (different.length > 0 && fits(different)) return different;
  }
  return values.slice(0, 1);
};
