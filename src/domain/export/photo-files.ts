import type { VariantId } from '../log/ids.ts';
import type { PhotoHash } from '../log/photo-facts.ts';
import { plainLetters } from './plain-letters.ts';

/** A photo under the name that it has beside a listing sheet. */
export interface PhotoFile {
  readonly variant: VariantId;
  readonly photo: PhotoHash;
  readonly name: string;
}

/** What a variant without a Latin letter or a digit in its name is called in a file system. */
const nameless = 'piece';

/**
 * Names photos after their variant, in plain letters, and a number; a photo of a variant that was taken down twice is one file.
 * Variants whose names come to the same letters are numbered on, so that no two files share a name.
 */
export function photoFiles(
  variants: readonly {
    readonly variant: VariantId;
    readonly name: string;
    readonly photos: readonly PhotoHash[];
  }[],
): readonly PhotoFile[] {
  const given = new Map<string, number>();
  return variants.flatMap(({ variant, name, photos }) => {
    const letters = plainLetters(name) || nameless;
    return [...new Set(photos)].map((photo) => {
      const number = (given.get(letters) ?? 0) + 1;
      given.set(letters, number);
      return { variant, photo, name: `${letters}-${number}.jpg` };
    });
  });
}
