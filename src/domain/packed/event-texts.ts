import type { PackedRun } from './packed-run.ts';
import { type Hole, type HoleKind, isTextKind, type Pieces, piecesOf, type TextKind } from './shape.ts';

/** The JSON of one event of a run, and how many entries stand before it there. */
export interface EventText {
  readonly at: number;
  readonly text: string;
}

/**
 * The events of a run, each as the JSON that its station wrote; those alone whose place is wanted. Throws when the run is
 * not whole: when it names what its dictionaries have not, or has too few extras.
 */
export function* eventTexts(
  run: PackedRun,
  isWanted: (at: number) => boolean = () => true,
): Generator<EventText, void> {
  const shapes = run.shapes.map(piecesOf);
  const trayNames = run.trays.map(nameIn);
  let firstExtra = 0;
  for (let at = 0; at < run.entries; at += 1) {
    const shape = given(shapes[run.columns.shape[at] ?? -1]);
    if (isWanted(at)) yield { at, text: textAt(run, { at, shape, firstExtra, trayNames }) };
    firstExtra += shape.extras;
  }
}

interface Row {
  readonly at: number;
  readonly shape: Pieces;
  readonly firstExtra: number;
  /** The ids of the trays, as JSON. */
  readonly trayNames: readonly string[];
}

function textAt(run: PackedRun, { at, shape: { texts, holes }, firstExtra, trayNames }: Row): string {
  const wall = run.base + (run.columns.wall[at] ?? 0);
  let extra = firstExtra;
  let text = texts[0] ?? '';
  holes.forEach((hole, index) => {
    if (hole.from === 'extras') {
      text += extraText(run, { kind: hole.kind, at: extra });
      extra += 1;
    } else text += filling(hole);
    text += texts[index + 1];
  });
  return text;

  function filling(hole: Exclude<Hole, { from: 'extras' }>): string {
    if (hole.from === 'now') return String(wall);
    if (hole.from === 'same-tray') return given(trayNames[run.columns.tray[at] ?? -1]);
    const { kind } = hole;
    if (kind === 'seq') return String(run.first + at);
    if (kind === 'wall') return String(wall);
    const value = run.columns[kind][at] ?? -1;
    if (isTextKind(kind)) return textOf(run, { kind, index: value });
    return String(kind === 'time' ? wall - value : value);
  }
}

function extraText(run: PackedRun, { kind, at }: { kind: HoleKind; at: number }): string {
  const value = run.extras[at];
  if (value === undefined) throw new Error('extras of a run are missing');
  return isTextKind(kind) ? textOf(run, { kind, index: value }) : String(value);
}

function textOf(run: PackedRun, { kind, index }: { kind: TextKind; index: number }): string {
  return given(run[`${kind}s`][index]);
}

/** The id of a tray in its facts. */
export function nameIn(facts: string): string {
  const { tray } = JSON.parse(facts) as { tray?: unknown };
  return JSON.stringify(tray) ?? '';
}

function given<Value extends string | Pieces>(value: Value | undefined): Value {
  if (value === undefined) throw new Error('a run names what its dictionaries have not');
  return value;
}
