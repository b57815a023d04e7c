import type { PhotoHash } from '../domain/log/photo-facts.ts';
import type { NewPhoto } from '../store/photos/photo-store.ts';

/** Why a file is not taken as a photo. */
export type NoPhoto =
  /** It is no JPEG, PNG, WebP, AVIF, HEIC or GIF, whatever it is called. */
  | 'not-a-picture'
  /** It has so many bytes or pixels that a tablet might fall over it. */
  | 'too-large'
  /** It is broken, or of a kind that this browser cannot open. */
  | 'cannot-be-opened'
  /** Its bytes are not those that its name promises. */
  | 'not-as-named';

export type ToPhotoWorker =
  | { readonly id: number; readonly kind: 'make'; readonly file: Blob }
  /** A photo that another tablet made: it stays as it is, or it would have another hash. */
  | {
      readonly id: number;
      readonly kind: 'take-in';
      readonly hash: PhotoHash;
      readonly bytes: Uint8Array<ArrayBuffer>;
    };

export type FromPhotoWorker =
  | { readonly id: number; readonly kind: 'made'; readonly photo: NewPhoto }
  | { readonly id: number; readonly kind: 'refused'; readonly why: NoPhoto };
