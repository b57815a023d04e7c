/**
 * An event as text is taken apart into its shape (what thousands of events have in common) and what is its own. The text
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
export type NumberKind = Exclude<HoleKind, TextKind>;

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
/** The marks of what stands in a column, and of what stands in the extras. */
export const ofColumn = markOfKind('column');
export const ofExtras = markOfKind('extras');
export const nowMark = markOf({ from: 'now' });
export const sameTrayMark = markOf({ from: 'same-tray' });

/** A shape as what stands between its holes: one text more than holes. */
export interface Pieces {
  readonly texts: readonly string[];
  readonly holes: readonly Hole[];
  /** How many of the holes are filled from the extras. */
  readonly extras: number;
}

/** What no JSON has in it: the mark of a hole. */
const mark = /[^ -\uffff]/;
const everyMark = new RegExp(mark, 'g');

/** Cuts a shape at its holes. Throws on a control character that marks none. */
export function piecesOf(shape: string): Pieces {
  const holes = (shape.match(everyMark) ?? []).map((sign) => {
    const hole = marks.get(sign);
    if (!hole) throw new Error('a shape has an unknown hole');
    return hole;
  });
  const extras = holes.filter((hole) => hole.from === 'extras').length;
  return { texts: shape.split(mark), holes, extras };
}

/** The form of the events of a shape (see `Cut`): as the shape, whatever its holes are filled from. */
export function formOfShape(shape: string): string {
  return shape.replaceAll(everyMark, (sign) => {
    const hole = marks.get(sign);
    if (!hole || hole.from === 'same-tray') return sign;
    return ofColumn[hole.from === 'now' ? 'time' : hole.kind];
  });
}
