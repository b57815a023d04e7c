import type { Entry, Link } from '../log/chain.ts';
import type { StationId } from '../log/ids.ts';
import type { LogEvent } from '../log/read-event.ts';
import { type Cut, cutEvent } from './cut-event.ts';

/** An entry whose event is still the text that its station wrote, and what there is to know of it without parsing that. */
export interface TextEntry {
  readonly prev: Link;
  readonly link: Link;
  readonly station: StationId;
  readonly seq: number;
  /** The wall time of its stamp, ms UTC; undefined where a newer version has no stamp. */
  readonly wall: number | undefined;
  readonly text: string;
  readonly cut: Cut;
}

export function textEntryOf({ prev, link, event }: Entry): TextEntry {
  const { station, seq } = event;
  const wall = 'stamp' in event ? event.stamp.wall : undefined;
  return { prev, link, station, seq, wall, text: JSON.stringify(event), cut: cutEvent(event) };
}

export function entryOfText({ prev, link, text }: TextEntry): Entry {
  return { prev, link, event: JSON.parse(text) as LogEvent };
}
