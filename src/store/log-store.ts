import type { Entry, Link } from '../domain/log/chain.ts';
import type { Draft, ShopEvent } from '../domain/log/event.ts';
import type { Holding } from '../domain/log/holding.ts';
import type { StationId } from '../domain/log/ids.ts';
import type { NewerEvent } from '../domain/log/read-event.ts';
import type { EventId, VersionVector } from '../domain/log/version-vector.ts';
import type { Parcel } from '../domain/packed/parcel.ts';
import type { Subject } from './event-record.ts';
import type { Pack } from './pack.ts';

/** What one tap amounts to. `act` names the tap: appending it again adds nothing and returns what is there. */
export interface Act {
  readonly act: string;
  readonly drafts: readonly Draft[];
  /** The tablet's clock, ms UTC. */
  readonly now: number;
  /** It was given to the store before this page was opened, or long ago: it is looked for in all that is stored. */
  readonly tried?: true;
}

/** A record that no schema fits or that is not as it was written: kept where it is, reported, never deleted. */
export interface Damaged {
  readonly raw: unknown;
  readonly problems: readonly string[];
}

export interface Reading {
  readonly events: readonly ShopEvent[];
  readonly newer: readonly NewerEvent[];
  readonly damaged: readonly Damaged[];
}

/** What was read of a file. */
export interface ReadParcel extends Parcel {
  /** Runs as a store keeps them, by the links that they end in: such a one need not be packed for it. */
  readonly packs?: ReadonlyMap<Link, Pack>;
}

/** What a log is to take in at `now` (ms UTC); entries and runs may overlap, also what is held. */
export interface Incoming extends Partial<ReadParcel> {
  readonly now: number;
}

/** What came of a merge. */
export interface Merged {
  readonly added: Parcel;
  /** Entries that were held already. */
  readonly here: number;
  /** Sound entries that took the place of damaged records; those were set aside. */
  readonly mended: number;
  /** Entries of a branch whose beginning is not known: they can be taken once it is. */
  readonly unplaced: number;
  /** The own station wrote on elsewhere: this store goes on under a new one. */
  readonly renewed: boolean;
}

/** By the station under which things stand in a store, the highest number up to which something is so. */
export type Numbers = ReadonlyMap<string, number>;

/** An entry with the identity that it has in this store; `isOwn` when it was tapped here. */
export interface KeptEntry {
  readonly id: EventId;
  readonly entry: Entry;
  readonly isOwn: boolean;
}

/** What came into a store lately: single entries in order, and how far runs go in which there are more. */
export interface Latest {
  readonly young: readonly KeptEntry[];
  readonly sealed: Numbers;
}

/** A snapshot of the projections: plain data of the given format, whose shape its reader must judge. */
export interface Snapshot {
  readonly format: number;
  /** Its front, which is read at a start. */
  readonly shop: unknown;
  /** Raised by every save; pages of another edition do not go with this front. */
  readonly edition: number;
  /** How many pages there are beside the front. */
  readonly pages: number;
}

/** A snapshot to be saved. */
export interface SnapshotToSave {
  /** The edition whose other pages still hold, or null when all pages are given. */
  readonly over: number | null;
  /** Called in the transaction, and what it gives is copied at once: the shop may go on changing. */
  readonly make: () => {
    readonly format: number;
    readonly shop: unknown;
    readonly pages: ReadonlyMap<string, unknown>;
  };
}

/**
 * Keeps the log, in IndexedDB or elsewhere, and never judges it. Every promise rejects when the store cannot
 * do what was asked; a resolved `append` or `merge` is on disk as far as the platform can be asked for it.
 */
export interface LogStore {
  /** The station that the next act is written under. */
  readonly station: () => StationId;
  /** Numbers, stamps and chains the drafts of one tap and keeps them in one strict transaction. */
  readonly append: (act: Act) => Promise<readonly Entry<ShopEvent>[]>;
  /**
   * Adds entries of any station, whole or in parts, by their identity; what is held is left as it is. Entries that tell
   * another story under the same identity come from a cloned tablet and are kept as a branch. Once entries of the own
   * station come in from outside, or another tablet writes under it, this store takes a new station.
   */
  readonly merge: (incoming: Incoming) => Promise<Merged>;
  /** All events that the version vector has not seen. */
  readonly since: (seen: VersionVector) => Promise<Reading>;
  /** All events whose history belongs to a tray, or to something of the stores. */
  readonly about: (subject: Subject) => Promise<Reading>;
  /** The last `count` events of the own station, the newest last. */
  readonly latestOwn: (count: number) => Promise<Reading>;
  /** How much the store ought to hold, as it was written with each tap; and how many records there are. */
  readonly holding: () => Promise<{ readonly written: Holding; readonly records: number }>;
  /** The whole log as its stations wrote it, each station's in order; damaged records are left out. */
  readonly entries: () => Promise<readonly Entry[]>;
  /** The same, what is sealed in its runs: quick, however long the log is. */
  readonly parcel: () => Promise<Parcel>;
  /** What stands behind the highest numbers that were seen. */
  readonly latest: (seen: Numbers) => Promise<Latest>;
  readonly loadSnapshot: () => Promise<Snapshot | undefined>;
  /** Gives every page of an edition, one at a time; false, and none, when the snapshot is of another by now. */
  readonly loadPages: (edition: number, take: (page: unknown) => void) => Promise<boolean>;
  /** Resolves with the new edition, or with undefined when another window has saved since `over`: then nothing is changed. */
  readonly saveSnapshot: (snapshot: SnapshotToSave) => Promise<number | undefined>;
  /** Makes the browser begin new files for the store: what it writes after a full disk may not last in the old ones. */
  readonly freshen: () => Promise<void>;
  /** Gives up what hangs, so that the next call starts on a new connection. */
  readonly revive: () => void;
  readonly close: () => void;
}
