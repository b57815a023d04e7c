import { type Amount, known, knownOf, type Missing, missingOf, notKnown, sumOf } from './amount.ts';
import { roundTogether } from './round-together.ts';
import { labourCost, type PartUse, partsCost, type StageWork } from './work-cost.ts';

/** What a variant came to over some time or a batch; pieces still in flight, and what is in them, stand elsewhere. */
export interface VariantWork {
  /** Pieces that were finished. */
  readonly firsts: number;
  readonly seconds: number;
  /** What went into those. */
  readonly parts: readonly PartUse[];
  readonly consumables: readonly PartUse[];
  readonly labour: readonly StageWork[];
  /** What went into pieces that were scrapped, less the parts that were saved. */
  readonly scrapped: {
    readonly parts: readonly PartUse[];
    readonly labour: readonly StageWork[];
  };
  /** Minor units; null while nobody has said. */
  readonly firstPrice: number | null;
  readonly secondPrice: number | null;
}

/** Minor units. `whole` is the sum of the others, to the unit. */
interface CostLines {
  readonly parts: number;
  readonly labour: number;
  readonly consumables: number;
  /** Scrap absorbed: what was lost in pieces that did not come out, borne by those that did. */
  readonly scrap: number;
  /** What seconds bring in less than firsts would. */
  readonly markdown: number;
  readonly whole: number;
}

export type VariantCost =
  /** `perGood` is for one good piece, a first or a second; all lines are whole minor units. */
  | { readonly kind: 'known'; readonly good: number; readonly all: CostLines; readonly perGood: CostLines }
  /** `atLeast` is what is known of the cost of all, in whole minor units. */
  | { readonly kind: 'not-known'; readonly missing: readonly Missing[]; readonly atLeast: number }
  /** None was finished, so that nothing bears what was spent. */
  | { readonly kind: 'none-good'; readonly all: CostLines };

const lines = ['parts', 'labour', 'consumables', 'scrap', 'markdown'] as const;

/**
 * What a good piece of a variant costs. The cost of all is rounded once, and its lines so that they add up to it; the same
 * is then done for one good piece, from the sums that were not rounded.
 *
 * firsts × first price + seconds × second price − what was spent = good × (first price − cost per good piece): so the cost
 * can be held against the price of a first (see `priceCheck`).
 *
 * @throws {RangeError} for counts, costs or times that are no numbers
 * @example
 * variantCost(
 *   { firsts: 8, seconds: 2, parts: [{ part: core, pieces: 10, unitCost: 300 }], consumables: [],
 *     labour: [{ stage: turn, visits: 10, minutes: 6 }],
 *     scrapped: { parts: [], labour: [{ stage: turn, visits: 2, minutes: 6 }] }, firstPrice: 4500, secondPrice: 3000 },
 *   { hourlyRate: 3000 },
 * ) // perGood: parts 300, labour 300, scrap 60, markdown 300: whole 960
 */
export function variantCost(
  work: VariantWork,
  { hourlyRate }: { readonly hourlyRate: number | null },
): VariantCost {
  const amounts: Record<(typeof lines)[number], Amount> = {
    parts: partsCost(work.parts),
    labour: labourCost(work.labour, hourlyRate),
    consumables: partsCost(work.consumables),
    scrap: sumOf([partsCost(work.scrapped.parts), labourCost(work.scrapped.labour, hourlyRate)]),
    markdown: markdownOf(work),
  };
  const inOrder = lines.map((line) => amounts[line]);
  const missing = missingOf(inOrder);
  if (missing.length > 0) return { kind: 'not-known', missing, atLeast: Math.round(knownOf(inOrder)) };
  const sums = inOrder.map((amount) => knownOf([amount]));
  const good = work.firsts + work.seconds;
  const all = linesOf(sums);
  if (good === 0) return { kind: 'none-good', all };
  return { kind: 'known', good, all, perGood: linesOf(sums.map((sum) => sum / good)) };
}

function markdownOf({ seconds, firstPrice, secondPrice }: VariantWork): Amount {
  if (seconds === 0) return known(0);
  if (firstPrice === null || secondPrice === null) {
    const missing: Missing[] = [];
    if (firstPrice === null) missing.push({ what: 'price', grade: 'first' });
    if (secondPrice === null) missing.push({ what: 'price', grade: 'second' });
    return notKnown(...missing);
  }
  return known(seconds * (firstPrice - secondPrice));
}

function linesOf(sums: readonly number[]): CostLines {
  const { whole, parts: rounded } = roundTogether(sums);
  const [parts = 0, labour = 0, consumables = 0, scrap = 0, markdown = 0] = rounded;
  return { parts, labour, consumables, scrap, markdown, whole };
}
