import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import type { Link } from './chain.ts';

const blank = sha256.create();
/** One for all links: to make a new one for each takes a third of the time. */
const worked = sha256.create();
const sum = new Uint8Array(worked.outputLen);

/** The link that `linkOver` gives, of texts that are still bytes (UTF-8). */
export function linkOverBytes(prev: Uint8Array, json: Uint8Array): Link {
  blank._cloneInto(worked).update(prev).update(json).digestInto(sum);
  return bytesToHex(sum.subarray(0, 16)) as Link;
}
