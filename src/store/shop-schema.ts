import type { DBSchema, IDBPDatabase, IDBPTransaction } from 'idb';
import type { EventRecord } from './event-record.ts';
import type { Pack } from './pack.ts';
import type { RunRecord } from './run-record.ts';

/** The layout of the database; additive changes only, no store is ever dropped. */
export interface ShopSchema extends DBSchema {
  events: {
    key: [string, number];
    value: EventRecord;
    indexes: { byTray: string; byAct: string };
  };
  /** The own station's head, under 'head'. */
  heads: { key: string; value: unknown };
  /** The projections as of some moment: 'edition', 'shop', and pages by name. A cache: it may be missing at any time. */
  snapshots: { key: string; value: unknown };
  /** Sealed runs: what was once in `events`, packed; `packs` has the runs themselves, under the same keys. */
  runs: { key: [string, number]; value: RunRecord };
  packs: { key: [string, number]; value: Pack };
  /** Damaged records and packs whose place a sound one has taken. */
  aside: { key: number; value: unknown };
  /** Empty but for a moment: see `freshen`. */
  filler: { key: number; value: Uint8Array };
}

export type ShopDatabase = IDBPDatabase<ShopSchema>;
/** The transaction that changes the layout. */
export type LayoutChange = IDBPTransaction<
  ShopSchema,
  ('events' | 'runs' | 'packs' | 'heads' | 'snapshots' | 'aside' | 'filler')[],
  'versionchange'
>;
