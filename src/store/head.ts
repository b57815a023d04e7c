import * as v from 'valibot';
import { type Entry, entryAfter, linkText, noLink } from '../domain/log/chain.ts';
import type { ShopEvent } from '../domain/log/event.ts';
import { emptyHolding, holdingSchema, joined, withLink } from '../domain/log/holding.ts';
import { stationId } from '../domain/log/ids.ts';
import type { LogEvent } from '../domain/log/read-event.ts';
import { compareStamps, nextStamp, stampSchema, stampZero, witnessStamp } from '../domain/log/stamp.ts';
import type { PackedRun } from '../domain/packed/packed-run.ts';
import type { Act } from './log-store.ts';

export const headSchema = v.object({
  station: stationId,
  seq: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
  stamp: stampSchema,
  /** The link of the own station's last event. */
  link: linkText,
  /** What the store holds, of all stations. */
  holding: holdingSchema,
});
/** Where the own station's sequence stood when it was last written; what was tapped since comes behind it (`headNow`). */
export type Head = Readonly<v.InferOutput<typeof headSchema>>;

export function newHead(station: Head['station']): Head {
  return { station, seq: 0, stamp: stampZero, link: noLink, holding: emptyHolding };
}

/** The head of a store that goes on under a new station: what it holds and its clock stay. */
export function renewedHead(head: Head, station: Head['station']): Head {
  return { ...head, station, seq: 0, link: noLink };
}

/** Numbers and chains an act's drafts. All events of one tap carry one stamp, which is how they are undone together. */
export function numberAct(
  head: Head,
  { drafts, now }: Act,
): { head: Head; entries: readonly Entry<ShopEvent>[] } {
  const stamp = nextStamp(head.stamp, now);
  let { seq, link, holding } = head;
  const entries = drafts.map((draft) => {
    seq += 1;
    const entry = entryAfter<ShopEvent>(link, { station: head.station, seq, stamp, ...draft });
    link = entry.link;
    holding = withLink(holding, link);
    return entry;
  });
  return { head: { station: head.station, seq, stamp, link, holding }, entries };
}

/** The head after own records that stand behind it, in their order. One that is missing among them is counted all the same. */
export function headAfterOwn(
  head: Head,
  own: readonly { readonly seq: number; readonly link: Head['link']; readonly event: LogEvent }[],
): Head {
  const last = own.at(-1);
  if (!last) return head;
  let { sum } = head.holding;
  let { stamp } = head;
  for (const { link, event } of own) {
    sum = withLink({ entries: 0, sum }, link).sum;
    if ('stamp' in event && compareStamps(event.stamp, stamp) > 0) stamp = event.stamp;
  }
  const entries = head.holding.entries + last.seq - head.seq;
  return { ...head, seq: last.seq, stamp, link: last.link, holding: { entries, sum } };
}

/** The head after entries came in at `now`: its clock goes on, and it knows what the store holds. */
export function headAfterMerge(
  head: Head,
  { entries, runs, now }: { entries: readonly Entry[]; runs: readonly PackedRun[]; now: number },
): Head {
  let { stamp, holding } = head;
  for (const run of runs) {
    const { wall, tick } = run.columns;
    // Where an event has no stamp of its own in the columns it counts as made at their beginning.
    for (let at = 0; at < run.entries; at += 1) {
      const seen = run.base + (wall[at] ?? 0);
      if (seen >= stamp.wall) stamp = witnessStamp(stamp, { seen: { wall: seen, tick: tick[at] ?? 0 }, now });
    }
    holding = joined(holding, run);
  }
  for (const { link, event } of entries) {
    // An event of a newer version is kept too, but it must not touch the clock when it has no stamp that we know.
    const seen = v.safeParse(stampSchema, 'stamp' in event ? event.stamp : undefined);
    if (seen.success) stamp = witnessStamp(stamp, { seen: seen.output, now });
    holding = withLink(holding, link);
  }
  return { ...head, stamp, holding };
}
