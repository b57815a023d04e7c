import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import * as v from 'valibot';
import { mostPhotoBytes, type PhotoHash, photoHash, photoSide } from '../../domain/log/photo-facts.ts';
import type { NewPhoto } from '../../store/photos/photo-store.ts';
import type { NoPhoto } from '../photo-protocol.ts';
import { judgePicture, mostFileBytes } from './judge-picture.ts';

/** Pixels on the longer side of a photo in a gallery. */
const smallSide = 320;
/** One after the other, until the photo has few enough bytes. */
const qualities = [0.82, 0.6, 0.4];

/**
 * Makes a photo of a file: decoded as its EXIF says it is to be held, drawn anew on white and no larger than `photoSide`, and
 * packed as a JPEG, which then carries nothing of the file but its picture.
 */
export async function makePhoto(file: Blob): Promise<NewPhoto | NoPhoto> {
  if (file.size > mostFileBytes) return 'too-large';
  const problem = judgePicture(new Uint8Array(await file.arrayBuffer()));
  if (problem) return problem;
  const picture = await createImageBitmap(file, { imageOrientation: 'from-image' }).catch(() => undefined);
  if (!picture) return 'cannot-be-opened';
  try {
    const large = drawn(picture, photoSide);
    const bytes = await packed(large, qualities);
    const small = await packed(drawn(large, smallSide), [0.7]);
    if (!bytes || !small) return 'cannot-be-opened';
    const { width, height } = large;
    return { facts: { hash: hashOf(bytes), width, height, bytes: bytes.byteLength }, bytes, small };
  } finally {
    picture.close();
  }
}

/** Makes the small photo of one that comes from a copy, once its bytes are seen to be those that its hash promises. */
export async function takeInPhoto({
  hash,
  bytes,
}: {
  readonly hash: PhotoHash;
  readonly bytes: Uint8Array<ArrayBuffer>;
}): Promise<NewPhoto | NoPhoto> {
  if (bytes.byteLength > mostPhotoBytes) return 'too-large';
  if (hashOf(bytes) !== hash) return 'not-as-named';
  const problem = judgePicture(bytes);
  if (problem) return problem;
  const jpeg = new Blob([bytes], { type: 'image/jpeg' });
  const picture = await createImageBitmap(jpeg).catch(() => undefined);
  if (!picture) return 'cannot-be-opened';
  try {
    const { width, height } = picture;
    if (Math.max(width, height) > photoSide) return 'too-large';
    const small = await packed(drawn(picture, smallSide), [0.7]);
    if (!small) return 'cannot-be-opened';
    return { facts: { hash, width, height, bytes: bytes.byteLength }, bytes, small };
  } finally {
    picture.close();
  }
}

function hashOf(bytes: Uint8Array): PhotoHash {
  return v.parse(photoHash, bytesToHex(sha256(bytes)));
}

function drawn(picture: ImageBitmap | OffscreenCanvas, side: number): OffscreenCanvas {
  const scale = Math.min(1, side / Math.max(picture.width, picture.height));
  const canvas = new OffscreenCanvas(
    Math.max(1, Math.round(picture.width * scale)),
    Math.max(1, Math.round(picture.height * scale)),
  );
  const context = canvas.getContext('2d', { alpha: false });
  if (!context) throw new Error('the browser gives no canvas');
  context.fillStyle = '#fff';
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.imageSmoothingQuality = 'high';
  context.drawImage(picture, 0, 0, canvas.width, canvas.height);
  return canvas;
}

async function packed(
  canvas: OffscreenCanvas,
  tries: readonly number[],
): Promise<Uint8Array<ArrayBuffer> | undefined> {
  for (const quality of tries) {
    const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality });
    if (blob.type === 'image/jpeg' && blob.size <= mostPhotoBytes) {
      return new Uint8Array(await blob.arrayBuffer());
    }
  }
  return undefined;
}
