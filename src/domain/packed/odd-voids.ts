import type { EventId } from '../log/version-vector.ts';
import { isVoid } from './effects.ts';
import type { LogRun, Row } from './log-run.ts';
import { rowFinder } from './row-finder.ts';
import { noFacts, sampleEvent } from './sample-event.ts';
import { piecesOf } from './shape.ts';

/** A void: its row, and the event that it takes back, as its station named it. */
export interface VoidRow extends Row, EventId {
  /** It takes back another void. */
  readonly nested: boolean;
}

/** The voids of a run, in their order. */
export function* voidRows(of: LogRun): Generator<VoidRow> {
  const { shapes, columns, extras, entries } = of.run;
  const kinds = shapes.map(kindOf);
  if (!kinds.some(({ takes }) => takes)) return;
  let first = 0;
  for (let at = 0; at < entries; at += 1) {
    const kind = kinds[columns.shape[at] ?? -1];
    if (kind?.takes) {
      const { station, seq, seqAt, nested } = kind.takes;
      yield { of, at, station, nested, seq: seqAt === undefined ? seq : (extras[first + seqAt] ?? 0) };
    }
    first += kind?.extras ?? 0;
  }
}

interface Kind {
  /** How many extras its events have. */
  readonly extras: number;
  readonly takes: VoidShape | undefined;
}

/** What events of a shape take back: whose, and where among their extras its number stands, or else the number itself. */
interface VoidShape extends Omit<VoidRow, keyof Row> {
  readonly seqAt: number | undefined;
}

function kindOf(shape: string): Kind {
  const { extras, holes } = piecesOf(shape);
  const event = shape.includes('"voided"') ? sampleEvent(shape, noFacts) : undefined;
  if (!event || !isVoid(event)) return { extras, takes: undefined };
  const { station, seq } = event.event as EventId;
  const seqAt = holes.filter((hole) => hole.from === 'extras').findIndex((hole) => hole.kind === 'seq');
  return {
    extras,
    takes: { station, seq, seqAt: seqAt < 0 ? undefined : seqAt, nested: isVoid(event.event) },
  };
}

/**
 * The voids that are not simply what they take back, taken away: those of a void, those whose event is not there or is
 * taken back once more, and those that are taken back themselves.
 */
export function oddVoids(runs: readonly LogRun[], voids: readonly VoidRow[]): readonly Row[] {
  const find = rowFinder(runs);
  const voided = new Map(runs.map((of) => [of, new Uint8Array(of.run.entries)]));
  const timesVoided = ({ of, at }: Row) => voided.get(of)?.[at] ?? 0;
  const targets = voids.map((each) => find(each.of, each));
  for (const target of targets) {
    const ofRun = target && voided.get(target.of);
    if (ofRun) ofRun[target.at] = Math.min(2, timesVoided(target) + 1);
  }
  return voids.filter((each, index) => {
    const target = targets[index];
    return each.nested || !target || timesVoided(target) > 1 || timesVoided(each) > 0;
  });
}
