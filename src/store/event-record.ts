import { type Branch, toldApart } from '../domain/log/branch.ts';
import type { Entry, Link } from '../domain/log/chain.ts';
import type { ShopEvent } from '../domain/log/event.ts';
import type { StationId, TrayId } from '../domain/log/ids.ts';
import type { LogEvent } from '../domain/log/read-event.ts';

/** One entry as a store keeps it: as its station wrote it, under the identity that it has here. */
export interface EventRecord {
  readonly station: StationId;
  readonly seq: number;
  /** The trays whose history it belongs to. */
  readonly trays: readonly string[];
  readonly prev: Link;
  readonly link: Link;
  readonly event: LogEvent;
  /** The branch of a cloned station that it lies on. */
  readonly branch?: Branch;
  /** The tap that it was appended by, on this tablet. */
  readonly act?: string;
}

export function recordOf(
  entry: Entry,
  { branch, act }: Pick<EventRecord, 'branch' | 'act'> = {},
): EventRecord {
  const { station, seq } = branch ? toldApart(entry.event, branch) : entry.event;
  const { prev, link, event } = entry;
  return {
    ...{ station, seq, trays: traysOf(event), prev, link, event },
    ...(branch && { branch }),
    ...(act !== undefined && { act }),
  };
}

/** What a record keeps, as its station wrote it. */
export function entryOf({ prev, link, event }: EventRecord): Entry {
  return { prev, link, event };
}

/** The trays whose history an event belongs to. */
export function traysOf(entry: LogEvent): readonly TrayId[] {
  const event = entry as ShopEvent;
  if (event.kind === 'voided') return traysOf(event.event);
  if (!('of' in event)) return [];
  return 'into' in event ? [event.of.tray, event.into.tray] : [event.of.tray];
}
