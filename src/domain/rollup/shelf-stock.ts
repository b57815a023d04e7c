import type { ReasonId, VariantId } from '../log/ids.ts';
import type { Grade } from '../log/place.ts';
import { type ShelfPlace, shelfPlaces } from '../log/shelf-facts.ts';
import { countOf } from '../shop/counter.ts';
import { byName, type Entry, factOf, factsOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';

/** Pieces that a customer tells apart: of one variant and one grade. */
export interface Kind {
  readonly variant: VariantId;
  readonly grade: Grade;
}

/** Finished pieces of a kind: `finished` is the sum of all places. */
export interface ShelfRow extends Kind {
  readonly finished: number;
  readonly at: Readonly<Record<ShelfPlace, number>>;
}

const grades: readonly Grade[] = ['first', 'second'];

/** Every variant and grade of which pieces were finished, or moved though none is known of, by name; firsts before seconds. */
export function shelfStock(shop: Shop): readonly ShelfRow[] {
  return variantsOf(shop).flatMap(({ id }) =>
    grades.map((grade) => shelfRow(shop, { variant: id, grade })).filter(hasAny),
  );
}

export function shelfRow({ ledger, shelf }: Shop, { variant, grade }: Kind): ShelfRow {
  let finished = 0;
  for (const [key, pieces] of ledger.finished) {
    if (key.endsWith(`|${variant}|${grade}`)) finished += pieces;
  }
  const moved = (place: ShelfPlace) => countOf(shelf.moved, `${variant}|${grade}|${place}`);
  const at = Object.fromEntries(
    shelfPlaces.map((place) => [place, moved(place) + (place === 'shelf' ? finished : 0)]),
  ) as Record<ShelfPlace, number>;
  return { variant, grade, finished, at };
}

function variantsOf({ registers }: Shop): readonly Entry<'variant'>[] {
  return factsOf(registers, 'variant').toSorted((a, b) => byName(a.fact, b.fact));
}

function hasAny({ finished, at }: ShelfRow): boolean {
  return finished !== 0 || shelfPlaces.some((place) => at[place] !== 0);
}

/** What is to be seen on seconds of a variant, and on how many; the most frequent first. */
export function blemishesOf(
  { shelf }: Shop,
  variant: VariantId,
): readonly { readonly reason: ReasonId; readonly pieces: number }[] {
  return [...shelf.blemishes]
    .filter(([key, pieces]) => key.startsWith(`${variant}|`) && pieces > 0)
    .map(([key, pieces]) => ({ reason: key.slice(variant.length + 1) as ReasonId, pieces }))
    .sort((a, b) => b.pieces - a.pieces);
}

/** What was sold: pieces, how many of them at a price that is known, and what those brought, in minor units. */
export interface Sales {
  readonly sold: number;
  readonly priced: number;
  readonly takings: number;
}

export function salesOf({ shelf }: Shop, rows: readonly ShelfRow[]): Sales {
  const sum = (of: (row: ShelfRow) => number) => rows.reduce((all, row) => all + of(row), 0);
  return {
    sold: sum(({ at }) => at.sold),
    priced: sum(({ variant, grade }) => countOf(shelf.priced, `${variant}|${grade}`)),
    takings: sum(({ variant, grade }) => countOf(shelf.takings, `${variant}|${grade}`)),
  };
}

/** What a first or a second of a variant usually costs, in minor units; null is not known. */
export function usualPrice({ registers }: Shop, { variant, grade }: Kind): number | null {
  const fact = factOf(registers, { register: 'variant', id: variant });
  return (grade === 'first' ? fact?.firstPrice : fact?.secondPrice) ?? null;
}
