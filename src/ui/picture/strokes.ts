import type { GrainName, GrainTones } from '../flow/grain-patterns.ts';

/** A shape by the commands of a path, filled, outlined or both. Lengths in px. */
export interface DrawnPath {
  readonly kind: 'path';
  readonly d: string;
  readonly fill?: string | undefined;
  /** How much of the fill covers what lies under it, 0 to 1; all of it when left out. */
  readonly cover?: number | undefined;
  readonly grain?: { readonly pattern: GrainName; readonly tones: GrainTones } | undefined;
  readonly line?: string | undefined;
  readonly width?: number | undefined;
  readonly dash?: readonly number[] | undefined;
  /** Nothing of it shows outside. */
  readonly within?: Box | undefined;
}

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** A line of text; y is that of its base line. */
export interface DrawnText {
  readonly kind: 'text';
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly size: number;
  readonly weight: Weight;
  readonly fill: string;
  /** Colour of a rim that keeps lines behind from running into the letters. */
  readonly rim?: string | undefined;
  readonly at: 'start' | 'middle' | 'end';
}

/** Width of the rim of a text, px. */
export const rimWidth = 5;

export type Stroke = DrawnPath | DrawnText;

/** Hundreds only: other programs than browsers know no weight between them. */
type Weight = 400 | 600 | 700;

/** A finished drawing: what lies under comes first. */
export interface Drawing {
  readonly title: string;
  /** What it shows, in words, for whoever cannot see it. */
  readonly description: string;
  readonly width: number;
  readonly height: number;
  readonly paper: string;
  /** Family of all texts, as CSS has it, with what stands in for it. */
  readonly family: string;
  readonly parts: readonly DrawingPart[];
}

/** Strokes that are measured from a corner of their own. */
interface DrawingPart {
  readonly left: number;
  readonly top: number;
  readonly strokes: readonly Stroke[];
}

/** How wide a text is, px. */
export type Measure = (text: string, size: number, weight: Weight) => number;

/** A rectangle as the commands of a path. */
export const boxPath = ({ left, top, width, height }: Box): string =>
  `M${left} ${top}h${width}v${height}h${-width}Z`;

/** A text in lines that are no wider than this, broken between words. */
export const inLines = (
  text: string,
  { width, widthOf }: { width: number; widthOf: (text: string) => number },
): readonly string[] => {
  const lines: string[] = [];
  for (const word of text.split(/\s+/).filter(Boolean)) {
    const last = lines.at(-1);
    if (last !== undefined && widthOf(`${last} ${word}`) <= width)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
};
