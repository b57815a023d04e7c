/**
 * Remainders of each byte by the polynomial 0xEDB88320 (RFC 1952, section 8), and after them, seven times over, those of
 * the same byte with one more zero byte behind it: so eight bytes can be looked up at once (M. E. Kounavis, F. L. Berry,
 * "A Systematic Approach to Building High Performance Software-Based CRC Generators", 2005).
 */
const table = new Int32Array(8 * 256);
for (let at = 0; at < table.length; at += 1) {
  let rest = at < 256 ? at : (table[at - 256] ?? 0);
  if (at < 256) for (let bit = 0; bit < 8; bit += 1) rest = rest & 1 ? 0xedb88320 ^ (rest >>> 1) : rest >>> 1;
  else rest = (table[rest & 0xff] ?? 0) ^ (rest >>> 8);
  table[at] = rest;
}
/** Of a byte behind which `zeros` bytes of 0 stand. */
const remainder = (zeros: number, byte: number) => table[zeros * 256 + (byte & 0xff)] ?? 0;

/** CRC-32 of gzip (RFC 1952), of bytes that follow those whose sum is `before` (0 at the start). */
export function crc32(before: number, bytes: Uint8Array): number {
  return ~restAfter(~before, bytes) >>> 0;
}

/** A function of its own, that no number in its loop is ever beyond 32 bits with a sign: else it is not kept compiled. */
function restAfter(before: number, bytes: Uint8Array): number {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let rest = before;
  let at = 0;
  for (; at + 8 <= bytes.length; at += 8) {
    const near = view.getInt32(at, true) ^ rest;
    const far = view.getInt32(at + 4, true);
    rest =
      remainder(7, near) ^
      remainder(6, near >>> 8) ^
      remainder(5, near >>> 16) ^
      remainder(4, near >>> 24) ^
      remainder(3, far) ^
      remainder(2, far >>> 8) ^
      remainder(1, far >>> 16) ^
      remainder(0, far >>> 24);
  }
  for (; at < bytes.length; at += 1) rest = remainder(0, rest ^ (bytes[at] ?? 0)) ^ (rest >>> 8);
  return rest;
}
