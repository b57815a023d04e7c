/** A store whose events were tapped one by one and then sealed, as the app's worker seals them. */
import { type Entry, entryAfter, type Link, noLink } from '../../../src/domain/log/chain.ts';
import { type EventRecord, recordOf } from '../../../src/store/event-record.ts';
import { sealOldRecords } from '../../../src/store/sealing.ts';
import { openShopDatabase } from '../../../src/store/shop-database.ts';
import { longLog } from '../../support/long-log.ts';
import { inPieces } from './in-pieces.ts';
import { openLog } from './open-log.ts';

const name = 'log';
/** The usual plan lets so many a station lie young; here is none left that is not counted. */
const plan = { young: 0, together: 1024 };
const piece = 10_000;

/** Writes and seals so many events; gives how many are in sealed runs then. */
export async function sealLog(log: { events: number; until: number }): Promise<number> {
  (await openLog(name)).close();
  const nobody = () => {};
  const db = await openShopDatabase(name, { blocked: nobody, outdated: nobody, lost: nobody });
  for (const records of inPieces(recordsOf(log), piece)) {
    const tx = db.transaction('events', 'readwrite', { durability: 'relaxed' });
    for (const record of records) void tx.store.put(record);
    await tx.done;
    await sealOldRecords(db, plan);
  }
  const runs = await db.getAll('runs');
  db.close();
  return runs.reduce((sum, { run }) => sum + run.entries, 0);
}

function* recordsOf(log: { events: number; until: number }): Generator<EventRecord> {
  const links = new Map<string, Link>();
  let count = 0;
  for (const event of longLog(log)) {
    const entry: Entry = entryAfter(links.get(event.station) ?? noLink, event);
    links.set(event.station, entry.link);
    count += 1;
    yield recordOf(entry, { act: `act-${count}` });
  }
}
