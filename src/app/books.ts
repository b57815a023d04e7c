import { type ChainFaults, chainFaults } from '../domain/log/chain-faults.ts';
import { differingSums, type SumName } from '../domain/shop/differing-sums.ts';
import { type Shop, shopOf } from '../domain/shop/shop.ts';
import type { LogStore } from '../store/log-store.ts';

/** What a check of the books found. */
export interface BooksReport extends ChainFaults {
  readonly entries: number;
  readonly stations: number;
  /** Records that are not as they were written: set aside, not counted. */
  readonly damaged: number;
  /** Events of a newer version: kept, not counted. */
  readonly newer: number;
  /** Sums on the screen that the log does not amount to. */
  readonly differing: readonly SumName[];
  /** The shop as the log has it. */
  readonly rebuilt: Shop;
}

/** Adds the whole log up anew and compares it with `shown`, which must have taken in all that is stored. */
export async function checkBooks(
  log: Pick<LogStore, 'since' | 'entries'>,
  shown: Shop,
): Promise<BooksReport> {
  const { events, newer, damaged } = await log.since(new Map());
  const entries = await log.entries();
  const rebuilt = shopOf(events);
  return {
    ...chainFaults(entries),
    entries: entries.length,
    stations: new Set(entries.map(({ event }) => event.station)).size,
    damaged: damaged.length,
    newer: newer.length,
    differing: differingSums(shown, rebuilt),
    rebuilt,
  };
}

export function areInOrder({ damaged, differing, gaps, breaks }: BooksReport): boolean {
  return damaged === 0 && differing.length === 0 && gaps.length === 0 && breaks.length === 0;
}
