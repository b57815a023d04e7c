import type { ChartProps } from './chart-props.ts';

/** One column of the table: what it shows of each point. */
export interface ChartColumn {
  key: string;
  head: string;
  shown: (index: number) => string;
}

/** Not known is not zero. */
const unknown = '–';

const valueShown = (props: ChartProps, value: number | null | undefined): string =>
  value === null || value === undefined ? unknown : props.y.show(value);

/** What is said of each point: every series, and the band from its low to its high. */
export const chartColumns = (props: ChartProps): readonly ChartColumn[] => [
  ...props.series.map(({ key, label, values, told = values }) => ({
    key,
    head: label,
    shown: (index: number) => valueShown(props, told[index]),
  })),
  ...(props.band
    ? [
        {
          key: 'band',
          head: props.band.label,
          shown: (index: number) => {
            const low = valueShown(props, props.band?.low[index]);
            const high = valueShown(props, props.band?.high[index]);
            return low === unknown && high === unknown ? unknown : `${low} – ${high}`;
          },
        },
      ]
    : []),
];

/** A point's x in words, with a word for one that is flagged. */
export const pointName = ({ x, flagged = [], texts }: ChartProps, index: number): string => {
  const name = x.show(x.values[index] ?? Number.NaN);
  return texts.flagged && flagged.includes(index) ? `${name} (${texts.flagged})` : name;
};

/** All that is said of a point, in a line. */
export const reading = (props: ChartProps, index: number): { at: string; values: string } => ({
  at: pointName(props, index),
  values: chartColumns(props)
    .map(({ head, shown }) => `${head} ${shown(index)}`)
    .join(', '),
});

/** Where a key takes the cursor among so many points; nowhere for other keys. */
export const cursorAfter = (key: string, at: number | undefined, count: number): number | undefined => {
  const far = Math.max(1, Math.round(count / 10));
  const step = { ArrowRight: 1, ArrowLeft: -1, PageDown: far, PageUp: -far }[key];
  if (key === 'Home') return 0;
  if (key === 'End') return count - 1;
  if (step === undefined) return undefined;
  if (at === undefined) return step > 0 ? 0 : count - 1;
  return Math.min(count - 1, Math.max(0, at + step));
};
