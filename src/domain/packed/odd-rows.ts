import type { PackedRun } from './packed-run.ts';
import type { Numbers } from './read-values.ts';
import { type HoleKind, isTextKind, piecesOf, type TextKind } from './shape.ts';
import { least } from './sound-forms.ts';
import type { SoundTexts } from './sound-texts.ts';

/** Rows of a run that have to be judged themselves, and the latest wall time of the stamps of the others. */
export interface OddRows {
  readonly rows: ReadonlySet<number>;
  readonly newest: number;
}

interface Judges {
  readonly isSoundShape: (shape: string) => boolean;
  readonly nameOf: SoundTexts;
  readonly greatest: Numbers;
}

/**
 * Finds the rows of a run that are odd: of a shape that is not sound for all, with a text that may not stand everywhere, or
 * with an extra beyond its bounds. Undefined when the run names what it has not. The first wall time of all others is that of
 * their own stamp.
 */
export function oddRows(run: PackedRun, judges: Judges): OddRows | undefined {
  const { columns, extras, base, entries } = run;
  const plans = plansOf(run, judges);
  const rows = new Set<number>();
  let newest = 0;
  let next = 0;
  for (let at = 0; at < entries; at += 1) {
    const plan = plans[columns.shape[at] ?? -1];
    if (!plan) return undefined;
    let isOdd = plan.isOdd;
    for (const { column, sound } of plan.texts) if (sound[column[at] ?? -1] !== true) isOdd = true;
    const first = next;
    for (const { from, to } of plan.extras) {
      const value = extras[next] ?? -1;
      if (!(value >= from && value <= to && Number.isInteger(value))) isOdd = true;
      next += 1;
    }
    if (isOdd) rows.add(at);
    else newest = Math.max(newest, plan.isLate ? (extras[first] ?? 0) : base + (columns.wall[at] ?? 0));
  }
  return next === extras.length ? { rows, newest } : undefined;
}

function plansOf(run: PackedRun, { isSoundShape, nameOf, greatest }: Judges) {
  const areSound = (kind: TextKind) => run[`${kind}s`].map((json) => nameOf(kind, json) !== undefined);
  const sound = { day: areSound('day'), person: areSound('person'), tray: areSound('tray') };

  /** Between what an extra has to lie; there is nothing between the ends where a text of its kind is not sound. */
  function bounds(kind: HoleKind): { readonly from: number; readonly to: number } {
    if (!isTextKind(kind)) return { from: least[kind], to: greatest[kind] };
    return { from: 0, to: sound[kind].includes(false) ? -1 : sound[kind].length - 1 };
  }

  return run.shapes.map((shape) => {
    const { holes } = piecesOf(shape);
    const stamp = holes.find((hole) => 'kind' in hole && hole.kind === 'wall');
    return {
      isOdd: !isSoundShape(shape),
      /** The wall time of its stamp is further from the first of the run than a column can say. */
      isLate: stamp?.from === 'extras',
      texts: holes.flatMap((hole) =>
        hole.from === 'column' && isTextKind(hole.kind)
          ? { column: run.columns[hole.kind], sound: sound[hole.kind] }
          : [],
      ),
      extras: holes.flatMap((hole) => (hole.from === 'extras' ? bounds(hole.kind) : [])),
    };
  });
}
