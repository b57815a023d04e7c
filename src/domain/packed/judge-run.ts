import { eventTexts } from './event-texts.ts';
import type { PackedRun } from './packed-run.ts';
import { type Hole, type HoleKind, isTextKind, piecesOf, type TextKind } from './shape.ts';
import { type SoundTexts, soundTexts } from './sound-texts.ts';
import { shapeOf } from './take-apart.ts';

/** What is wrong with an event, which is given as JSON too; null when nothing is. */
export type JudgeEvent = (event: unknown, text: string) => string | null;

/**
 * Judges runs that come from outside by some of their events: those that have between them each shape that was in no run
 * before, and the extremes of all numbers. The parts of an event are right or wrong on their own, so that the others are
 * right when these are. Texts are judged by themselves; an event with one that may not stand everywhere is judged itself.
 * `longest` is how many characters the events of a run may have on average. Null when nothing is wrong. Never throws. The
 * chain inside the run is not looked at: see `entriesOf`.
 */
export function judgeOfRuns(
  judge: JudgeEvent,
  { longest }: { readonly longest: number },
): (run: PackedRun) => string | null {
  const soundShapes = new Set<string>();
  const nameOf = soundTexts((event) => judge(event, JSON.stringify(event)));
  return (run) => {
    try {
      const { rows, shapes, characters } = tellingRows(run, { soundShapes, nameOf });
      if (characters > longest * run.entries) return 'its events are longer than events are';
      for (const { at, text } of eventTexts(run, (row) => rows.has(row))) {
        const event: unknown = JSON.parse(text);
        const problem = judge(event, text);
        if (problem !== null) return problem;
        const shape = run.shapes[run.columns.shape[at] ?? -1];
        // A hole where `cutEvent` makes none could hold anything in the events that are not looked at.
        if (shape !== text && shapeOf(event as object, run.base) !== shape)
          return 'an event is not packed as it ought to be';
      }
      for (const shape of shapes) soundShapes.add(shape);
      return null;
    } catch (error) {
      return String(error);
    }
  };
}

/** The most characters of a number, which is a safe integer, and of the id of a tray in its quotes. */
const longestNumber = 16;
const longestId = 42;

/** Rows that tell of all others, the shapes that they tell of, and how many characters the events have in all. */
function tellingRows(
  run: PackedRun,
  { soundShapes, nameOf }: { readonly soundShapes: ReadonlySet<string>; readonly nameOf: SoundTexts },
) {
  const rows = new Set<number>();
  const told = new Set<string>(soundShapes);
  const extremes = extremesOf();
  const pieces = run.shapes.map(piecesOf);
  const isSound = {
    day: run.days.map((text) => nameOf('day', text) !== undefined),
    person: run.persons.map((text) => nameOf('person', text) !== undefined),
    tray: run.trays.map((text) => nameOf('tray', text) !== undefined),
  };
  let characters = 0;
  let extra = 0;

  /** Takes a row for telling when it is the first with a shape; its length. */
  function lookAtShape(index: number, at: number): number {
    const shape = given(run.shapes[index]);
    if (!told.has(shape)) rows.add(at);
    told.add(shape);
    return shape.length;
  }

  /** Takes every row for telling with a text that may not stand everywhere; its length. */
  function lookAtText(kind: TextKind, { index, at }: { index: number; at: number }): number {
    if (!isSound[kind][index]) rows.add(at);
    return given(run[`${kind}s`][index]).length;
  }

  function look(hole: Hole, at: number): number {
    if (hole.from === 'now') return longestNumber;
    if (hole.from === 'same-tray') return longestId;
    const value = hole.from === 'column' ? inColumn(run, { kind: hole.kind, at }) : (run.extras[extra] ?? -1);
    if (hole.from === 'extras') extra += 1;
    if (isTextKind(hole.kind)) return lookAtText(hole.kind, { index: value, at });
    extremes.see(hole.kind, { value, at });
    return longestNumber;
  }

  for (let at = 0; at < run.entries; at += 1) {
    const shape = run.columns.shape[at] ?? -1;
    characters += lookAtShape(shape, at);
    for (const hole of pieces[shape]?.holes ?? []) characters += look(hole, at);
  }
  if (extra !== run.extras.length) throw new Error('a run has more extras than it needs');
  for (const row of extremes.rows()) rows.add(row);
  return { rows, shapes: told, characters };
}

function given(text: string | undefined): string {
  if (text === undefined) throw new Error('a run names what its dictionaries have not');
  return text;
}

/** The number that a hole stands for, or the index of its text. */
function inColumn({ columns, base, first }: PackedRun, { kind, at }: { kind: HoleKind; at: number }): number {
  const wall = base + (columns.wall[at] ?? 0);
  if (kind === 'seq') return first + at;
  if (kind === 'wall') return wall;
  return kind === 'time' ? wall - (columns.time[at] ?? 0) : (columns[kind][at] ?? -1);
}

/** Where the least and the greatest number of each kind stand. */
function extremesOf() {
  interface Place {
    readonly value: number;
    readonly at: number;
  }
  const met = new Map<HoleKind, { least: Place; greatest: Place }>();
  return {
    see(kind: HoleKind, place: Place): void {
      const before = met.get(kind);
      if (!before) met.set(kind, { least: place, greatest: place });
      else if (place.value < before.least.value) before.least = place;
      else if (place.value > before.greatest.value) before.greatest = place;
    },
    rows: () => [...met.values()].flatMap(({ least, greatest }) => [least.at, greatest.at]),
  };
}
