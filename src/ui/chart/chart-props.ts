import type { ShareTone } from '../share/share-bar.tsx';

export interface ChartSeries {
  key: string;
  label: string;
  /** One for each x; nothing where it is not known. On a log scale, what is not above 0 is not drawn. */
  values: readonly (number | null)[];
  /** What is said of each point, where what is drawn are sums of several. */
  told?: readonly (number | null)[] | undefined;
  /**
   * Two of one kind get different dashes or shapes. One of `bars` at most. Each `area` reaches down to the one before it,
   * the first to the foot: the lowest stands first, and carries its name where there is room.
   */
  drawn: 'line' | 'dashed' | 'steps' | 'points' | 'bars' | 'line-points' | 'area';
  tone: ShareTone;
}

export interface ChartProps {
  /** The accessible name; a heading above says it to the eye. */
  title: string;
  /** Values ascending: of `time` in ms, of `log` above 0. */
  x: {
    values: readonly number[];
    label: string;
    show: (x: number) => string;
    scale: 'time' | 'number' | 'log';
  };
  /** Without `least` or `most` that end is taken from the values; of `log` above 0. */
  y: {
    label: string;
    show: (value: number) => string;
    least?: number | undefined;
    most?: number | undefined;
    scale?: 'number' | 'log' | undefined;
  };
  series: readonly ChartSeries[];
  /** What is likely: drawn as a plane between two lines. */
  band?: { low: readonly (number | null)[]; high: readonly (number | null)[]; label: string } | undefined;
  /** Upright lines, ascending. Where their labels would overlap they carry numbers, and a list below explains them. */
  marks?: readonly { at: number; label: string }[] | undefined;
  /** Which points of the first series that has points are strange: another shape, and larger. */
  flagged?: readonly number[] | undefined;
  texts: {
    /** How the cursor is moved, such as 'Tap the chart, or use the arrow keys'. */
    move: string;
    /** Over the table, such as 'The same in numbers'. */
    asTable: string;
    loading: string;
    failed: string;
    /** What a flagged point is called in the legend, the reading and the table. */
    flagged?: string | undefined;
  };
  /** Heads the first column of the table. */
  tableHead: string;
  testId?: string | undefined;
}

/** Sizes in px, and how wide a text is in the font of the chart. */
export interface ChartFrame {
  width: number;
  height: number;
  fontPx: number;
  /** Pixels of the canvas to one of the page. */
  ratio: number;
  widthOf: (text: string) => number;
}

/** Colours as the canvas takes them, and the font's family. */
export interface ChartLooks extends Readonly<Record<ShareTone, string>> {
  ink: string;
  paper: string;
  rule: string;
  band: string;
  family: string;
}

/** A chart that stands on the page. */
export interface DrawnChart {
  /** Distance of a point from the start of the plot, px. */
  leftOf: (index: number) => number;
  /** The point nearest to that distance. */
  indexAt: (left: number) => number;
  /** The field inside the axes, px from the top of the plot. */
  field: { top: number; height: number };
  /** Whether the marks carry their labels, or numbers. */
  marksAs: 'labels' | 'numbers';
  close: () => void;
}

/** The door to the part that draws, which is loaded on demand. */
export type DrawChart = (
  place: HTMLElement,
  chart: { props: ChartProps; width: number; height: number; printed: boolean },
) => DrawnChart;
