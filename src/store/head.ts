import * as v from 'valibot';
import type { ShopEvent } from '../domain/log/event.ts';
import { stationId } from '../domain/log/ids.ts';
import { nextStamp, stampSchema, stampZero, witnessStamp } from '../domain/log/stamp.ts';
import type { Act, LogEntry } from './log-store.ts';

/** How many taps back a repeated append is known again: far more than can be in flight at once. */
const rememberedActs = 32;

export const headSchema = v.object({
  station: stationId,
  seq: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
  stamp: stampSchema,
  acts: v.array(v.object({ act: v.string(), from: v.number(), to: v.number() })),
});
/** Where the own station's sequence stands; it lives beside the events and changes in their transaction. */
export type Head = Readonly<v.InferOutput<typeof headSchema>>;

export function newHead(station: Head['station']): Head {
  return { station, seq: 0, stamp: stampZero, acts: [] };
}

/** The sequence numbers that this act was given before, when it is one of the last few. */
export function earlierRun({ acts }: Head, { act }: Act): { from: number; to: number } | undefined {
  return acts.find((each) => each.act === act);
}

/** Numbers an act's drafts. All events of one tap carry one stamp, which is how they are undone together. */
export function numberAct(
  head: Head,
  { act, drafts, now }: Act,
): { head: Head; events: readonly ShopEvent[] } {
  const { station } = head;
  const stamp = nextStamp(head.stamp, now);
  const events = drafts.map(
    (draft, index): ShopEvent => ({ station, seq: head.seq + 1 + index, stamp, ...draft }),
  );
  const seq = head.seq + events.length;
  const acts = [...head.acts, { act, from: head.seq + 1, to: seq }].slice(-rememberedActs);
  return { head: { station, seq, stamp, acts }, events };
}

/** The head after foreign events came in at `now`: the clock goes on, and a sequence of one's own is never reused. */
export function headAfterMerge(
  head: Head,
  { entries, now }: { entries: readonly LogEntry[]; now: number },
): Head {
  let { stamp, seq } = head;
  for (const entry of entries) {
    // A damaged entry is kept too, but it must not touch the clock.
    const seen = v.safeParse(stampSchema, 'stamp' in entry ? entry.stamp : undefined);
    if (seen.success) stamp = witnessStamp(stamp, { seen: seen.output, now });
    if (entry.station === head.station) seq = Math.max(seq, entry.seq);
  }
  return { ...head, stamp, seq };
}
