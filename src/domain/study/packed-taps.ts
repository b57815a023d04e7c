import { identityOn, toldApart } from '../log/branch.ts';
import type { ShopEvent, TrayFacts } from '../log/event.ts';
import type { PersonId, ShopDay } from '../log/ids.ts';
import { readEvent } from '../log/read-event.ts';
import { eventTexts } from '../packed/event-texts.ts';
import type { LogRun } from '../packed/log-run.ts';
import { voidRows } from '../packed/odd-voids.ts';
import type { PackedRun } from '../packed/packed-run.ts';
import { noFacts, sampleEvent } from '../packed/sample-event.ts';
import { piecesOf } from '../packed/shape.ts';
import { tapKindOf } from './tap-kind.ts';
import type { TapRows } from './tap-rows.ts';

/** Adds the taps and voids of runs. What is said is read once for each shape, the rest from columns. */
export function runAdder(rows: TapRows): (of: LogRun) => void {
  const known = new Map<string, Reading>();

  function reading(shape: string): Reading {
    const found = known.get(shape) ?? readingOf(shape, rows.indexes);
    known.set(shape, found);
    return found;
  }

  return (of) => {
    const { run, branch } = of;
    const odd = new Set<number>();
    addPlain(rows, { ...of, readings: run.shapes.map(reading), odd });
    if (odd.size > 0) addOdd(rows, { ...of, odd });
    for (const { at, station, seq } of voidRows(of)) {
      const by = identityOn(branch, { station: run.station, seq: run.first + at });
      rows.addVoid({ by, target: identityOn(branch, { station, seq }) });
    }
  };
}

function addOdd(rows: TapRows, { run, branch, odd }: LogRun & { readonly odd: ReadonlySet<number> }): void {
  for (const { text } of eventTexts(run, (at) => odd.has(at))) {
    const event = JSON.parse(text) as ShopEvent;
    if (readEvent(event).kind === 'known') rows.addEvent(branch ? toldApart(event, branch) : event);
  }
}

/** How the events of a shape are read: by the columns, one by one, or not at all. */
type Reading = { readonly extras: number } & (
  | {
      readonly by: 'columns';
      /** As the dictionary has it. */
      readonly kind: number;
      /** Which of the extras is the wall time of the stamp; −1 where that is in its column: it holds 49 days. */
      readonly wallAt: number;
      readonly hasTray: boolean;
      readonly isTimed: boolean;
    }
  | { readonly by: 'event' }
  | { readonly by: 'none' }
);

const none: Reading = { by: 'none', extras: 0 };

function readingOf(shape: string, indexes: TapRows['indexes']): Reading {
  const { extras } = piecesOf(shape);
  const read = readEvent(sampleEvent(shape, noFacts));
  const kind = read.kind === 'known' ? tapKindOf(read.event) : undefined;
  if (kind === undefined) return { by: 'none', extras };
  const labelled = labels(shape);
  const wallAt = extraLabels(extras).indexOf(String(labelled.stamp?.wall));
  const isPlain =
    labelled.seq === label('seq') &&
    (labelled.stamp?.wall === label('wall') || wallAt >= 0) &&
    labelled.stamp?.tick === label('tick') &&
    labelled.day === label('day') &&
    labelled.person === label('person') &&
    [undefined, label('tray')].includes(labelled.of) &&
    [undefined, null, label('elapsed')].includes(labelled.elapsed);
  if (!isPlain) return { by: 'event', extras };
  return {
    ...{ by: 'columns', extras, kind: indexes.kind(kind), wallAt },
    hasTray: labelled.of !== undefined,
    isTimed: labelled.elapsed === label('elapsed'),
  };
}

const label = (kind: string) => `column ${kind}`;
const extraLabels = (count: number) => Array.from({ length: count }, (_, at) => `extra ${at}`);

/** The parts of an event, each with the column that it comes from. */
interface Labelled {
  readonly seq?: unknown;
  readonly stamp?: { readonly wall?: unknown; readonly tick?: unknown };
  readonly day?: unknown;
  readonly person?: unknown;
  readonly of?: string;
  readonly elapsed?: string | null;
}

/** An event of a shape with the names of columns and extras in the place of their values. */
function labels(shape: string): Labelled {
  const { texts, holes, extras } = piecesOf(shape);
  const further = extraLabels(extras).values();
  const filled = texts.reduce((text, piece, at) => {
    const hole = holes[at - 1];
    const name = hole?.from === 'extras' ? further.next().value : hole?.from === 'column' && label(hole.kind);
    return `${text}"${name}"${piece}`;
  });
  return JSON.parse(filled) as Labelled;
}

interface ToRead extends LogRun {
  readonly readings: readonly Reading[];
  /** Takes the rows that have to be read one by one. */
  readonly odd: Set<number>;
}

function addPlain({ indexes, add }: TapRows, { run, branch, readings, odd }: ToRead): void {
  const trays = parsed<TrayFacts>(run.trays).map(indexes.tray);
  const days = parsed<ShopDay>(run.days).map(indexes.day);
  const persons = parsed<PersonId | null>(run.persons).map(indexes.person);
  const { station, seq } = identityOn(branch, { station: run.station, seq: run.first });
  const stationAt = indexes.station(station);
  const { shape, wall, tick, day, person, tray, elapsed } = run.columns;
  let extra = 0;
  for (let at = 0; at < run.entries; at += 1) {
    const reading = readings[shape[at] ?? -1] ?? none;
    const first = extra;
    extra += reading.extras;
    if (reading.by === 'event') odd.add(at);
    if (reading.by !== 'columns') continue;
    add({
      kind: reading.kind,
      tray: reading.hasTray ? (trays[tray[at] ?? -1] ?? -1) : -1,
      day: days[day[at] ?? -1] ?? -1,
      person: persons[person[at] ?? -1] ?? -1,
      station: stationAt,
      seq: seq + at,
      wall: reading.wallAt < 0 ? run.base + (wall[at] ?? 0) : (run.extras[first + reading.wallAt] ?? 0),
      tick: tick[at] ?? 0,
      elapsed: reading.isTimed ? (elapsed[at] ?? -1) : -1,
    });
  }
}

function parsed<Value>(texts: PackedRun['trays']): Value[] {
  return texts.map((text) => JSON.parse(text) as Value);
}
