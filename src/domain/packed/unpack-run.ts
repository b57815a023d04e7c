import { type Entry, type Link, linkOver } from '../log/chain.ts';
import type { LogEvent } from '../log/read-event.ts';
import { eventTexts } from './event-texts.ts';
import type { PackedRun } from './packed-run.ts';

/** The events of a run, as their station wrote them. Throws when the run is not whole; their links are not looked at. */
export function* eventsOf(run: PackedRun): Generator<LogEvent, void> {
  // Each was judged when it was packed, and a run is only opened when its sum fits.
  for (const { text } of eventTexts(run)) yield JSON.parse(text) as LogEvent;
}

/**
 * The entries of a run, chained anew. Throws when they do not end in the link of the run.
 * @param alive called now and then: a long run takes a good part of a second
 */
export function entriesOf(run: PackedRun, alive = () => {}): readonly Entry[] {
  const entries: Entry[] = [];
  let prev: Link = run.prev;
  for (const { at, text } of eventTexts(run)) {
    if (at % 4096 === 0) alive();
    const link = linkOver(prev, text);
    entries.push({ prev, link, event: JSON.parse(text) as LogEvent });
    prev = link;
  }
  if (prev !== run.link) throw new Error('a run does not end in its link');
  return entries;
}
