/** The table of RFC 1952, section 8: remainders of each byte by the polynomial 0xEDB88320. */
const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit += 1) rest = rest & 1 ? 0xedb88320 ^ (rest >>> 1) : rest >>> 1;
  return rest;
});

/** CRC-32 of gzip (RFC 1952), of bytes that follow those whose sum is `before` (0 at the start). */
export function crc32(before: number, bytes: Uint8Array): number {
  let rest = ~before;
  for (const byte of bytes) rest = (table[(rest ^ byte) & 0xff] ?? 0) ^ (rest >>> 8);
  return ~rest >>> 0;
}
