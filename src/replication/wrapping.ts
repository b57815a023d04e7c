import { deflateSync } from 'fflate';
import { inflated } from '../store/backup/inflated.ts';
import type { Bytes } from '../store/backup/sealing-keys.ts';

/** A body says first whether it is packed by DEFLATE (RFC 1951), and then how long it is without (32 bits, big-endian). */
const frame = 5;
/** No body of ours is longer unpacked: a run of the longest has some 2 MB. */
const longest = 32_000_000;
/** Bytes below which packing saves nothing that counts. */
const worthPacking = 400;

export function wrapped(content: Uint8Array): Bytes {
  const deflated = content.length < worthPacking ? content : deflateSync(content);
  const packed = deflated.length < content.length;
  const bytes = new Uint8Array(frame + (packed ? deflated.length : content.length));
  bytes[0] = packed ? 1 : 0;
  new DataView(bytes.buffer).setUint32(1, content.length);
  bytes.set(packed ? deflated : content, frame);
  return bytes;
}

/** Rejects when it is not as it was written. */
export async function unwrapped(bytes: Bytes): Promise<Bytes> {
  if (bytes.length < frame) throw new Error('a body is too short');
  const length = new DataView(bytes.buffer, bytes.byteOffset).getUint32(1);
  const content = bytes.slice(frame);
  if (length > longest) throw new Error('a body is too long');
  if (bytes[0] === 0 && content.length === length) return content;
  if (bytes[0] !== 1) throw new Error('a body is of no form that is known');
  return inflated(content, length);
}
