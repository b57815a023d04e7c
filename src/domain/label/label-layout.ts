import { cutLines, type TextMeasure, wrapText } from './fit-text.ts';
import type { SizeInMm } from './label-size.ts';

/** Capitals are so high, in em, in both faces of the app (OS/2 table of the fonts). */
export const capitalsInEm = 0.668;
/** Every sign of the face of tray codes is so wide, in em (hmtx table of the font). */
export const codeSignInEm = 0.632;
/** Capitals that can be read at 2 m: 20 minutes of arc, in mm. */
export const readableAtTwoMetres = 11.6;
/** No code is set higher, in mm: the texts need the room. */
const highestCode = 14;
/** Modules of a side of the symbol of version 1, with the four on each side that ISO/IEC 18004 wants blank. */
export const modulesWithMargin = 21 + 2 * 4;
/** A smaller module is not told apart by every camera (common practice, no source), in mm. */
export const leastModule = 0.4;
const largestModule = 0.9;
const gap = 1.2;

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Where things stand on a label; all lengths in mm from the label's corner. */
export interface LabelFrame {
  /** The code: `size` of its type, its capitals standing on `baseline`. */
  readonly code: { readonly x: number; readonly baseline: number; readonly size: number };
  /** The symbol with its blank margin. */
  readonly symbol: { readonly x: number; readonly y: number; readonly side: number };
  readonly texts: Box;
}

/** What keeps clear of the label's edge, where a printer may be off and a sheet is cut. */
export function padOf({ width, height }: SizeInMm): number {
  return Math.min(3, Math.max(1.5, 0.09 * Math.min(width, height)));
}

/** Divides a label among a code of so many signs, the symbol and the texts. */
export function labelFrame(label: SizeInMm, codeSigns: number): LabelFrame {
  const [above, beside] = [codeAbove(label, codeSigns), codeBeside(label, codeSigns)];
  return worth(beside) > worth(above) ? beside : above;
}

/** The capitals of the code in mm. */
export function capitalsOf({ code }: Pick<LabelFrame, 'code'>): number {
  return code.size * capitalsInEm;
}

/** How well a frame serves: a symbol that can be read comes first, then a code that can be read from afar. */
function worth(frame: LabelFrame): number {
  const symbol = Math.min(1, frame.symbol.side / modulesWithMargin / leastModule);
  return 100 * symbol + Math.min(readableAtTwoMetres, capitalsOf(frame));
}

/** The code over the whole width; the texts and the symbol below it. */
function codeAbove(label: SizeInMm, codeSigns: number): LabelFrame {
  const { pad, width, height } = insideOf(label);
  const roomForSymbol = Math.min(width / 2, leastModule * modulesWithMargin);
  const capitals = Math.max(1, Math.min(highestCode, widest(width, codeSigns), height - gap - roomForSymbol));
  const top = pad + capitals + gap;
  const below = height - capitals - gap;
  const side = Math.min(below, width / 2, largestModule * modulesWithMargin);
  return {
    code: { x: pad, baseline: pad + capitals, size: capitals / capitalsInEm },
    symbol: { x: pad + width - side, y: top, side },
    texts: { x: pad, y: top, width: width - side - gap, height: below },
  };
}

/** The symbol at the end side; the code and the texts beside it. */
function codeBeside(label: SizeInMm, codeSigns: number): LabelFrame {
  const { pad, width, height } = insideOf(label);
  const wanted = Math.max(
    leastModule * modulesWithMargin,
    Math.min(width / 3, largestModule * modulesWithMargin),
  );
  const side = Math.min(height, width / 2, wanted);
  const left = width - side - gap;
  const capitals = Math.max(1, Math.min(highestCode, widest(left, codeSigns), 0.6 * height));
  return {
    code: { x: pad, baseline: pad + capitals, size: capitals / capitalsInEm },
    symbol: { x: pad + width - side, y: pad, side },
    texts: { x: pad, y: pad + capitals + gap, width: left, height: height - capitals - gap },
  };
}

function insideOf(label: SizeInMm): SizeInMm & { readonly pad: number } {
  const pad = padOf(label);
  return { pad, width: label.width - 2 * pad, height: label.height - 2 * pad };
}

/** The highest capitals with which so many signs fit into a width, in mm. */
function widest(width: number, signs: number): number {
  return (width / (signs * codeSignInEm)) * capitalsInEm;
}

/** One text of a label: its type begins at `largest` and is made smaller down to `least` (mm) before it is cut. */
export interface LabelText {
  readonly text: string;
  readonly largest: number;
  readonly least: number;
  readonly measure: TextMeasure;
}

/** One line as it is printed; `baseline` and `size` in mm. */
export interface SetLine {
  readonly text: string;
  readonly baseline: number;
  readonly size: number;
  /** Which of the texts it belongs to. */
  readonly of: number;
}

const lineHeight = 1.2;
const shrinkings = [1, 0.9, 0.8, 0.7, 0.6, 0.5];

/** Sets texts into a box from the top: all of them smaller where they do not fit, and cut where that does not help. */
export function setTexts(texts: readonly LabelText[], box: Box): readonly SetLine[] {
  const blocks = shrunk(texts, box);
  const fitting = blocks.find((block) => heightOf(block) <= box.height);
  const last = blocks.at(-1) ?? [];
  return placed(fitting ?? cutToFit(last, { texts, box }), box);
}

/** Whether texts fit into a box whole, none of them cut. */
export function textsFit(texts: readonly LabelText[], box: Box): boolean {
  return shrunk(texts, box).some((block) => heightOf(block) <= box.height);
}

/** The texts at each size that they may be set in, the largest first. */
function shrunk(texts: readonly LabelText[], box: Box): readonly (readonly Block[])[] {
  return shrinkings.map((share) =>
    texts.map((each) => {
      const size = Math.max(each.least, each.largest * share);
      return { size, lines: wrapText(each.text, { width: box.width / size, measure: each.measure }) };
    }),
  );
}

interface Block {
  readonly size: number;
  readonly lines: readonly string[];
}

function heightOf(blocks: readonly Block[]): number {
  return blocks.reduce((sum, { size, lines }) => sum + size * lineHeight * lines.length, 0);
}

/** Gives each text a line in turn while there is room; the first ones first. */
function cutToFit(
  blocks: readonly Block[],
  { texts, box }: { texts: readonly LabelText[]; box: Box },
): readonly Block[] {
  const granted = blocks.map(() => 0);
  let room = box.height;
  for (let given = true; given; ) {
    given = false;
    for (const [index, { size, lines }] of blocks.entries()) {
      const has = granted[index] ?? 0;
      if (has >= lines.length || size * lineHeight > room) continue;
      granted[index] = has + 1;
      room -= size * lineHeight;
      given = true;
    }
  }
  return blocks.map(({ size, lines }, index) => {
    const measure = texts[index]?.measure ?? (() => 0);
    return { size, lines: cutLines(lines, { most: granted[index] ?? 0, width: box.width / size, measure }) };
  });
}

function placed(blocks: readonly Block[], { y }: Box): readonly SetLine[] {
  let top = y;
  return blocks.flatMap(({ size, lines }, of) =>
    lines.map((text) => {
      const baseline = top + size * (capitalsInEm + (lineHeight - 1) / 2);
      top += size * lineHeight;
      return { text, baseline, size, of };
    }),
  );
}
