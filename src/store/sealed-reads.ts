import type { ShopEvent } from '../domain/log/event.ts';
import type { LogEvent } from '../domain/log/read-event.ts';
import { type ReadEvent, readEvent } from '../domain/log/read-event.ts';
import { eventTexts } from '../domain/packed/event-texts.ts';
import { isSameHead, type PackedRun } from '../domain/packed/packed-run.ts';
import { piecesOf } from '../domain/packed/shape.ts';
import { type Subject, subjectsOf } from './event-record.ts';
import type { Damaged, Reading } from './log-store.ts';
import { openPack } from './pack.ts';
import { asHere, type RunRecord } from './run-record.ts';
import { subjectsOfShape } from './subjects-of-shape.ts';

/** A sealed run as it comes from a store. */
export interface SealedRun {
  readonly record: RunRecord;
  /** What lies under its key among the packs. */
  readonly pack: unknown;
}

/** Opens a sealed run; undefined when it is not as it was written. */
export function openSealed({ record, pack }: SealedRun): PackedRun | undefined {
  const run = openPack(pack);
  return run && isSameHead(run, record.run) ? run : undefined;
}

/** The events of a sealed run from the number `from` on (as numbered here). */
export function readFrom(sealed: SealedRun, from: number): Reading {
  return readSealed(sealed, () => (at) => sealed.record.seq + at >= from);
}

/** The events of a sealed run that are about a tray, or about something of the stores. */
export function readAbout(sealed: SealedRun, subject: Subject): Reading {
  const { events, newer, damaged } = readSealed(sealed, (run) => mayBeAbout(run, subject));
  const isAbout = (event: LogEvent) => subjectsOf(event).includes(subject);
  return { events: events.filter(isAbout), newer: newer.filter(isAbout), damaged };
}

/** Quickly tells the most events that have nothing to do with a subject. */
function mayBeAbout(run: PackedRun, subject: Subject): (at: number) => boolean {
  const facts = run.trays.map((json) => (JSON.parse(json) as { tray?: unknown }).tray === subject);
  const isOpen = run.shapes.map(
    (shape) => piecesOf(shape).extras > 0 || subjectsOfShape(shape).includes(subject),
  );
  const { tray: trays, shape } = run.columns;
  return (at) => facts[trays[at] ?? -1] === true || isOpen[shape[at] ?? -1] === true;
}

function readSealed(sealed: SealedRun, wanted: (run: PackedRun) => (at: number) => boolean): Reading {
  const { record } = sealed;
  const run = openSealed(sealed);
  if (!run) return damagedRun(record);
  const events: ShopEvent[] = [];
  const newer: Reading['newer'][number][] = [];
  const damaged: Damaged[] = [];
  const kinds = new Map<number, ReadEvent['kind']>();
  for (const { at, text } of eventTexts(run, wanted(run))) {
    const event = JSON.parse(text) as LogEvent;
    const shape = run.columns.shape[at] ?? -1;
    // What was judged when it was sealed is right; which kinds are known may have changed with the app since.
    const kind = kinds.get(shape) ?? readEvent(event).kind;
    kinds.set(shape, kind);
    if (kind === 'known') events.push(asHere(event as ShopEvent, record.branch));
    else if (kind === 'newer') newer.push(asHere(event, record.branch));
    else damaged.push({ raw: event, problems: ['not as its kind is'] });
  }
  return { events, newer, damaged };
}

/** As many damaged records as it has entries: each is a tap that does not count. */
function damagedRun(record: RunRecord): Reading {
  const damaged: Damaged = { raw: record, problems: ['a sealed run is not as it was written'] };
  return { events: [], newer: [], damaged: new Array<Damaged>(record.run.entries).fill(damaged) };
}
