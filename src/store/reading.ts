import type { ShopEvent } from '../domain/log/event.ts';
import type { TrayId } from '../domain/log/ids.ts';
import { readEvent } from '../domain/log/read-event.ts';
import type { LogEntry, Reading } from './log-store.ts';

/** Sorts raw records into events, events of a newer version, and damaged ones. */
export function readAll(raws: readonly unknown[]): Reading {
  const reading = {
    events: [] as ShopEvent[],
    newer: [] as Reading['newer'][number][],
    damaged: [] as Reading['damaged'][number][],
  };
  for (const raw of raws) {
    const read = readEvent(raw);
    if (read.kind === 'known') reading.events.push(read.event);
    else if (read.kind === 'newer') reading.newer.push(read.event);
    else reading.damaged.push({ raw, problems: read.problems });
  }
  return reading;
}

/** The trays whose history an event belongs to. */
export function traysOf(entry: LogEntry): readonly TrayId[] {
  const event = entry as ShopEvent;
  if (event.kind === 'voided') return traysOf(event.event);
  if (!('of' in event)) return [];
  return 'into' in event ? [event.of.tray, event.into.tray] : [event.of.tray];
}
