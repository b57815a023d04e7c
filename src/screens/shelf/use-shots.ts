import { useEffect, useState } from 'preact/hooks';
import { variantShots } from '../../app/variant-shots.ts';
import type { VariantId } from '../../domain/log/ids.ts';
import type { Shot } from '../../domain/rollup/photos.ts';
import { countOf } from '../../domain/shop/counter.ts';
import { useSession, useShop } from '../parts/app-context.ts';

export type Shots =
  | { readonly kind: 'looking' | 'failed' }
  | { readonly kind: 'found'; readonly of: ReadonlyMap<VariantId, readonly Shot[]> };

/** The photos of some variants, looked for anew when one of them has more or fewer than before. */
export function useShots(variants: readonly VariantId[]): Shots {
  const session = useSession();
  const { pictured } = useShop();
  const asked = variants.map((variant) => `${variant} ${countOf(pictured, variant)}`).join();
  const [shots, setShots] = useState<Shots>({ kind: 'looking' });
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is asked for stands for the variants
  useEffect(() => {
    let current = true;
    const reading = variants.map(async (variant) => [variant, await variantShots(session, variant)] as const);
    Promise.all(reading).then(
      (all) => current && setShots({ kind: 'found', of: new Map(all) }),
      () => current && setShots({ kind: 'failed' }),
    );
    return () => {
      current = false;
    };
  }, [session, asked]);
  // Until what is asked for now has been looked for, nothing is said of it.
  const isWhole = shots.kind !== 'found' || variants.every((variant) => shots.of.has(variant));
  return isWhole ? shots : { kind: 'looking' };
}
