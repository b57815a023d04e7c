import { largestInColumn } from './column.ts';
import { type Cut, cutEvent } from './cut-event.ts';
import {
  type HoleKind,
  isTextKind,
  type NumberKind,
  nowMark,
  ofColumn,
  ofExtras,
  type Pieces,
  piecesOf,
  sameTrayMark,
  type TextKind,
} from './shape.ts';

/**
 * The values of an event where a run keeps them. The first of a kind goes to that kind's column, every further one to the
 * extras. Of times the columns hold how long before the event's own wall time they were (ms).
 */
export interface TakenApart {
  /** The marks that stand in the shape for its values, in the order of the text. */
  readonly marks: string;
  /** What stands in the columns; kinds that the event has not are left out. */
  readonly numbers: Readonly<Partial<Record<NumberKind, number>>>;
  readonly texts: Readonly<Partial<Record<TextKind, string>>>;
  /** What stands in the extras, in the order of the text. */
  readonly extras: readonly (number | { readonly kind: TextKind; readonly text: string })[];
}

/**
 * Finds the places of the values that were cut out of an event of a form, which is given in pieces. `base` is the wall time
 * that the column of wall times counts from.
 */
export function takeApart(
  { holes }: Pieces,
  { values, base }: Pick<Cut, 'values'> & { base: number },
): TakenApart {
  const numbers: Partial<Record<NumberKind, number>> = {};
  const texts: Partial<Record<TextKind, string>> = {};
  const extras: (number | { kind: TextKind; text: string })[] = [];
  let now: number | undefined;

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

  const place = (kind: HoleKind, value: number | string | undefined) =>
    isTextKind(kind) ? text(kind, String(value)) : number(kind, Number(value));

  let marks = '';
  let at = 0;
  for (const hole of holes) {
    marks += 'kind' in hole ? place(hole.kind, values[at]) : sameTrayMark;
    if ('kind' in hole) at += 1;
  }
  return { marks, numbers, texts, extras };
}

/** The shape of the events that have these marks for the holes of their form. */
export function shapeWith({ texts }: Pieces, marks: string): string {
  return texts.reduce((shape, text, at) => shape + marks.charAt(at - 1) + text);
}

/** The shape that an event has in a run. */
export function shapeOf(event: object, base: number): string {
  const { form, values } = cutEvent(event);
  const pieces = piecesOf(form);
  return shapeWith(pieces, takeApart(pieces, { values, base }).marks);
}
