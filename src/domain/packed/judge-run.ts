import { eventTexts } from './event-texts.ts';
import type { PackedRun } from './packed-run.ts';
import { type Hole, type HoleKind, isTextKind, piecesOf } from './shape.ts';
import { shapeOf } from './take-apart.ts';

/** What is wrong with an event, which is given as JSON too; null when nothing is. */
export type JudgeEvent = (event: unknown, text: string) => string | null;

/**
 * Judges runs that come from outside by some of their events: those that have between them each shape and each text that
 * was in no run before, and the extremes of all numbers. The parts of an event are right or wrong on their own, so that
 * the others are right when these are. `longest` is how many characters the events of a run may have on average. Null when
 * nothing is wrong. Never throws. The chain inside the run is not looked at: see `entriesOf`.
 */
export function judgeOfRuns(
  judge: JudgeEvent,
  { longest }: { readonly longest: number },
): (run: PackedRun) => string | null {
  const sound = new Set<string>();
  return (run) => {
    try {
      const { rows, texts, characters } = tellingRows(run, sound);
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
      for (const text of texts) sound.add(text);
      return null;
    } catch (error) {
      return String(error);
    }
  };
}

/** The most characters of a number, which is a safe integer, and of the id of a tray in its quotes. */
const longestNumber = 16;
const longestId = 42;

/** Rows that tell of all others, the texts that they tell of, and how many characters the events have in all. */
function tellingRows(run: PackedRun, sound: ReadonlySet<string>) {
  const rows = new Set<number>();
  const texts = new Set<string>();
  const extremes = extremesOf();
  const shapes = run.shapes.map(piecesOf);
  const firsts = {
    shape: firstsOf('shape', run.shapes),
    day: firstsOf('day', run.days),
    person: firstsOf('person', run.persons),
    tray: firstsOf('tray', run.trays),
  };
  let characters = 0;
  let extra = 0;

  /** Takes a row for telling when it is the first with a text; its length. */
  function firstsOf(kind: string, all: readonly string[]) {
    const told = all.map((text) => sound.has(kind + text));
    return (index: number, at: number): number => {
      const text = all[index];
      if (text === undefined) throw new Error('a run names what its dictionaries have not');
      if (!told[index]) {
        told[index] = true;
        texts.add(kind + text);
        rows.add(at);
      }
      return text.length;
    };
  }

  function look(hole: Hole, at: number): number {
    if (hole.from === 'now') return longestNumber;
    if (hole.from === 'same-tray') return longestId;
    const value = hole.from === 'column' ? inColumn(run, { kind: hole.kind, at }) : (run.extras[extra] ?? -1);
    if (hole.from === 'extras') extra += 1;
    if (isTextKind(hole.kind)) return firsts[hole.kind](value, at);
    extremes.see(hole.kind, { value, at });
    return longestNumber;
  }

  for (let at = 0; at < run.entries; at += 1) {
    const shape = run.columns.shape[at] ?? -1;
    characters += firsts.shape(shape, at);
    for (const hole of shapes[shape]?.holes ?? []) characters += look(hole, at);
  }
  if (extra !== run.extras.length) throw new Error('a run has more extras than it needs');
  for (const row of extremes.rows()) rows.add(row);
  return { rows, texts, characters };
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
