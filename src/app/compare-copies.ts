import { isSameHolding } from '../domain/log/holding.ts';
import { type Copy, differences, type Only } from '../domain/packed/differences.ts';
import { countIn, entriesIn, type Parcel } from '../domain/packed/parcel.ts';
import { copyOfParcel } from '../domain/packed/parcel-copy.ts';
import { tapsInRun } from '../domain/packed/taps.ts';
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
    const { back, missing } = await parted(await log.parcel(), twin);
    if (countIn(back) > 0) {
      const merged = await log.merge({ ...back, now });
      putBack = tapsIn(merged.added) + merged.mended;
      renewed = merged.renewed;
    }
    if (report.reach === 'all' && countIn(missing) > 0) {
      await twin.add(missing);
      copied = countIn(missing);
    }
  }
  for (const act of report.unsettled) {
    const before = (await log.holding()).records;
    const entries = await log.append({ ...act, tried: true });
    if ((await log.holding()).records > before) putBack += 1;
    await twin.add({ runs: [], entries });
    await twin.settleAct(act.act);
  }
  const entries = (await log.holding()).records;
  return { reach: report.reach, putBack, copied, renewed, entries };
}

/** What the store lacks and the twin lacks: stretches on whose last link they agree are opened on neither side. */
async function parted(here: Parcel, twin: Twin): Promise<{ back: Parcel; missing: Parcel }> {
  const ours = copyOfParcel(here);
  const theirs: Copy = {
    heads: await twin.heads(),
    open: async (head) => entriesIn(await twin.parcel([head])),
  };
  const only = await differences({ here: ours, there: theirs });
  const all = (whole: Parcel, { entries }: Only): Parcel => ({
    runs: whole.runs,
    entries: [...whole.entries, ...entries],
  });
  return {
    back: all(await twin.parcel(only.there.heads), only.there),
    missing: all(ours.held(only.here.heads), only.here),
  };
}

/** How many taps a parcel amounts to: entries of one tap carry one stamp. */
function tapsIn({ runs, entries }: Parcel): number {
  const single = new Set(
    entries.map(
      ({ event }) => `${event.station} ${'stamp' in event ? JSON.stringify(event.stamp) : event.seq}`,
    ),
  );
  return runs.reduce((sum, run) => sum + tapsInRun(run), single.size);
}
