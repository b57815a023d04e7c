import { bytesToHex, concatBytes } from '@noble/hashes/utils.js';
import * as v from 'valibot';
import { mostPhotoBytes, type PhotoHash, photoHash } from '../../domain/log/photo-facts.ts';
import {
  aroundExtra,
  contentOfExtra,
  extraMember,
  longestExtra,
  type Mark,
  mayBeExtra,
  mostInExtra,
} from './extra-members.ts';
import { fromHex } from './from-hex.ts';

/**
 * A photo in a gzip file: members without text (`extra-members.ts`) under the mark `Tp`. Each carries the hash of its
 * photo (32 bytes), which piece of it this is and how many there are (a byte each, from 0), and the bytes of the piece. A
 * piece says by itself what it is of, so that damage to one costs one photo, wherever the file was cut or spoilt.
 */
const mark: Mark = [0x54, 0x70];
const hashBytes = 32;
const ahead = hashBytes + 2;
const mostInPiece = mostInExtra - ahead;
/** Of the largest photo. */
const mostPieces = Math.ceil(mostPhotoBytes / mostInPiece);

/** No member that carries a piece is longer. */
export const longestMember = longestExtra;

/** A piece of a photo: where its bytes lie. */
export interface PhotoPiece {
  readonly hash: PhotoHash;
  readonly number: number;
  readonly of: number;
  readonly from: number;
  readonly to: number;
}

const piecesOf = (bytes: number) => Math.max(1, Math.ceil(bytes / mostInPiece));

/** How many bytes of a file a photo of so many bytes takes. */
export const bytesInFile = (bytes: number): number => bytes + piecesOf(bytes) * (ahead + aroundExtra);

export function photoMembers({ hash, bytes }: { hash: PhotoHash; bytes: Uint8Array }): Uint8Array {
  const pieces = piecesOf(bytes.length);
  const name = fromHex(hash);
  const members: Uint8Array[] = [];
  for (let number = 0; number < pieces; number += 1) {
    const piece = bytes.subarray(number * mostInPiece, (number + 1) * mostInPiece);
    members.push(extraMember(mark, concatBytes(name, Uint8Array.of(number, pieces), piece)));
  }
  return concatBytes(...members);
}

/** The first piece of a photo in these bytes from `from` on, and where its member begins and ends; undefined when there is none. */
export function nextPiece(
  bytes: Uint8Array,
  from: number,
): { readonly piece: PhotoPiece; readonly begins: number; readonly ends: number } | undefined {
  for (let at = mayBeExtra(bytes, from); at !== -1; at = mayBeExtra(bytes, at + 1)) {
    const content = contentOfExtra(bytes, { at, mark });
    const piece = content && pieceIn(bytes, content);
    if (piece) return { piece, begins: at, ends: at + aroundExtra + (content.to - content.from) };
  }
  return undefined;
}

function pieceIn(bytes: Uint8Array, { from, to }: { from: number; to: number }): PhotoPiece | undefined {
  if (to - from < ahead) return undefined;
  const [number = 0, of = 0] = bytes.subarray(from + hashBytes, from + ahead);
  if (of > mostPieces || number >= of) return undefined;
  const hash = v.parse(photoHash, bytesToHex(bytes.subarray(from, from + hashBytes)));
  return { hash, number, of, from: from + ahead, to };
}
