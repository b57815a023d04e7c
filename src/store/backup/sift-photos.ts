import { mostPhotoBytes, type PhotoHash } from '../../domain/log/photo-facts.ts';
import { digestOf } from './digest-of.ts';
import { bytesOfBlob } from './gathering.ts';
import { longestMember, nextPiece, type PhotoPiece } from './photo-members.ts';

/** Where the bytes of a photo lie in a file: pieces, in their order. */
export interface PlacedPhoto {
  readonly hash: PhotoHash;
  readonly ranges: readonly (readonly [from: number, to: number])[];
}

/** A file parted into its photos and the rest, which is the file as it would be without them. */
interface Sifted {
  readonly rest: Blob;
  /** Photos of which every piece is there, in the order of the file; whether they are what their hash says is still to be seen. */
  readonly photos: readonly PlacedPhoto[];
  /** Photos of which pieces are missing. */
  readonly broken: number;
}

/** Bytes that are looked at together. */
const windowLength = 8_000_000;
/** Pieces beyond this are left where they are: a hostile file has millions of empty ones. */
const mostPieces = 60_000;

/** Goes through a file once, a window at a time. What is no piece as it was written stays in the rest. */
export async function siftPhotos(file: Blob): Promise<Sifted> {
  const pieces: PhotoPiece[] = [];
  const kept: Blob[] = [];
  /** Up to here all is parted. */
  let done = 0;
  for (let at = 0; at < file.size && pieces.length < mostPieces; ) {
    const window = await bytesOfBlob(file.slice(at, at + windowLength));
    const isLast = at + window.length >= file.size;
    let next = 0;
    for (let found = nextPiece(window, 0); found; found = nextPiece(window, next)) {
      const { piece, begins, ends } = found;
      if (at + begins > done) kept.push(file.slice(done, at + begins));
      pieces.push({ ...piece, from: at + piece.from, to: at + piece.to });
      next = ends;
      done = at + ends;
      if (pieces.length >= mostPieces) break;
    }
    // A member that the window cuts is looked at whole with the next one.
    at += isLast ? window.length : Math.max(next, window.length - longestMember);
  }
  if (done < file.size) kept.push(file.slice(done));
  return { rest: pieces.length === 0 ? file : new Blob(kept), ...joined(pieces) };
}

function joined(pieces: readonly PhotoPiece[]): Omit<Sifted, 'rest'> {
  const places = new Map<PhotoHash, { of: number; pieces: Map<number, PhotoPiece> }>();
  for (const piece of pieces) {
    const place = places.get(piece.hash) ?? { of: piece.of, pieces: new Map() };
    places.set(piece.hash, place);
    if (piece.of === place.of && !place.pieces.has(piece.number)) place.pieces.set(piece.number, piece);
  }
  const photos: PlacedPhoto[] = [];
  for (const [hash, { of, pieces: its }] of places) {
    if (its.size < of) continue;
    const inOrder = [...its.values()].sort((a, b) => a.number - b.number);
    photos.push({ hash, ranges: inOrder.map(({ from, to }) => [from, to]) });
  }
  return { photos, broken: places.size - photos.length };
}

/** The bytes of a photo in a file; undefined when they are not those that its hash promises, or too many. */
export async function photoIn(
  file: Blob,
  { hash, ranges }: PlacedPhoto,
): Promise<Uint8Array<ArrayBuffer> | undefined> {
  if (ranges.reduce((sum, [from, to]) => sum + to - from, 0) > mostPhotoBytes) return undefined;
  const bytes = await bytesOfBlob(new Blob(ranges.map(([from, to]) => file.slice(from, to))));
  return (await digestOf(bytes)) === hash ? bytes : undefined;
}
