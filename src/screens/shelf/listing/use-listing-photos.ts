import { useEffect, useState } from 'preact/hooks';
import type { ListingLine } from '../../../domain/export/listing-table.ts';
import type { PhotoHash } from '../../../domain/log/photo-facts.ts';
import { nameOf } from '../../../words/names.ts';
import { useShop } from '../../parts/app-context.ts';
import { usePhotos } from '../../parts/photos/use-photos.ts';
import { type Shots, useShots } from '../use-shots.ts';
import { type ListingPhotos, listingPhotos, variantsOf } from './listing-view.ts';

export type FoundPhotos =
  | { readonly kind: 'looking' | 'failed' }
  | { readonly kind: 'found'; readonly photos: ListingPhotos };

const nothingHeld: ReadonlySet<PhotoHash> = new Set();

/** The photos that go with the lines of a listing sheet. */
export function useListingPhotos(lines: readonly ListingLine[]): FoundPhotos {
  const { registers } = useShop();
  const shots = useShots(variantsOf(lines));
  const held = useHeld(shots);
  if (shots.kind !== 'found') return { kind: shots.kind };
  if (!held) return { kind: 'looking' };
  const name = (id: (typeof lines)[number]['variant']) => nameOf(registers, { register: 'variant', id });
  return { kind: 'found', photos: listingPhotos(lines, { shots: shots.of, held, nameOf: name }) };
}

/** What photos this tablet has, read anew when others are shown; undefined until it is read. */
function useHeld(shots: Shots): ReadonlySet<PhotoHash> | undefined {
  const photos = usePhotos();
  const [held, setHeld] = useState<ReadonlySet<PhotoHash>>();
  const of = shots.kind === 'found' ? shots.of : undefined;
  useEffect(() => {
    let current = true;
    const show = (hashes: ReadonlySet<PhotoHash>) => current && setHeld(hashes);
    if (!of) return;
    if (!photos) show(nothingHeld);
    else
      photos.notes().then(
        (notes) => show(new Set(notes.map(({ hash }) => hash))),
        () => show(nothingHeld),
      );
    return () => {
      current = false;
    };
  }, [photos, of]);
  return held;
}
