import type { PartId, StageId } from '../../log/ids.ts';
import type { Grade } from '../../log/place.ts';

/** Money, in minor units of the shop's currency (cents, pence), or what is missing to know it. */
export type Amount =
  | { readonly kind: 'known'; readonly money: number }
  | { readonly kind: 'not-known'; readonly missing: readonly Missing[] };

/** Something that nobody has said yet. */
export type Missing =
  | { readonly what: 'unit-cost'; readonly part: PartId }
  /** What a piece takes at a stage. */
  | { readonly what: 'minutes'; readonly stage: StageId }
  /** What an hour of the maker is worth. */
  | { readonly what: 'hourly-rate' }
  | { readonly what: 'price'; readonly grade: Grade };

/** A known amount; RangeError where that is no number. */
export function known(money: number): Amount {
  if (!Number.isFinite(money)) throw new RangeError(`Not an amount of money: ${money}`);
  return { kind: 'known', money };
}

export const notKnown = (...missing: readonly Missing[]): Amount => ({ kind: 'not-known', missing });

/** The sum, not rounded; where one is not known, all that is missing, each once. */
export function sumOf(amounts: readonly Amount[]): Amount {
  const missing = missingOf(amounts);
  return missing.length > 0 ? notKnown(...missing) : known(knownOf(amounts));
}

/** What is missing in any of them, each once. */
export function missingOf(amounts: readonly Amount[]): readonly Missing[] {
  const all = amounts.flatMap((amount) => (amount.kind === 'known' ? [] : amount.missing));
  return [...new Map(all.map((missing) => [Object.values(missing).join('|'), missing])).values()];
}

/** The sum of those that are known. */
export function knownOf(amounts: readonly Amount[]): number {
  return amounts.reduce((sum, amount) => (amount.kind === 'known' ? sum + amount.money : sum), 0);
}

/** So many times an amount; nothing is known, and nothing is missing, of no pieces. */
export function times(count: number, amount: Amount): Amount {
  if (count === 0) return known(0);
  return amount.kind === 'known' ? known(count * amount.money) : amount;
}
