import { chained, type Entry, entryAfter, noLink } from '../../../src/domain/log/chain.ts';
import type { NewerEvent } from '../../../src/domain/log/read-event.ts';
import { foreignLog, newerEvent } from '../../support/drafts.ts';

/** What the backups of these tests say of themselves. */
export const about = {
  version: '0.1.0',
  wall: Date.UTC(2026, 2, 2, 17, 30),
  zone: 'Europe/London',
  shop: 'The test shop',
};

/** The log of one small shop with two stations, each chained. */
export function sampleEntries(...stations: readonly string[]): readonly Entry[] {
  const names = stations.length > 0 ? stations : ['bench', 'office'];
  return chained(names.flatMap((station) => foreignLog(station)));
}

/** An event of a later version, as its station would have chained it. */
export const newerEntry = entryAfter(noLink, newerEvent as unknown as NewerEvent);

export const text = new TextDecoder();
export const linesOf = (entries: readonly Entry[]) => entries.map((entry) => JSON.stringify(entry));
