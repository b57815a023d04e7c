import type { Branch } from '../log/branch.ts';
import { type Cells, type Effect, effectOf, isVoid, newCells } from './effects.ts';
import type { PackedRun } from './packed-run.ts';
import { noFacts, sampleEvent } from './sample-event.ts';
import { type Pieces, piecesOf } from './shape.ts';

/** A run of a log, and the branch of a cloned station that it lies on. */
export interface LogRun {
  readonly run: PackedRun;
  readonly branch?: Branch | undefined;
}

/** Which event a void takes back: whose, and where among the extras its number stands, or else the number itself. */
interface VoidShape {
  readonly station: string;
  readonly seqAt: number | undefined;
  readonly seq: number;
  /** It takes back another void. */
  readonly nested: boolean;
}

/** A run made ready for questions. */
export interface RunColumns extends LogRun {
  /** Of each tray of its dictionary: its group of trays that are of one wood and variant. */
  readonly groupOf: Uint16Array;
  readonly groups: number;
  /** Of each shape: how many extras its events have, and what it takes back if it is a void. */
  readonly extrasOf: Uint8Array;
  readonly voids: readonly (VoidShape | undefined)[];
  /** Of each shape and group (shape × groups + group) the number of its effect, which is worked out when it is first met. */
  readonly effect: (at: number) => number;
}

/** A whole log in columns. */
export interface LogColumns {
  readonly runs: readonly RunColumns[];
  /** By number: runs that know the same shapes and groups share them. */
  readonly effects: readonly Effect[];
  readonly cells: Cells;
}

/** Makes runs ready. What thousands of events have in common is worked out once, as the sums of the shop have it. */
export function logColumns(runs: readonly LogRun[]): LogColumns {
  const cells = newCells();
  const effects: Effect[] = [];
  const numbers = new Map<string, Map<string, number>>();
  const shapes = new Map<string, ShapeFacts>();

  function effect(shape: string, group: Group): number {
    const ofShape = numbers.get(shape) ?? new Map<string, number>();
    numbers.set(shape, ofShape);
    const known = ofShape.get(group.name) ?? effects.push(effectOf(shape, { facts: group.facts, cells })) - 1;
    ofShape.set(group.name, known);
    return known;
  }

  function factsOf(shape: string): ShapeFacts {
    const known = shapes.get(shape) ?? shapeFacts(shape);
    shapes.set(shape, known);
    return known;
  }

  return {
    effects,
    cells,
    runs: runs.map(({ run, branch }) => {
      const { groups, groupOf } = groupsOf(run.trays);
      const facts = run.shapes.map(factsOf);
      const local = new Array<number | undefined>(run.shapes.length * groups.length);
      return {
        run,
        branch,
        groups: groups.length,
        groupOf,
        extrasOf: Uint8Array.from(facts, ({ extras }) => extras),
        voids: facts.map(({ voids }) => voids),
        effect(at) {
          const known =
            local[at] ??
            effect(run.shapes[Math.floor(at / groups.length)] ?? '', groups[at % groups.length] ?? nobodys);
          local[at] = known;
          return known;
        },
      };
    }),
  };
}

interface Group {
  readonly name: string;
  readonly facts: string;
}
const nobodys: Group = { name: '', facts: noFacts };

function groupsOf(trays: readonly string[]) {
  const groups: Group[] = [];
  const groupOf = Uint16Array.from(trays, (facts) => {
    const { species, variant } = JSON.parse(facts) as { species: string; variant: string };
    const name = `${species}|${variant}`;
    const at = groups.findIndex((group) => group.name === name);
    return at >= 0 ? at : groups.push({ name, facts }) - 1;
  });
  return { groupOf, groups: groups.length > 0 ? groups : [nobodys] };
}

interface ShapeFacts {
  readonly extras: number;
  readonly voids: VoidShape | undefined;
}

function shapeFacts(shape: string): ShapeFacts {
  const pieces = piecesOf(shape);
  return { extras: pieces.extras, voids: shape.includes('"voided"') ? readVoid(shape, pieces) : undefined };
}

function readVoid(shape: string, { holes }: Pieces): VoidShape | undefined {
  const event = sampleEvent(shape, noFacts);
  if (!isVoid(event)) return undefined;
  const extras = holes.filter((hole) => hole.from === 'extras');
  const { station, seq } = event.event as { readonly station: string; readonly seq: number };
  const seqAt = extras.findIndex((hole) => hole.kind === 'seq');
  return { station, seq, seqAt: seqAt < 0 ? undefined : seqAt, nested: isVoid(event.event) };
}
