import * as v from 'valibot';
import { reasonId, stageId, variantId } from './ids.ts';
import { whole } from './whole.ts';

/** SHA-256 of a photo's bytes, in hex: the name under which its bytes are kept beside the log. */
export const photoHash = v.pipe(v.string(), v.regex(/^[0-9a-f]{64}$/), v.brand('PhotoHash'));
export type PhotoHash = v.InferOutput<typeof photoHash>;

/** Pixels on the longer side of a photo that is kept, and the most bytes that one may have. */
export const photoSide = 1600;
export const mostPhotoBytes = 4_000_000;

/** What is known of a photo without its bytes; it is a JPEG. */
const photo = v.object({
  hash: photoHash,
  width: whole(1, photoSide),
  height: whole(1, photoSide),
  bytes: whole(1, mostPhotoBytes),
});
export type PhotoFacts = Readonly<v.InferOutput<typeof photo>>;

/** Pieces of a tray were photographed at a stage; `reasons` says which flaw is to be seen, none that it is none. */
export const piecePhotographed = {
  kind: v.literal('piece-photographed'),
  stage: stageId,
  reasons: v.array(reasonId),
  photo,
};

/** What a photo shows that is of no tray: what a variant looks like, or what a criterion accepts and what it does not. */
const shown = v.variant('kind', [
  v.object({ kind: v.literal('variant'), variant: variantId }),
  v.object({ kind: v.literal('criterion'), reason: reasonId, verdict: v.picklist(['good', 'bad']) }),
]);
export type PhotoShown = Readonly<v.InferOutput<typeof shown>>;

export const photoTaken = { kind: v.literal('photo-taken'), shows: shown, photo };

/** The bytes of a photo are wanted no longer; that it was taken stands. */
export const photoLetGo = { kind: v.literal('photo-let-go'), photo: photoHash };
