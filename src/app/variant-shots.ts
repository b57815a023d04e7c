import type { VariantId } from '../domain/log/ids.ts';
import { type Shot, shotsOfVariant } from '../domain/rollup/photos.ts';
import { countOf } from '../domain/shop/counter.ts';
import type { Session } from './session.ts';

/** Trays whose histories are read for photos: the newest. A shop of years has hundreds of a variant. */
const mostTrays = 40;

/** The photos that show a variant as it is, those of pieces on old trays left out. Rejects when the log cannot be read. */
export async function variantShots(
  { view, historyOf }: Pick<Session, 'view' | 'historyOf'>,
  variant: VariantId,
): Promise<readonly Shot[]> {
  const { shop } = view.peek();
  const told = countOf(shop.pictured, variant);
  if (told <= 0) return [];
  const its = { variant, voids: shop.voids };
  const own = await historyOf(`variant/${variant}`);
  const found = shotsOfVariant(own, its);
  if (found.length >= told) return found;
  const trays = [...shop.trays.values()]
    .filter((tray) => tray.variant === variant)
    .toSorted((a, b) => b.made - a.made)
    .slice(0, mostTrays);
  const ofTrays = await Promise.all(trays.map(({ tray }) => historyOf(tray)));
  return shotsOfVariant([...own, ...ofTrays.flat()], its);
}
