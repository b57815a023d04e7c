import * as v from 'valibot';
import { entryAfter, type Link, noLink } from '../domain/log/chain.ts';
import { emptyHolding, withLink } from '../domain/log/holding.ts';
import { stationId } from '../domain/log/ids.ts';
import { stampSchema } from '../domain/log/stamp.ts';
import type { Head } from './head.ts';
import type { LayoutChange } from './shop-schema.ts';

/** The head as layout 1 wrote it. */
const firstHead = v.object({ station: stationId, seq: v.number(), stamp: stampSchema });

/** Brings the records of layout 1, which had no chain, to layout 2: chained in the order of their numbers. */
export async function chainRecords(tx: LayoutChange): Promise<void> {
  const last = new Map<string, Link>();
  let holding = emptyHolding;
  let cursor = await tx.objectStore('events').openCursor();
  while (cursor) {
    const { station, seq, trays, event } = cursor.value;
    const entry = entryAfter(last.get(station) ?? noLink, event);
    last.set(station, entry.link);
    holding = withLink(holding, entry.link);
    await cursor.update({ station, seq, trays, ...entry });
    cursor = await cursor.continue();
  }
  const heads = tx.objectStore('heads');
  const held = await heads.get('head');
  if (held === undefined) return;
  const { station, seq, stamp } = v.parse(firstHead, held);
  const head: Head = { station, seq, stamp, link: last.get(station) ?? noLink, holding };
  await heads.put(head, 'head');
}
