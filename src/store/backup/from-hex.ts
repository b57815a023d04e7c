/** Bytes in memory that no other thread shares, as WebCrypto takes them, from pairs of hexadecimal digits that were checked. */
export const fromHex = (hex: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
