import { type ColumnName, type Columns, columnNames, type PackedRun, type RunHead } from './packed-run.ts';
import { type Pieces, piecesOf, type TextKind } from './shape.ts';
import { shapeWith, type TakenApart, takeApart } from './take-apart.ts';
import type { TextEntry } from './text-entry.ts';

/** A dictionary in the making. */
function dictionary() {
  const indexes = new Map<string, number>();
  return {
    indexOf(text: string): number {
      const index = indexes.get(text) ?? indexes.size;
      if (index === indexes.size) indexes.set(text, index);
      return index;
    },
    texts: () => [...indexes.keys()],
  };
}

/** The columns that hold numbers, and those that hold indexes of texts. */
const ofNumbers = ['wall', 'tick', 'elapsed', 'time'] as const;
const ofTexts = ['day', 'person', 'tray'] as const;

/** A form, and the indexes of the shapes that its events have, by their marks. */
interface FormInRun {
  readonly pieces: Pieces;
  readonly shapes: Map<string, number>;
}

/** The columns and dictionaries of a run in the making. */
export function newSheet() {
  /** The wall time of the first entry. */
  let base: number | undefined;
  const shapes = dictionary();
  const forms = new Map<string, FormInRun>();
  const kinds = { day: dictionary(), person: dictionary(), tray: dictionary() };
  const columns = Object.fromEntries(columnNames.map((name) => [name, [] as number[]])) as Record<
    ColumnName,
    number[]
  >;
  const extras: number[] = [];
  const indexOf = (kind: TextKind, text: string | undefined) =>
    text === undefined ? 0 : kinds[kind].indexOf(text);

  function inRun(form: string): FormInRun {
    const known = forms.get(form) ?? { pieces: piecesOf(form), shapes: new Map<string, number>() };
    forms.set(form, known);
    return known;
  }

  function shapeIndex({ pieces, shapes: own }: FormInRun, marks: string): number {
    const index = own.get(marks) ?? shapes.indexOf(shapeWith(pieces, marks));
    own.set(marks, index);
    return index;
  }

  function fill(shape: number, { numbers, texts, extras: more }: Omit<TakenApart, 'marks'>): void {
    columns.shape.push(shape);
    for (const kind of ofNumbers) columns[kind].push(numbers[kind] ?? 0);
    for (const kind of ofTexts) columns[kind].push(indexOf(kind, texts[kind]));
    for (const extra of more)
      extras.push(typeof extra === 'number' ? extra : indexOf(extra.kind, extra.text));
  }

  return {
    take({ seq, wall, text, cut }: Pick<TextEntry, 'seq' | 'wall' | 'text' | 'cut'>, mark = 0): void {
      const form = inRun(cut.form);
      base ??= wall ?? 0;
      const apart = takeApart(form.pieces, { values: cut.values, base });
      const { seq: itsSeq, wall: itsWall } = apart.numbers;
      // An event whose first number or stamp is not where it is expected is kept as it is, in a shape without holes.
      const fits = itsSeq === seq && (itsWall === undefined || base + itsWall === wall);
      if (fits) fill(shapeIndex(form, apart.marks), apart);
      else fill(shapes.indexOf(text), { numbers: {}, texts: {}, extras: [] });
      columns.act.push(mark);
    },
    packed: (): Omit<PackedRun, keyof RunHead> => ({
      base: base ?? 0,
      shapes: shapes.texts(),
      days: kinds.day.texts(),
      persons: kinds.person.texts(),
      trays: kinds.tray.texts(),
      columns: Object.fromEntries(
        columnNames.map((name) => [name, Uint32Array.from(columns[name])]),
      ) as Columns,
      extras: Float64Array.from(extras),
    }),
  };
}
