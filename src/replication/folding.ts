import type { Entry, Link } from '../domain/log/chain.ts';
import type { RunHead } from '../domain/packed/packed-run.ts';
import { entriesIn, type Parcel } from '../domain/packed/parcel.ts';
import { lastOf } from '../domain/packed/stretch.ts';
import type { LogStore } from '../store/log-store.ts';
import { type Lane, LaneMoved } from './exchange.ts';
import { put, type Sending, send } from './sending.ts';

/** What is folded where, and from how many messages on. Runs on the last lane are as long as runs get. */
const folds: readonly { readonly lane: Lane; readonly into: Lane; readonly most: number }[] = [
  { lane: 'ev', into: 'run.1', most: 300 },
  { lane: 'run.1', into: 'run.2', most: 16 },
  { lane: 'run.2', into: 'run.3', most: 16 },
];

interface Folding extends Sending {
  readonly store: Pick<LogStore, 'parcel'>;
  readonly tablet: string;
}

/**
 * Puts many short messages of the own seat together into a few long ones, like digits of a counter, so that a newcomer has few to
 * read however old the shop is. The long ones stand there before the short ones go.
 */
export async function foldLanes(folding: Folding): Promise<void> {
  for (const fold of folds) await foldLane(fold, folding);
}

async function foldLane(
  { lane, into, most }: (typeof folds)[number],
  { store, tablet, ...sending }: Folding,
): Promise<void> {
  const { exchange, ledger, desk, seat } = sending;
  const lines = ledger.lane({ seat, lane });
  const last = lines.at(-1);
  // What could not be opened may be of a newer version of this very tablet.
  if (!last || lines.length <= most || lines.some(({ kind }) => kind === null)) return;
  const entries = entriesUnder(
    lines.flatMap(({ brings }) => brings ?? []),
    await store.parcel(),
  );
  if (!entries) return;
  await send({ runs: [], entries }, { ...sending, laneOf: () => into });
  const said = { kind: 'seat1', tablet } as const;
  const how = { lane, body: new Uint8Array(), replaces: true, after: last.at } as const;
  try {
    await put([{ said, message: await desk.seal(said, how) }], { exchange, ledger, seat });
  } catch (error) {
    // A clone of this tablet writes there too: what it wrote meanwhile is not in the long ones.
    if (!(error instanceof LaneMoved)) throw error;
  }
}

/** The entries that heads speak of, each once; undefined when a parcel has not all of them. Throws when a run is not whole. */
function entriesUnder(heads: readonly RunHead[], { runs, entries }: Parcel): readonly Entry[] | undefined {
  const touches = ({ station, first, last }: { station: string; first: number; last: number }) =>
    heads.some((head) => head.station === station && head.first <= last && lastOf(head) >= first);
  const byLink = new Map<Link, Entry>();
  const near = {
    runs: runs.filter((run) => touches({ ...run, last: lastOf(run) })),
    entries: entries.filter(({ event: { station, seq } }) => touches({ station, first: seq, last: seq })),
  };
  for (const entry of entriesIn(near)) byLink.set(entry.link, entry);
  const found = new Set<Entry>();
  for (const head of heads) {
    let link = head.link;
    for (let left = head.entries; left > 0; left -= 1) {
      const entry = byLink.get(link);
      if (!entry) return undefined;
      found.add(entry);
      link = entry.prev;
    }
  }
  return [...found];
}
