import type { Entry } from '../domain/log/chain.ts';
import { isSameHolding } from '../domain/log/holding.ts';
import { entriesIn } from '../domain/packed/parcel.ts';
import type { LogStore } from '../store/log-store.ts';
import type { Reach, Twin } from '../store/twin.ts';

/** What two copies of the log were found to lack, and got from each other. */
export interface Comparison {
  readonly reach: Reach;
  /** Taps that the store lacked and the twin had, and taps that were made and not stored before their window ended. */
  readonly putBack: number;
  /** Entries that the twin lacked and the store had. */
  readonly copied: number;
  /** The store took a new station: entries of its own had come back. */
  readonly renewed: boolean;
  /** How many entries the store holds now. */
  readonly entries: number;
}

/** Compares the store with its twin and gives each what the other has more. Rejects when either cannot be read. */
export async function compareCopies(
  { log, twin }: { log: LogStore; twin: Twin },
  now: number,
): Promise<Comparison> {
  const report = await twin.look();
  const { written, records } = await log.holding();
  let putBack = 0;
  let copied = 0;
  let renewed = false;
  if (report.reach === 'none') {
    return { reach: 'none', putBack, copied, renewed, entries: records };
  }
  if (records !== written.entries || !isSameHolding(written, report.holding)) {
    const here = await log.entries();
    const there = new Set(await twin.links());
    const held = new Set(here.map(({ link }) => link));
    const back = await twin.entries([...there].filter((link) => !held.has(link)));
    if (back.length > 0) {
      const merged = await log.merge({ entries: back, now });
      putBack = tapsIn(entriesIn(merged.added)) + merged.mended;
      renewed = merged.renewed;
    }
    const missing = report.reach === 'all' ? here.filter(({ link }) => !there.has(link)) : [];
    await twin.add(missing);
    copied = missing.length;
  }
  for (const act of report.unsettled) {
    const before = (await log.holding()).records;
    const entries = await log.append({ ...act, tried: true });
    if ((await log.holding()).records > before) putBack += 1;
    await twin.add(entries);
    await twin.settleAct(act.act);
  }
  const entries = (await log.holding()).records;
  return { reach: report.reach, putBack, copied, renewed, entries };
}

/** How many taps entries amount to: those of one tap carry one stamp. */
function tapsIn(entries: readonly Entry[]): number {
  return new Set(
    entries.map(
      ({ event }) => `${event.station} ${'stamp' in event ? JSON.stringify(event.stamp) : event.seq}`,
    ),
  ).size;
}
