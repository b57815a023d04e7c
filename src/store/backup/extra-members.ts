import { concatBytes } from '@noble/hashes/utils.js';

/**
 * Bytes beside the text of a gzip file: members without any text, whose heads carry them as an extra field (RFC 1952,
 * section 2.3.1.1) with the mark `Tw`. Whoever unpacks the file passes over them.
 *
 * Flags and system in the head differ from those of our other members, so that none is taken for a damaged one of them.
 */
const head = Uint8Array.of(0x1f, 0x8b, 8, 4, 0, 0, 0, 0, 2, 255);
const mark = Uint8Array.of(0x54, 0x77);
/** An empty text, its sum and its length. */
const tail = Uint8Array.of(3, 0, 0, 0, 0, 0, 0, 0, 0, 0);
/** Bytes of a length; bytes before those that a member carries. */
const sized = 2;
const before = head.length + sized + mark.length + sized;
/** The length of the whole field has to fit into two bytes. */
const most = 0xffff - mark.length - sized;

export function extraMembers(bytes: Uint8Array): Uint8Array {
  const members: Uint8Array[] = [];
  for (let at = 0; at < bytes.length; at += most) {
    const piece = bytes.subarray(at, at + most);
    const field = concatBytes(mark, lengthOf(piece.length), piece);
    members.push(head, lengthOf(field.length), field, tail);
  }
  return concatBytes(...members);
}

/** What such members carry. Reads no further than they go; what they are is for a digest to say. */
export function contentOfExtras(members: Uint8Array): Uint8Array {
  const pieces: Uint8Array[] = [];
  for (let at = 0; at + before < members.length; ) {
    const from = at + before;
    const length = (members[from - 2] ?? 0) + 256 * (members[from - 1] ?? 0);
    pieces.push(members.subarray(from, from + length));
    at = from + length + tail.length;
  }
  return concatBytes(...pieces);
}

/** Two bytes, the lesser first. */
const lengthOf = (length: number) => Uint8Array.of(length & 0xff, length >>> 8);
