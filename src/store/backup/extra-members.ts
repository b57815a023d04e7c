import { concatBytes } from '@noble/hashes/utils.js';

/**
 * Bytes beside the text of a gzip file: members without any text, whose heads carry them as an extra field (RFC 1952,
 * section 2.3.1.1) under a mark of two letters. Whoever unpacks the file passes over them.
 *
 * Flags and system in the head differ from those of our other members, so that none is taken for a damaged one of them.
 */
const head = Uint8Array.of(0x1f, 0x8b, 8, 4, 0, 0, 0, 0, 2, 255);
/** The two letters that say what a subfield is. */
export type Mark = readonly [number, number];
/** An empty text, its sum and its length. */
const tail = Uint8Array.of(3, 0, 0, 0, 0, 0, 0, 0, 0, 0);
/** Bytes of a length, and of a mark. */
const sized = 2;
const marked = 2;
const before = head.length + sized + marked + sized;

/** Bytes of a member beside what it carries. */
export const aroundExtra = before + tail.length;
/** The most that a member carries: the length of the whole field has to fit into two bytes. */
export const mostInExtra = 0xffff - marked - sized;

/** One member that carries these bytes, `mostInExtra` at most. */
export function extraMember(mark: Mark, content: Uint8Array): Uint8Array {
  const field = concatBytes(Uint8Array.from(mark), lengthOf(content.length), content);
  return concatBytes(head, lengthOf(field.length), field, tail);
}

/** Where the bytes lie that a member under this mark carries; undefined where none stands at `at`, whole and as it was written. */
export function contentOfExtra(
  bytes: Uint8Array,
  { at, mark }: { readonly at: number; readonly mark: Mark },
): { readonly from: number; readonly to: number } | undefined {
  const from = at + before;
  if (from + tail.length > bytes.length || !stands(bytes, at, head)) return undefined;
  if (!stands(bytes, from - sized - marked, mark)) return undefined;
  const [field, length] = [lengthAt(bytes, at + head.length), lengthAt(bytes, from - sized)];
  const to = from + length;
  if (field !== length + marked + sized || to + tail.length > bytes.length) return undefined;
  return stands(bytes, to, tail) ? { from, to } : undefined;
}

/** Where the first byte of such a head may be, from `from` on; -1 when it is nowhere. */
export const mayBeExtra = (bytes: Uint8Array, from: number): number => bytes.indexOf(head[0] ?? 0, from);

/** The longest member there can be. */
export const longestExtra = aroundExtra + mostInExtra;

/** The mark of the packed part. */
const packed: Mark = [0x54, 0x77];

export function extraMembers(bytes: Uint8Array): Uint8Array {
  const members: Uint8Array[] = [];
  for (let at = 0; at < bytes.length; at += mostInExtra)
    members.push(extraMember(packed, bytes.subarray(at, at + mostInExtra)));
  return concatBytes(...members);
}

/** What such members carry. Reads no further than they go; what they are is for a digest to say. */
export function contentOfExtras(members: Uint8Array): Uint8Array {
  const pieces: Uint8Array[] = [];
  for (let at = 0; at + before < members.length; ) {
    const from = at + before;
    const to = from + lengthAt(members, from - sized);
    pieces.push(members.subarray(from, to));
    at = to + tail.length;
  }
  return concatBytes(...pieces);
}

/** Two bytes, the lesser first. */
const lengthOf = (length: number) => Uint8Array.of(length & 0xff, length >>> 8);
const lengthAt = (bytes: Uint8Array, at: number) => (bytes[at] ?? 0) + 256 * (bytes[at + 1] ?? 0);

function stands(bytes: Uint8Array, at: number, wanted: ArrayLike<number>): boolean {
  for (let index = 0; index < wanted.length; index += 1)
    if (bytes[at + index] !== wanted[index]) return false;
  return true;
}
