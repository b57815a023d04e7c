import type { ShopFact, VariantFact } from './facts.ts';

/** What the sheet for the box says in the maker's words; an empty text says nothing. */
export type BoxTexts = NonNullable<ShopFact['box']>;

export const noBoxTexts: BoxTexts = { finish: '', care: '', caution: '' };

/** What the sheet of a variant says: its own texts, the shop's where it has none. Null where the variant has no sheet. */
export function boxTextsOf(
  shop: Pick<ShopFact, 'box'> | undefined,
  variant: Pick<VariantFact, 'box'> | undefined,
): BoxTexts | null {
  const [own, usual] = [variant?.box, shop?.box ?? noBoxTexts];
  if (!own) return usual;
  if (!own.printed) return null;
  return {
    finish: own.finish || usual.finish,
    care: own.care || usual.care,
    caution: own.caution || usual.caution,
  };
}
