import type { TrayFacts } from '../log/event.ts';
import { type Cells, type Effect, effectsOf, newCells } from './effects.ts';
import type { LogRun, Row } from './log-run.ts';
import { oddVoids, type VoidRow, voidRows } from './odd-voids.ts';
import { noFacts } from './sample-event.ts';

/** A whole log made ready for questions. */
export interface LogColumns {
  readonly runs: readonly LogRun[];
  /** For each run a column: of each entry the number of its effect. It is all that a question has to read. */
  readonly columns: readonly EffectColumn[];
  /** By number: what thousands of events have in common is worked out once, as the sums of the shop have it. */
  readonly effects: readonly Effect[];
  readonly cells: Cells;
  /** Voids that are not simply what they take back, taken away. */
  readonly odd: readonly Row[];
}

export type EffectColumn = Uint16Array | Uint32Array;

export function logColumns(runs: readonly LogRun[]): LogColumns {
  const cells = newCells();
  const effects: Effect[] = [];
  const numbers = new Map<string, number>();
  const ofShape = new Map<string, ReturnType<typeof effectsOf>>();
  const voids: VoidRow[] = [];

  function effectNumber(shape: string, { name, facts }: Group): number {
    const kind = `${name}\n${shape}`;
    const known = numbers.get(kind);
    if (known !== undefined) return known;
    const effectFor = ofShape.get(shape) ?? effectsOf(shape, cells);
    ofShape.set(shape, effectFor);
    const number = effects.push(effectFor(facts)) - 1;
    numbers.set(kind, number);
    return number;
  }

  function columnOf({ run }: LogRun): EffectColumn {
    const { groups, groupOf } = groupsOf(run.trays);
    const known = new Array<number | undefined>(run.shapes.length * groups.length);
    const column = new Uint32Array(run.entries);
    for (let at = 0; at < run.entries; at += 1) {
      const shape = run.columns.shape[at] ?? 0;
      const group = groupOf[run.columns.tray[at] ?? 0] ?? 0;
      const kind = shape * groups.length + group;
      known[kind] ??= effectNumber(run.shapes[shape] ?? '', groups[group] ?? nobodys);
      column[at] = known[kind] ?? 0;
    }
    return effects.length > 0x1_0000 ? column : Uint16Array.from(column);
  }

  const columns = runs.map((of) => {
    for (const row of voidRows(of)) voids.push(row);
    return columnOf(of);
  });
  return { runs, columns, effects, cells, odd: oddVoids(runs, voids) };
}

/** Trays of one wood and variant, of which events do the same. */
interface Group {
  readonly name: string;
  /** Facts of one of them. */
  readonly facts: TrayFacts;
}
const nobodys: Group = { name: '', facts: JSON.parse(noFacts) as TrayFacts };

function groupsOf(trays: readonly string[]) {
  const groups: Group[] = [];
  const groupOf = Uint16Array.from(trays, (json) => {
    const facts = JSON.parse(json) as TrayFacts;
    const name = `${facts.species}|${facts.variant}`;
    const at = groups.findIndex((group) => group.name === name);
    return at >= 0 ? at : groups.push({ name, facts }) - 1;
  });
  return { groupOf, groups: groups.length > 0 ? groups : [nobodys] };
}
