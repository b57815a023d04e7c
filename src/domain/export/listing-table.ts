import type { ShopEvent } from '../log/event.ts';
import type { BatchId, VariantId } from '../log/ids.ts';
import { keyOf } from '../log/key.ts';
import { blemishesOf, type Kind, shelfStock, usualPrice } from '../rollup/shelf-stock.ts';
import { addTo, type Counter } from '../shop/counter.ts';
import { factOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';
import type { ListingColumn } from './listing-columns.ts';
import { type Cell, majorUnits, type Naming, type Table } from './table.ts';

/** A line of a listing sheet: pieces of one kind that are for sale. */
export interface ListingLine extends Kind {
  readonly pieces: number;
}

/** All that is listed now. */
export function linesListedNow(shop: Shop): readonly ListingLine[] {
  return shelfStock(shop)
    .filter(({ at }) => at.listed > 0)
    .map(({ variant, grade, at }) => ({ variant, grade, pieces: at.listed }));
}

/** What events have listed, a line a kind; in the order of the shelf. */
export function linesListedBy(shop: Shop, events: readonly ShopEvent[]): readonly ListingLine[] {
  const listed: Counter = new Map();
  for (const event of events) {
    if (event.kind !== 'shelf-moved' || event.to !== 'listed') continue;
    addTo(listed, { key: keyOf(event.variant, event.grade), by: event.pieces });
  }
  return shelfStock(shop).flatMap(({ variant, grade }) => {
    const pieces = listed.get(keyOf(variant, grade)) ?? 0;
    return pieces > 0 ? [{ variant, grade, pieces }] : [];
  });
}

export interface ListingSheet {
  readonly lines: readonly ListingLine[];
  /** In the maker's own order. */
  readonly columns: readonly ListingColumn[];
  /** Names of the files with photos of a variant. */
  readonly filesOf: (variant: VariantId) => readonly string[];
  readonly nameOf: Naming;
}

/** The listing sheet as a table. Prices are the usual ones, in major units; blemishes are of seconds, the most frequent first. */
export function listingTable(
  shop: Shop,
  { lines, columns, filesOf, nameOf }: ListingSheet,
): Table<ListingColumn> {
  const batches = batchesOf(shop);
  const cell = (line: ListingLine, column: ListingColumn): Cell => {
    const { variant, grade, pieces } = line;
    const fact = factOf(shop.registers, { register: 'variant', id: variant });
    switch (column) {
      case 'name':
        return nameOf({ register: 'variant', id: variant });
      case 'species':
        return fact ? nameOf({ register: 'species', id: fact.species }) : null;
      case 'ferrule':
        return fact?.ferrule ? nameOf({ register: 'part', id: fact.ferrule }) : null;
      case 'grade':
        return grade;
      case 'pieces':
        return pieces;
      case 'price':
        return majorUnits(usualPrice(shop, line));
      case 'blemishes':
        return grade === 'first'
          ? null
          : joined(
              blemishesOf(shop, variant).map(({ reason }) => nameOf({ register: 'reason', id: reason })),
            );
      case 'photo-files':
        return joined(filesOf(variant));
      case 'batch':
        return joined(
          [...(batches.get(keyOf(variant, grade)) ?? [])].map((id) => nameOf({ register: 'batch', id })),
        );
    }
  };
  return { columns, rows: lines.map((line) => columns.map((column) => cell(line, column))) };
}

/** Nothing, rather than an empty text. */
function joined(names: readonly string[]): string | null {
  return names.join('; ') || null;
}

/** The batches that finished pieces of each kind came from. */
function batchesOf({ positions, trays }: Shop): ReadonlyMap<string, ReadonlySet<BatchId>> {
  const batches = new Map<string, Set<BatchId>>();
  for (const trayPlaces of [positions.working, positions.settled]) {
    for (const [tray, places] of trayPlaces) {
      const record = trays.get(tray);
      if (!record) continue;
      for (const { place, pieces } of places.values()) {
        if (place.at !== 'finished' || pieces <= 0) continue;
        const key = keyOf(record.variant, place.grade);
        batches.set(key, (batches.get(key) ?? new Set()).add(record.batch));
      }
    }
  }
  return batches;
}
