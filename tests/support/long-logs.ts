import * as v from 'valibot';
import { chained, type Entry, entryAfter } from '../../src/domain/log/chain.ts';
import type { ShopEvent } from '../../src/domain/log/event.ts';
import { stationId } from '../../src/domain/log/ids.ts';
import { foreignLog } from './drafts.ts';

/** A log of so many taps of one station: the same few kinds of events over and over, each with its own number and time. */
export function longLog(length: number, station = 'station-z'): readonly Entry<ShopEvent>[] {
  const kinds = foreignLog();
  const start = kinds[0]?.stamp.wall ?? 0;
  const name = v.parse(stationId, station);
  return chained(
    Array.from({ length }, (_, at) => ({
      ...(kinds[at % kinds.length] as ShopEvent),
      station: name,
      seq: at + 1,
      stamp: { wall: start + at * 7000, tick: 0 },
    })),
  );
}

/** What a cloned tablet wrote after the entry before number `first`: as many entries as stand there, with other times. */
export function otherStory(log: readonly Entry<ShopEvent>[], first: number): readonly Entry<ShopEvent>[] {
  const told: Entry<ShopEvent>[] = [];
  let prev = log[first - 1]?.prev;
  for (const { event } of log.slice(first - 1)) {
    if (!prev) break;
    const entry = entryAfter(prev, { ...event, stamp: { ...event.stamp, tick: 9 } });
    told.push(entry);
    prev = entry.link;
  }
  return told;
}
