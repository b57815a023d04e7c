import type { Entry, Link } from '../log/chain.ts';
import type { RunHead } from './packed-run.ts';
import { lastOf, type Stretch, stretchesOf } from './stretch.ts';

/** One of two copies of a log: the heads of what it holds, and a way to open one. */
export interface Copy {
  readonly heads: readonly RunHead[];
  /** The entries of one of the heads; slow for a long run. */
  readonly open: (head: RunHead) => Promise<readonly Entry[]>;
}

/** What only one of two copies holds: heads of which it alone has everything, and single entries of others. */
export interface Only {
  readonly heads: readonly RunHead[];
  readonly entries: readonly Entry[];
}

/** Entries of a stretch that the other copy has too: those with numbers from `first` to `last`. */
interface Common {
  readonly first: number;
  readonly last: number;
}

/**
 * What each of two copies holds that the other does not, whichever way they are cut into runs. A link stands for its entry
 * and for all that its station wrote before it, so that one link in common answers for whole stretches: runs are opened
 * only where the copies part.
 */
export async function differences({ here, there }: { here: Copy; there: Copy }) {
  const [ours, theirs] = [stretchesOf(here.heads), stretchesOf(there.heads)];
  const [linkHere, linkThere] = [linkFinder(here), linkFinder(there)];
  const common = new Map<Stretch, Common[]>();
  const note = (stretch: Stretch, part: Common) =>
    common.set(stretch, [...(common.get(stretch) ?? []), part]);
  for (const our of ours)
    for (const their of theirs) {
      if (their.station !== our.station) continue;
      const first = Math.max(our.first, their.first);
      const last = await lastCommon({
        first,
        last: Math.min(our.last, their.last),
        isSame: async (seq) => (await linkHere(our, seq)) === (await linkThere(their, seq)),
      });
      if (last < first) continue;
      note(our, { first, last });
      note(their, { first, last });
    }
  const only = (copy: Copy, stretches: readonly Stretch[]) => without(copy, { stretches, common });
  return { here: await only(here, ours), there: await only(there, theirs) };
}

/** The last number at which both are the same, or one before the first: what came before a common link is common too. */
async function lastCommon({
  first,
  last,
  isSame,
}: Common & { isSame: (seq: number) => Promise<boolean> }): Promise<number> {
  if (first > last || (await isSame(last))) return last;
  let [same, other] = [first - 1, last];
  while (other - same > 1) {
    const middle = Math.floor((same + other) / 2);
    if (await isSame(middle)) same = middle;
    else other = middle;
  }
  return same;
}

/** Finds links inside of runs; it remembers those of the run that it opened last. */
function linkFinder({ open }: Copy): (stretch: Stretch, seq: number) => Promise<Link | undefined> {
  let opened: { head: RunHead; links: readonly Link[] } | undefined;
  return async ({ heads }, seq) => {
    const head = heads[headWith(heads, seq)];
    if (!head || lastOf(head) === seq) return head?.link;
    if (opened?.head !== head) opened = { head, links: (await open(head)).map(({ link }) => link) };
    return opened.links[seq - head.first];
  };
}

/** Where among heads in order the one with this number stands. */
function headWith(heads: readonly RunHead[], seq: number): number {
  let [from, to] = [0, heads.length - 1];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (lastOf(heads[middle] as RunHead) < seq) from = middle + 1;
    else to = middle;
  }
  return from;
}

async function without(
  { open }: Copy,
  { stretches, common }: { stretches: readonly Stretch[]; common: ReadonlyMap<Stretch, readonly Common[]> },
): Promise<Only> {
  const heads: RunHead[] = [];
  const entries: Entry[] = [];
  for (const stretch of stretches) {
    const parts = common.get(stretch) ?? [];
    const isCommon = (seq: number) => parts.some(({ first, last }) => first <= seq && seq <= last);
    for (const head of stretch.heads) {
      const touching = parts.filter(({ first, last }) => first <= lastOf(head) && last >= head.first);
      if (touching.length === 0) heads.push(head);
      else if (!touching.some(({ first, last }) => first <= head.first && last >= lastOf(head)))
        entries.push(...(await open(head)).filter(({ event }) => !isCommon(event.seq)));
    }
  }
  return { heads, entries };
}
