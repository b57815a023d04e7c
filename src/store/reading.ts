import { toldApart } from '../domain/log/branch.ts';
import type { Entry } from '../domain/log/chain.ts';
import type { ShopEvent } from '../domain/log/event.ts';
import { readEntry } from '../domain/log/read-entry.ts';
import { type EventRecord, entryOf } from './event-record.ts';
import type { Damaged, KeptEntry, Reading } from './log-store.ts';

/** Sorts records into events, events of a newer version, and damaged ones, which are not as they were written. */
export function readRecords(records: readonly EventRecord[]): Reading {
  const events: Reading['events'][number][] = [];
  const newer: Reading['newer'][number][] = [];
  const damaged: Damaged[] = [];
  for (const record of records) {
    const read = readEntry(record);
    if (read.kind === 'damaged') damaged.push({ raw: record, problems: read.problems });
    else if (!isFiledRight(record)) damaged.push({ raw: record, problems: ['filed under another identity'] });
    else if (read.of === 'known') events.push(asHere(read.entry.event, record));
    else newer.push(asHere(read.entry.event, record));
  }
  return { events, newer, damaged };
}

/** An event under the identity that it has in this store. */
function asHere<E extends EventRecord['event']>(event: E, { branch }: EventRecord): E {
  return branch ? toldApart(event, branch) : event;
}

/** The sound events of this version among records, with their links. */
export function knownEntries(records: readonly EventRecord[]): readonly Entry<ShopEvent>[] {
  return records.flatMap((record) => {
    const read = readEntry(record);
    return read.kind === 'sound' && read.of === 'known'
      ? [{ ...read.entry, event: asHere(read.entry.event, record) }]
      : [];
  });
}

/** The sound ones among records, each with its identity here. */
export function keptEntries(records: readonly EventRecord[]): readonly KeptEntry[] {
  return records.filter(isSoundRecord).map(({ station, seq, act, ...record }) => ({
    id: { station, seq },
    entry: entryOf(record),
    isOwn: act !== undefined,
  }));
}

function isFiledRight(record: EventRecord): boolean {
  const { station, seq } = asHere(record.event, record);
  return station === record.station && seq === record.seq;
}

/** Whether a record is as it was written. */
export function isSoundRecord(record: EventRecord): boolean {
  return readEntry(record).kind === 'sound' && isFiledRight(record);
}
