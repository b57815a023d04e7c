import type { Counter } from '../shop/counter.ts';
import { type Flaws, flaws } from '../shop/flaws.ts';
import { type Ledger, ledger } from '../shop/ledger.ts';
import { type PartsUsed, partsUsed } from '../shop/parts-used.ts';
import type { SummedEvent } from '../shop/projection.ts';
import { type Stores, stores } from '../shop/stores.ts';
import { type Visits, visits } from '../shop/visits.ts';

/** Sums that look at no more of an event than what it has in common with many others: its shape, wood and variant. */
export interface LogTables {
  readonly ledger: Ledger;
  readonly visits: Visits;
  readonly flaws: Pick<Flaws, 'byReason' | 'byOutcome'>;
  readonly partsUsed: PartsUsed;
  readonly stores: Stores;
}

export function emptyTables(): LogTables {
  const { byReason, byOutcome } = flaws.empty();
  return {
    ledger: ledger.empty(),
    visits: visits.empty(),
    flaws: { byReason, byOutcome },
    partsUsed: partsUsed.empty(),
    stores: stores.empty(),
  };
}

export function addToTables(tables: LogTables, entry: { event: SummedEvent; times: number }): void {
  ledger.add(tables.ledger, entry);
  visits.add(tables.visits, entry);
  flaws.add({ ...flaws.empty(), ...tables.flaws }, entry);
  partsUsed.add(tables.partsUsed, entry);
  stores.add(tables.stores, entry);
}

/** Every counter of the tables, always in the same order. */
export function countersOf(tables: LogTables) {
  const { ledger: pieces, visits: seen, flaws: bad } = tables;
  const { made, corrected, wip, finished, scrapped } = pieces;
  const { first, clean, repeat } = seen;
  const all = [
    made,
    corrected,
    wip,
    finished,
    scrapped,
    first,
    clean,
    repeat,
    bad.byReason,
    bad.byOutcome,
    tables.partsUsed,
    tables.stores,
  ];
  return all as readonly Counter[];
}
