import type { Link } from '../../domain/log/chain.ts';
import { emptyHolding, type Holding, joined, without } from '../../domain/log/holding.ts';
import { type Copy, differences } from '../../domain/packed/differences.ts';
import type { RunHead } from '../../domain/packed/packed-run.ts';
import { headOfEntry, lastOf } from '../../domain/packed/stretch.ts';
import type { Contents } from './contents.ts';

/** What the journal holds, each entry once. */
export interface Counted {
  readonly holding: Holding;
  /** Heads of which no two have an entry in common, besides young entries that lie in no run's range. */
  readonly apart: readonly RunHead[];
  /** The young entries whose numbers lie in the range of a run: they may be in it, or on a branch. */
  readonly covered: readonly RunHead[];
}

/** Opens runs only where they overlap and the links at their ends do not tell enough. */
export async function countOnce({ young, holding, runs }: Contents, open: Copy['open']): Promise<Counted> {
  const packed = [...runs].map(({ head }) => head);
  const isCovered = covers(packed);
  const covered = packed.length === 0 ? [] : [...young.values()].map(({ head }) => head).filter(isCovered);
  const apart = await setApart([...packed, ...covered], open);
  return {
    holding: joined(apart.reduce(joined, emptyHolding), covered.reduce(without, holding)),
    apart,
    covered,
  };
}

/** Whether a head lies, in part at least, in the range of one of these. */
function covers(heads: readonly RunHead[]): (head: RunHead) => boolean {
  const byStation = new Map<string, RunHead[]>();
  for (const head of heads) byStation.set(head.station, [...(byStation.get(head.station) ?? []), head]);
  return (head) =>
    (byStation.get(head.station) ?? []).some(
      (other) => other.first <= lastOf(head) && head.first <= lastOf(other),
    );
}

/** The links of those of these entries that lie in runs. */
export async function insideOf(
  { runs }: Pick<Contents, 'runs'>,
  { entries, open }: { entries: readonly RunHead[]; open: Copy['open'] },
): Promise<ReadonlySet<Link>> {
  const packed = [...runs].map(({ head }) => head);
  const covered = entries.filter(covers(packed));
  if (covered.length === 0) return new Set();
  const { here } = await differences({ here: { heads: covered, open }, there: { heads: packed, open } });
  const outside = new Set(here.heads.map(({ link }) => link));
  return new Set(covered.flatMap(({ link }) => (outside.has(link) ? [] : [link])));
}

/** The same entries under heads that have none in common. */
async function setApart(heads: readonly RunHead[], open: Copy['open']): Promise<readonly RunHead[]> {
  const distinct = new Map(heads.map((head) => [`${head.link} ${head.entries}`, head]));
  const [kept, others] = [[] as RunHead[], [] as RunHead[]];
  const keptOf = new Map<string, RunHead[]>();
  for (const head of [...distinct.values()].sort((a, b) => b.entries - a.entries)) {
    const beside = keptOf.get(head.station) ?? [];
    const overlaps = beside.some((other) => other.first <= lastOf(head) && head.first <= lastOf(other));
    (overlaps ? others : kept).push(head);
    if (!overlaps) keptOf.set(head.station, [...beside, head]);
  }
  if (others.length === 0) return kept;
  const { here } = await differences({ here: { heads: others, open }, there: { heads: kept, open } });
  return [...kept, ...(await setApart([...here.heads, ...here.entries.map(headOfEntry)], open))];
}
