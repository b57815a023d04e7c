import { largestInColumn } from './column.ts';

/**
 * An event as text, taken apart into its shape (what thousands of events have in common) and what is its own. The text
 * of a shape is the JSON of the event with a control character wherever a value was taken out; JSON itself never has
 * one, so that no text of a person can be mistaken for a hole.
 */

/** What can be taken out of an event. The first of a kind goes to that kind's column, every further one to the extras. */
const holeKinds = ['seq', 'wall', 'tick', 'day', 'person', 'tray', 'elapsed', 'time'] as const;
export type HoleKind = (typeof holeKinds)[number];

/** Kinds whose values are texts, kept once in a dictionary: an index stands in their column. */
const textKinds = ['day', 'person', 'tray'] as const satisfies readonly HoleKind[];
export type TextKind = (typeof textKinds)[number];
export const isTextKind = (kind: HoleKind): kind is TextKind =>
  (textKinds as readonly HoleKind[]).includes(kind);
type NumberKind = Exclude<HoleKind, TextKind>;

/** A hole of a shape. `now` is the wall time of the event's own stamp, `same-tray` the tray that it is about. */
export type Hole =
  | { readonly from: 'column'; readonly kind: HoleKind }
  | { readonly from: 'extras'; readonly kind: HoleKind }
  | { readonly from: 'now' }
  | { readonly from: 'same-tray' };

const marks: ReadonlyMap<string, Hole> = new Map<string, Hole>([
  ['\u0001', { from: 'now' }],
  ['\u0002', { from: 'same-tray' }],
  ...holeKinds.map((kind, at) => [String.fromCharCode(3 + at), { from: 'column', kind }] as const),
  ...holeKinds.map((kind, at) => [String.fromCharCode(16 + at), { from: 'extras', kind }] as const),
]);
const markOf = (hole: Hole): string => {
  for (const [mark, { from, ...rest }] of marks)
    if (from === hole.from && (!('kind' in hole) || ('kind' in rest && rest.kind === hole.kind))) return mark;
  throw new Error('no mark stands for this hole');
};
const markOfKind = (from: 'column' | 'extras') =>
  Object.fromEntries(holeKinds.map((kind) => [kind, markOf({ from, kind })])) as Readonly<
    Record<HoleKind, string>
  >;
const ofColumn = markOfKind('column');
const ofExtras = markOfKind('extras');
const nowMark = markOf({ from: 'now' });
const sameTrayMark = markOf({ from: 'same-tray' });

/** One event taken apart. Of times the columns hold how long before the event's own wall time they were (ms). */
export interface TakenApart {
  readonly shape: string;
  /** What stands in the columns; kinds that the event has not are left out. */
  readonly numbers: Readonly<Partial<Record<NumberKind, number>>>;
  readonly texts: Readonly<Partial<Record<TextKind, string>>>;
  /** What stands in the extras, in the order of the text. */
  readonly extras: readonly (number | { readonly kind: TextKind; readonly text: string })[];
}

/** Numbers by the name that they have in an event. */
const numberNames: ReadonlyMap<string, NumberKind> = new Map([
  ['seq', 'seq'],
  ['wall', 'wall'],
  ['tick', 'tick'],
  ['elapsed', 'elapsed'],
  ['since', 'time'],
  ['ready', 'time'],
]);
/** Texts and facts by the name that they have in an event. */
const textNames: ReadonlyMap<string, TextKind> = new Map([
  ['day', 'day'],
  ['person', 'person'],
  ['of', 'tray'],
  ['into', 'tray'],
]);

/**
 * Takes an event apart, given as what its JSON parses to. `base` is the wall time that the column of wall times counts
 * from. Works on any JSON: what is not known by name stays in the shape.
 */
export function takeApart(event: object, base: number): TakenApart {
  const numbers: Partial<Record<NumberKind, number>> = {};
  const texts: Partial<Record<TextKind, string>> = {};
  const extras: (number | { kind: TextKind; text: string })[] = [];
  let now: number | undefined;
  let tray: unknown;

  function number(kind: NumberKind, value: number): string {
    if (kind === 'time' && value === now) return nowMark;
    const own = inColumn(kind, value);
    if (numbers[kind] === undefined && own >= 0 && own <= largestInColumn) {
      numbers[kind] = own;
      if (kind === 'wall') now = value;
      return ofColumn[kind];
    }
    extras.push(value);
    return ofExtras[kind];
  }

  /** Below 0 where the column cannot say it. */
  function inColumn(kind: NumberKind, value: number): number {
    if (kind === 'wall') return value - base;
    return kind === 'time' ? (now ?? -1) - value : value;
  }

  function text(kind: TextKind, json: string): string {
    if (texts[kind] === undefined) {
      texts[kind] = json;
      return ofColumn[kind];
    }
    extras.push({ kind, text: json });
    return ofExtras[kind];
  }

  function member(name: string, value: unknown): string {
    const numberKind = numberNames.get(name);
    if (numberKind && isPlainNumber(value)) return number(numberKind, value);
    if (name === 'tray' && value === tray && tray !== undefined) return sameTrayMark;
    const textKind = textNames.get(name);
    if (!textKind || value === undefined) return written(value);
    if (textKind === 'tray') {
      if (!isObject(value)) return written(value);
      if (texts.tray === undefined) ({ tray } = value as { tray?: unknown });
    } else if (isObject(value)) return written(value);
    return text(textKind, JSON.stringify(value));
  }

  function written(value: unknown): string {
    if (Array.isArray(value)) return `[${value.map((item) => written(item)).join(',')}]`;
    if (!isObject(value)) return JSON.stringify(value) ?? 'null';
    const members = Object.entries(value).filter(([, part]) => part !== undefined);
    return `{${members.map(([name, part]) => `${JSON.stringify(name)}:${member(name, part)}`).join(',')}}`;
  }

  return { shape: written(event), numbers, texts, extras };
}

function isPlainNumber(value: unknown): value is number {
  return Number.isSafeInteger(value) && (value as number) >= 0;
}

function isObject(value: unknown): value is object {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** A shape as what stands between its holes: one text more than holes. */
export interface Pieces {
  readonly texts: readonly string[];
  readonly holes: readonly Hole[];
  /** How many of the holes are filled from the extras. */
  readonly extras: number;
}

/** Cuts a shape at its holes. Throws on a control character that marks none. */
export function piecesOf(shape: string): Pieces {
  const texts: string[] = [];
  const holes: Hole[] = [];
  let from = 0;
  for (let at = 0; at < shape.length; at += 1) {
    if (shape.charCodeAt(at) >= 32) continue;
    const hole = marks.get(shape.charAt(at));
    if (!hole) throw new Error('a shape has an unknown hole');
    texts.push(shape.slice(from, at));
    holes.push(hole);
    from = at + 1;
  }
  const extras = holes.filter((hole) => hole.from === 'extras').length;
  return { texts: [...texts, shape.slice(from)], holes, extras };
}
