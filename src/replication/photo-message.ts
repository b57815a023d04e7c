import { utf8ToBytes } from '@noble/hashes/utils.js';
import * as v from 'valibot';
import { mostPhotoBytes, type PhotoHash, photoHash } from '../domain/log/photo-facts.ts';
import { whole } from '../domain/log/whole.ts';
import type { Bytes } from '../store/backup/sealing-keys.ts';
import type { LaneOf, Outgoing, PhotoLane, Placed } from './exchange.ts';
import { aside, type DeskParts, jsonOf, type Opened } from './message.ts';
import { openBody, openHead, sealMessage } from './sealing.ts';

/** Bytes of a piece: a second of a slow line, for which a tap may have to wait. */
const pieceBytes = 128_000;
/** One message alone on a lane says that the photo is gone: so a photo has two pieces or more. */
const [fewestPieces, mostPieces] = [2, 64];

const pieceHead = v.object({
  hash: photoHash,
  piece: whole(0, mostPieces - 1),
  of: whole(fewestPieces, mostPieces),
  bytes: whole(1, mostPhotoBytes),
});
/** Which piece of which photo a message brings, from 0, of how many, and how many bytes the whole photo has. */
export type PieceHead = Readonly<v.InferOutput<typeof pieceHead>>;

/** A piece, and that a photo was let go: it takes the place of its pieces. The number is that of the form. */
const headSchemas = { photo1: pieceHead, gone1: v.object({ hash: photoHash }) };
type PhotoSaid =
  | { readonly kind: 'photo1'; readonly head: PieceHead }
  | { readonly kind: 'gone1'; readonly head: { readonly hash: PhotoHash } };

const sizeOfPiece = ({ of, bytes }: Pick<PieceHead, 'of' | 'bytes'>) => Math.ceil(bytes / of);

/** Into how many pieces a photo of so many bytes is cut. */
export const piecesOf = (bytes: number) => Math.max(fewestPieces, Math.ceil(bytes / pieceBytes));

export function pieceOf(photo: Bytes, head: PieceHead): Bytes {
  const size = sizeOfPiece(head);
  return photo.slice(head.piece * size, (head.piece + 1) * size);
}

export const photoLane = (hash: PhotoHash, pieces: number): PhotoLane => `ph.${hash}.${pieces}`;

/** The photo whose pieces lie on a lane, and how many there ought to be; undefined for a lane of something else. */
export function readPhotoLane(lane: string): { readonly hash: PhotoHash; readonly of: number } | undefined {
  const [kind, hash, of, ...more] = lane.split('.');
  const read = v.safeParse(v.object({ hash: photoHash, of: pieceHead.entries.of }), { hash, of: Number(of) });
  return kind === 'ph' && more.length === 0 && read.success ? read.output : undefined;
}

/** What seals and opens the photos of one shop. */
export interface PhotoDesk {
  readonly seal: (
    said: PhotoSaid,
    message: Pick<Outgoing, 'body' | 'replaces' | 'after'> & { readonly lane: PhotoLane },
  ) => Promise<Outgoing>;
  readonly openHead: (placed: Placed) => Promise<Opened<PhotoSaid>>;
  readonly openPiece: (placed: Placed, head: PieceHead) => Promise<Opened<Bytes>>;
}

export function photoDesk({ shop, seat, key, random }: DeskParts): PhotoDesk {
  const openingOf = ({ seat: by, lane, kind }: LaneOf & Pick<Placed, 'kind'>) => ({
    key,
    address: { shop, seat: by, lane, kind },
  });
  return {
    async seal({ kind, head }, { body, lane, ...how }) {
      const parts = { head: Uint8Array.from(utf8ToBytes(JSON.stringify(head))), body };
      const sealed = await sealMessage(parts, { ...openingOf({ seat, lane, kind }), random });
      // Its nonce makes each another one: what stands there twice is seen by where it was to stand.
      return { lane, kind, id: `${kind}:${seat}:${sealed.head.slice(0, 16)}`, ...how, ...sealed };
    },
    async openHead(placed) {
      const { kind } = placed;
      if (!isKnown(kind)) return aside('newer', `its kind is ${kind.slice(0, 40)}`);
      const opened = await openHead(placed.head, openingOf(placed));
      if (!opened) return aside('not-sealed-here', 'its head does not open');
      const read = v.safeParse(headSchemas[kind], jsonOf(opened));
      if (!read.success) return aside('malformed', read.issues[0].message);
      const head = read.output;
      if (!isOnLane(head, placed.lane)) return aside('malformed', 'it is of another photo');
      return { kind: 'opened', what: { kind, head } as PhotoSaid };
    },
    async openPiece({ body, ...placed }, head) {
      const piece = body && (await openBody({ head: placed.head, body }, openingOf(placed)));
      if (!piece) return aside('not-sealed-here', 'its body does not open');
      const size = sizeOfPiece(head);
      const wanted = Math.max(0, Math.min(size, head.bytes - head.piece * size));
      if (piece.length !== wanted) return aside('malformed', 'a piece is of another length');
      return { kind: 'opened', what: piece };
    },
  };
}

const isKnown = (kind: string): kind is keyof typeof headSchemas => Object.hasOwn(headSchemas, kind);

function isOnLane(head: { hash: PhotoHash; of?: number; piece?: number }, lane: string): boolean {
  const said = readPhotoLane(lane);
  const { of = said?.of, piece = 0 } = head;
  return said?.hash === head.hash && said.of === of && piece < of;
}
