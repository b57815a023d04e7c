import type { Link } from '../domain/log/chain.ts';
import type { RunHead } from '../domain/packed/packed-run.ts';
import type { LogStore, Merged, ReadParcel } from '../store/log-store.ts';
import type { Pack } from '../store/pack.ts';
import type { Placed } from './exchange.ts';
import type { KnownEnds } from './known-ends.ts';
import type { Ledger } from './ledger.ts';
import type { MessageDesk, Said } from './message.ts';
import type { SetAside } from './replica-status.ts';

export interface IntakeParts {
  readonly store: Pick<LogStore, 'merge'>;
  readonly desk: MessageDesk;
  /** What the tablet is known to hold. */
  readonly held: KnownEnds;
  readonly now: () => number;
  readonly setAside: (message: SetAside) => void;
  readonly onMerged: (merged: Merged) => void;
  /** The body of a message was of no use, and the tablet lacks what its head promises. */
  readonly onWanted: (head: RunHead) => void;
}

/** Takes messages in: it notes what each says, opens what the tablet lacks, and gives that to the store in one merge. */
export function intake({ store, desk, held, now, setAside, onMerged, onWanted }: IntakeParts) {
  /** What the head says; null for a message that was set aside. */
  async function note(placed: Placed, ledger: Ledger): Promise<Said | null> {
    const { at, seat } = placed;
    const read = await desk.openHead(placed);
    const said = read.kind === 'opened' ? read.what : null;
    const isNew = ledger.note(placed, said);
    if (read.kind === 'aside') setAside({ at, seat, reason: read.reason, problem: read.problem });
    else if (!isNew) {
      setAside({ at, seat, reason: 'repeated', problem: 'the same message stands elsewhere' });
      return null;
    }
    return said;
  }

  /** What the message at a place brings; undefined when it is of no use, which is then told. */
  async function open(placed: Placed, { head, ledger }: { head: RunHead; ledger: Ledger }) {
    const read = await desk.openBody(placed, head);
    if (read.kind === 'opened') return read.what;
    const { at, seat } = placed;
    setAside({ at, seat, reason: read.reason, problem: read.problem });
    ledger.strike(at);
    onWanted(head);
    return undefined;
  }

  async function merge(parcels: readonly ReadParcel[]): Promise<Merged> {
    const packs = new Map<Link, Pack>(parcels.flatMap((parcel) => [...(parcel.packs ?? [])]));
    const merged = await store.merge({
      runs: parcels.flatMap(({ runs }) => runs),
      entries: parcels.flatMap(({ entries }) => entries),
      packs,
      now: now(),
    });
    onMerged(merged);
    return merged;
  }

  return {
    note,
    open,
    merge,
    /** Takes in messages with their bodies. */
    async take(batch: readonly Placed[], ledger: Ledger): Promise<void> {
      const heads: RunHead[] = [];
      const parcels: ReadParcel[] = [];
      for (const placed of batch) {
        const said = await note(placed, ledger);
        if (said?.kind !== 'log1' && said?.kind !== 'pack1') continue;
        if (held.has(said.head) || !ledger.at(placed.at)?.brings) continue;
        const parcel = await open(placed, { head: said.head, ledger });
        if (!parcel) continue;
        heads.push(said.head);
        parcels.push(parcel);
      }
      if (parcels.length === 0) return;
      const { unplaced } = await merge(parcels);
      if (unplaced === 0) for (const head of heads) held.add(head);
    },
  };
}

export type Intake = ReturnType<typeof intake>;
