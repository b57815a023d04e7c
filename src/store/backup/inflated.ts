import { inflateSync } from 'fflate';

/**
 * Unpacks DEFLATE (RFC 1951) to so many bytes, by the browser's own means where it has them: a worker that has just begun
 * unpacks with those in a tenth of the time. Rejects when it is damaged, or not of that length.
 */
export async function inflated(packed: Uint8Array, length: number): Promise<Uint8Array<ArrayBuffer>> {
  const out = new Uint8Array(length);
  if (typeof DecompressionStream === 'undefined') return inflateSync(packed, { out });
  const stream = new Blob([Uint8Array.from(packed)])
    .stream()
    .pipeThrough(new DecompressionStream('deflate-raw'));
  const reader = stream.getReader();
  let at = 0;
  for (let piece = await reader.read(); !piece.done; piece = await reader.read()) {
    // Throws when more comes out than was said.
    out.set(piece.value, at);
    at += piece.value.length;
  }
  if (at !== length) throw new Error('it unpacks to less than was said');
  return out;
}
