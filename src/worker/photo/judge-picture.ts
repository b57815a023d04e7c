import { imageSize } from 'image-size';
import type { NoPhoto } from '../photo-protocol.ts';

/** Beginnings are what a file is, its name is not. Drawings that may carry script are none of these. */
const pictures: ReadonlySet<string | undefined> = new Set([
  'jpg',
  'png',
  'webp',
  'avif',
  'heif',
  'heic',
  'gif',
]);

/** Of a file that is read at all. */
export const mostFileBytes = 60_000_000;
/** Such a picture takes 256 MB while it is made smaller. */
const mostPixels = 64_000_000;

/** What is wrong with a file as a picture, before anything decodes it; undefined when nothing is. */
export function judgePicture(bytes: Uint8Array): NoPhoto | undefined {
  const size = sizeOf(bytes);
  if (!size || !pictures.has(size.type)) return 'not-a-picture';
  if (!(size.width > 0 && size.height > 0)) return 'cannot-be-opened';
  return size.width * size.height > mostPixels ? 'too-large' : undefined;
}

function sizeOf(bytes: Uint8Array) {
  try {
    return imageSize(bytes);
  } catch {
    return undefined;
  }
}
