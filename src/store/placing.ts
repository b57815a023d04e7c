import { type Branch, branchAt } from '../domain/log/branch.ts';
import { type Entry, type Link, noLink } from '../domain/log/chain.ts';
import { type EventId, eventKey } from '../domain/log/version-vector.ts';
import { type EventRecord, recordOf } from './event-record.ts';
import { isSoundRecord } from './reading.ts';

/** What a merge must write. */
export interface Placing {
  readonly added: readonly EventRecord[];
  /** Damaged records and the sound ones that take their place; a damaged run has no record of its own. */
  readonly mended: readonly { readonly damaged: EventRecord | undefined; readonly by: EventRecord }[];
  readonly here: number;
  readonly unplaced: number;
}

/** A store, as far as entries that come in must know it. */
interface Store {
  readonly held: (id: EventId) => Promise<HeldEntry | undefined>;
  /** The branches of which it holds an entry at least. Asked for only when an entry is found no other place. */
  readonly branches: () => Promise<readonly Branch[]>;
}

/** What a store holds under an identity. */
export interface HeldEntry {
  readonly link: Link;
  readonly isSound: boolean;
  readonly record: EventRecord | undefined;
}

export function heldAs(record: EventRecord): HeldEntry {
  return { link: record.link, isSound: isSoundRecord(record), record };
}

/**
 * Finds the place of each entry that comes in beside what a store holds. An entry that is not held goes to its own
 * identity. One that tells another story than the entry held there lies on a branch, from the first that differs on.
 */
export async function placeEntries(incoming: readonly Entry[], store: Store): Promise<Placing> {
  const fresh = new Map<string, EventRecord>();
  const mended = new Map<string, Placing['mended'][number]>();
  /** The branch that the entry with this link lies on. */
  const branches = new Map<Link, Branch>();
  let here = 0;
  const unplaced = new Set<Link>();
  async function at(id: EventId): Promise<HeldEntry | undefined> {
    const record = fresh.get(eventKey(id)) ?? mended.get(eventKey(id))?.by;
    return record ? { link: record.link, isSound: true, record } : store.held(id);
  }

  async function put(record: EventRecord): Promise<void> {
    const there = await at(record);
    if (!there) fresh.set(eventKey(record), record);
    else if (there.isSound) here += 1;
    else mended.set(eventKey(record), { damaged: there.record, by: record });
  }

  async function followsOn({ prev, event: { station, seq } }: Entry): Promise<boolean> {
    if (seq === 1) return prev === noLink;
    if (unplaced.has(prev)) return false;
    const before = await at({ station, seq: seq - 1 });
    // A gap before it may be filled later; until then nothing speaks against it.
    return !before || before.link === prev || !before.isSound;
  }

  let known: readonly Branch[] | undefined;
  /** The branch on which the one before this entry lies, when it came in at another time. */
  async function branchBefore({ prev, event: { station, seq } }: Entry): Promise<Branch | undefined> {
    known ??= await store.branches();
    for (const branch of known) {
      if (branch.of !== station || seq - 1 <= branch.after) continue;
      const before = await store.held({ station: branch.station, seq: seq - 1 - branch.after });
      if (before?.isSound && before.link === prev) return branch;
    }
    return undefined;
  }

  for (const entry of [...incoming].sort((a, b) => a.event.seq - b.event.seq)) {
    let branch = branches.get(entry.prev);
    if (!branch) {
      const there = await at(entry.event);
      if (there?.link !== entry.link) {
        if (await followsOn(entry)) {
          if (there?.isSound) branch = branchAt(entry);
        } else {
          branch = unplaced.has(entry.prev) ? undefined : await branchBefore(entry);
          if (!branch) {
            unplaced.add(entry.link);
            continue;
          }
        }
      }
    }
    if (branch) branches.set(entry.link, branch);
    await put(recordOf(entry, branch ? { branch } : {}));
  }
  return { added: [...fresh.values()], mended: [...mended.values()], here, unplaced: unplaced.size };
}
