import { type Branch, toldApart } from '../domain/log/branch.ts';
import type { Entry, Link } from '../domain/log/chain.ts';
import type { ShopEvent } from '../domain/log/event.ts';
import type { LotId, PartId, ReasonId, StationId, TrayId, VariantId } from '../domain/log/ids.ts';
import type { PhotoShown } from '../domain/log/photo-facts.ts';
import type { LogEvent } from '../domain/log/read-event.ts';

/** What a history can be asked of: a tray, or something else under a name that no tray has. */
export type Subject =
  | TrayId
  | `part/${PartId}`
  | `lot/${LotId}`
  /** The photos of a variant, and those of a criterion. */
  | `variant/${VariantId}`
  | `reason/${ReasonId}`;

/** One entry as a store keeps it: as its station wrote it, under the identity that it has here. */
export interface EventRecord {
  readonly station: StationId;
  readonly seq: number;
  /** What its history belongs to: trays, or what is in the stores (`Subject`). */
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
    ...{ station, seq, trays: subjectsOf(event), prev, link, event },
    ...(branch && { branch }),
    ...(act !== undefined && { act }),
  };
}

/** What a record keeps, as its station wrote it. */
export function entryOf({ prev, link, event }: Entry): Entry {
  return { prev, link, event };
}

/** Whose history an event belongs to. */
export function subjectsOf(entry: LogEvent): readonly Subject[] {
  const event = entry as ShopEvent;
  if (event.kind === 'voided') return subjectsOf(event.event);
  if (event.kind === 'parts-received') return event.parts.map(({ part }): Subject => `part/${part}`);
  if ('part' in event) return [`part/${event.part}`];
  if (event.kind === 'moisture-read') return [`lot/${event.lot}`];
  if (event.kind === 'photo-taken') return [subjectOfPhoto(event.shows)];
  if (event.kind === 'raised') return [event.of.tray, `variant/${event.of.variant}`];
  if (event.kind === 'shelf-moved') return [`variant/${event.variant}`];
  if (!('of' in event)) return [];
  return 'into' in event ? [event.of.tray, event.into.tray] : [event.of.tray];
}

function subjectOfPhoto(shows: PhotoShown): Subject {
  return shows.kind === 'variant' ? `variant/${shows.variant}` : `reason/${shows.reason}`;
}
