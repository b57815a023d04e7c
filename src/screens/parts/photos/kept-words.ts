import type { Kept } from '../../../app/photos.ts';
import { photoWords as words } from '../../../words/photo-words.ts';

/** What became of a photo, in words. */
export function keptWords(kept: Kept): string {
  switch (kept.kind) {
    case 'kept':
      return words.kept;
    case 'refused':
      return words.refused[kept.why];
    case 'not-kept':
      return words.notKept;
  }
}
