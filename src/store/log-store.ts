import type { Draft, ShopEvent } from '../domain/log/event.ts';
import type { StationId, TrayId } from '../domain/log/ids.ts';
import type { NewerEvent } from '../domain/log/read-event.ts';
import type { VersionVector } from '../domain/log/version-vector.ts';

/** What one tap amounts to. `act` names the tap: appending it again adds nothing and returns what is there. */
export interface Act {
  readonly act: string;
  readonly drafts: readonly Draft[];
  /** The tablet's clock, ms UTC. */
  readonly now: number;
}

export type LogEntry = ShopEvent | NewerEvent;

/** A record that no schema fits: kept where it is, counted, reported, never deleted. */
interface Damaged {
  readonly raw: unknown;
  readonly problems: readonly string[];
}

export interface Reading {
  readonly events: readonly ShopEvent[];
  readonly newer: readonly NewerEvent[];
  readonly damaged: readonly Damaged[];
}

/** A snapshot of the projections: plain data of the given format, whose shape its reader must judge. */
export interface Snapshot {
  readonly format: number;
  readonly shop: unknown;
}

/**
 * Keeps the log, in IndexedDB or elsewhere, and never judges it. Every promise rejects when the store cannot
 * do what was asked; a resolved `append` or `merge` is on disk as far as the platform can be asked for it.
 */
export interface LogStore {
  readonly station: StationId;
  /** Numbers and stamps the drafts of one tap and keeps them in one strict transaction. */
  append(act: Act): Promise<readonly ShopEvent[]>;
  /** Adds events of any station; those already held are left as they are. Returns what was added. */
  merge(incoming: {
    readonly entries: readonly LogEntry[];
    readonly now: number;
  }): Promise<readonly LogEntry[]>;
  /** All events that the version vector has not seen. */
  since(seen: VersionVector): Promise<Reading>;
  ofTray(tray: TrayId): Promise<Reading>;
  /** The last `count` events of the own station, the newest last. */
  latestOwn(count: number): Promise<Reading>;
  loadSnapshot(): Promise<Snapshot | undefined>;
  saveSnapshot(snapshot: Snapshot): Promise<void>;
  close(): void;
}
