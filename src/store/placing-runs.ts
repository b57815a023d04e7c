import { type Link, noLink } from '../domain/log/chain.ts';
import type { EventId } from '../domain/log/version-vector.ts';
import type { PackedRun } from '../domain/packed/packed-run.ts';
import type { HeldEntry } from './placing.ts';
import { isSoundRecord } from './reading.ts';
import { type RunRecord, runRecordOf } from './run-record.ts';
import { type SealedLookup, sealedLookup } from './sealed-lookup.ts';

/** What a store holds, as far as runs that come in must know. */
interface Store {
  readonly sealed: SealedLookup;
  readonly youngAt: (id: EventId) => Promise<HeldEntry | undefined>;
  /** How many young records lie in a stretch of numbers. */
  readonly youngIn: (stretch: { station: string; first: number; last: number }) => Promise<number>;
}

export interface PlacedRuns {
  /** Runs that touch nothing that is held: they are added as they are. */
  readonly whole: readonly PackedRun[];
  /** Runs that are held, but damaged there: they take the place of those. */
  readonly mended: readonly { readonly damaged: RunRecord; readonly by: PackedRun }[];
  /** Entries of runs that are held just so. */
  readonly here: number;
  /** Runs whose entries must be looked at one by one. */
  readonly loose: readonly PackedRun[];
  /** What of them is added as a whole is held from now on. */
  readonly held: SealedLookup['held'];
}

/**
 * Finds the place of runs that come in, each as a whole where that can be. A run that follows another one comes after it
 * here too, by number.
 */
export async function placeRuns(incoming: readonly PackedRun[], store: Store): Promise<PlacedRuns> {
  const whole = new Map<RunRecord, PackedRun>();
  const mended: PlacedRuns['mended'][number][] = [];
  const loose: PackedRun[] = [];
  /** The last links of those: whether they lie on a branch is not known yet, and what follows them goes where they go. */
  const looseEnds = new Set<Link>();
  let here = 0;
  let fresh = sealedLookup([], async () => undefined);

  const linkAt = async (id: EventId) =>
    (await fresh.held(id)) ?? (await store.youngAt(id)) ?? (await store.sealed.held(id));

  /** Nothing of it is held, and what is held before and after it follows on. */
  async function isClear(run: PackedRun): Promise<boolean> {
    const { station, first, entries, prev, link } = run;
    const stretch = { station, first, last: first + entries - 1 };
    if (store.sealed.runIn(stretch) || fresh.runIn(stretch) || (await store.youngIn(stretch)) > 0)
      return false;
    const after = store.sealed.runWith({ station, seq: stretch.last + 1 });
    if (
      after
        ? after.run.prev !== link
        : (await store.youngAt({ station, seq: stretch.last + 1 })) !== undefined
    )
      return false;
    if (first === 1) return prev === noLink;
    const before = await linkAt({ station, seq: first - 1 });
    return before === undefined ? !looseEnds.has(prev) : before.isSound && before.link === prev;
  }

  /** The store has all of it, in whatever runs and records: one link in common answers for all that it follows on from. */
  async function isHere({ station, first, entries, link }: PackedRun): Promise<boolean> {
    const last = first + entries - 1;
    const held = await linkAt({ station, seq: last });
    if (!held?.isSound || held.link !== link) return false;
    let wanted = link;
    for (let seq = last; seq >= first; ) {
      const sealed = store.sealed.runWith({ station, seq });
      const young = sealed ? undefined : (await store.youngAt({ station, seq }))?.record;
      const found = sealed?.run ?? (young && isSoundRecord(young) ? young : undefined);
      // The first one looked at may go on behind the last entry, whose link was found in it.
      if (!found || (seq < last && found.link !== wanted)) return false;
      if (sealed && !(await store.sealed.open(sealed))) return false;
      wanted = found.prev;
      seq = (sealed?.seq ?? seq) - 1;
    }
    return true;
  }

  for (const run of incoming.toSorted((a, b) => a.first - b.first)) {
    const same = store.sealed.runWith({ station: run.station, seq: run.first });
    if (same && isSame(same, run)) {
      if (await store.sealed.open(same)) here += run.entries;
      else mended.push({ damaged: same, by: run });
    } else if (await isClear(run)) {
      whole.set(runRecordOf(run), run);
      fresh = sealedLookup([...whole.keys()], async (record) => whole.get(record));
    } else if (await isHere(run)) here += run.entries;
    else {
      loose.push(run);
      looseEnds.add(run.link);
    }
  }
  return { whole: [...whole.values()], mended, here, loose, held: fresh.held };
}

function isSame({ run }: RunRecord, { first, entries, link }: PackedRun): boolean {
  return run.first === first && run.entries === entries && run.link === link;
}
