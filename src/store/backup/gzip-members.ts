/** The head that every gzip member of ours has: RFC 1952 without a date, a name or extras. */
const ownHead = Uint8Array.of(0x1f, 0x8b, 8, 0, 0, 0, 0, 0, 0, 3);

/** How many of the ten bytes at `at` differ from the head of a member of ours. */
function differing(bytes: Uint8Array, at: number): number {
  let differ = 0;
  for (let index = 0; index < ownHead.length && differ < 2; index += 1)
    if (bytes[at + index] !== ownHead[index]) differ += 1;
  return differ;
}

/** Whether a member of ours begins here, as it was written. */
export function isOwnHead(bytes: Uint8Array, at: number): boolean {
  return differing(bytes, at) === 0;
}

/** Where the next member of ours begins, from `from` on, one wrong byte allowed; -1 when there is none. */
export function nextMember(bytes: Uint8Array, from: number): number {
  for (let at = from; at + ownHead.length <= bytes.length; at += 1) if (differing(bytes, at) < 2) return at;
  return -1;
}

/** A head as it was written, to put in the place of a damaged one. */
export const freshHead = (): Uint8Array => ownHead.slice();

/** The sum and length (modulo 2³²) that the eight bytes before `end` say of a member. */
export function trailerBefore(
  bytes: Uint8Array,
  end: number,
): { readonly crc: number; readonly length: number } {
  const view = new DataView(bytes.buffer, bytes.byteOffset + end - 8, 8);
  return { crc: view.getUint32(0, true), length: view.getUint32(4, true) };
}
