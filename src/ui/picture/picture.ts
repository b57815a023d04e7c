import type { ChartLooks, ChartProps } from '../chart/chart-props.ts';
import type { HeatTableProps } from '../chart/heat-table.tsx';
import type { FlowStage } from '../flow/flow-strip.tsx';
import type { ShareTone } from '../share/share-bar.tsx';
import type { Measure, Stroke } from './strokes.ts';

/** A bar with its words; lengths are shares of `most`. */
export interface PictureBar {
  readonly label: string;
  readonly detail?: string | undefined;
  readonly value: number;
  readonly shown: string;
  readonly interval?: readonly [low: number, high: number] | undefined;
  /** Share of the whole that this bar and those above it make up, 0 to 1, with its words. */
  readonly running?: { readonly share: number; readonly shown: string } | undefined;
  readonly tone?: ShareTone | undefined;
}

/** Shares where rows and columns meet, as a heat table shows them. */
export type PictureTable = Pick<HeatTableProps, 'corner' | 'rows' | 'cols' | 'cell' | 'most' | 'tone'>;

export type PictureBody =
  | { readonly kind: 'chart'; readonly chart: ChartProps }
  | {
      readonly kind: 'bars';
      readonly bars: readonly PictureBar[];
      readonly most: number;
      /** A full bar is the whole of something, and is drawn behind each. */
      readonly ofWhole: boolean;
    }
  | { readonly kind: 'table'; readonly table: PictureTable }
  | { readonly kind: 'flow'; readonly stages: readonly FlowStage[]; readonly nothing: string };

/** What is to be drawn as a picture of its own, away from the app. */
export interface Picture {
  readonly title: string;
  /** What one should know to read it. */
  readonly lead?: string | undefined;
  /** Whose it is, and of when. */
  readonly foot: string;
  readonly body: PictureBody;
}

/** What a body is drawn with. Widths in px. */
export interface Tools {
  readonly width: number;
  readonly looks: ChartLooks;
  readonly widthOf: Measure;
}

/** A body from the top left corner on. */
export interface DrawnBody {
  /** At least that of the tools; a table may need more. */
  readonly width: number;
  readonly height: number;
  readonly strokes: readonly Stroke[];
  /** All that it shows, in words: a line each. */
  readonly said: readonly string[];
}

/** Size of the texts of a picture, px: to be read where it is shown at half its width. */
export const textSize = 18;
