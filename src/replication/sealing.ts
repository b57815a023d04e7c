import { concatBytes, utf8ToBytes } from '@noble/hashes/utils.js';
import { type Bytes, decrypted } from '../store/backup/sealing-keys.ts';
import { fromBase64url, toBase64url } from './base64url.ts';

/** So many bytes from the platform's source of randomness. */
type RandomBytes = (length: number) => Bytes;

/** Where a message belongs. It is sealed along, so that no message can be moved. */
export interface Address {
  readonly shop: string;
  readonly seat: string;
  readonly lane: string;
  readonly kind: string;
}

const nonceLength = 12;

const dataOf = ({ shop, seat, lane, kind }: Address) =>
  Uint8Array.from(utf8ToBytes(`tallywright/${shop}/${seat}/${lane}/${kind}`));

const dataOfBody = (address: Address, head: Bytes) => Uint8Array.from(concatBytes(dataOf(address), head));

/** A head and a body that belong together, each under AES-256-GCM with a random nonce of 96 bits before it. */
export async function sealMessage(
  { head, body }: { readonly head: Bytes; readonly body: Bytes },
  { key, address, random }: { key: CryptoKey; address: Address; random: RandomBytes },
): Promise<{ readonly head: string; readonly body: Bytes }> {
  const seal = async (bytes: Bytes, additionalData: Bytes) => {
    const iv = random(nonceLength);
    const sealed = await crypto.subtle.encrypt({ name: 'AES-GCM', iv, additionalData }, key, bytes);
    return Uint8Array.from(concatBytes(iv, new Uint8Array(sealed)));
  };
  const sealedHead = await seal(head, dataOf(address));
  return { head: toBase64url(sealedHead), body: await seal(body, dataOfBody(address, sealedHead)) };
}

type Opening = { readonly key: CryptoKey; readonly address: Address };

/** The head again; undefined when it was not sealed by this shop, or for another place. */
export function openHead(head: string, { key, address }: Opening): Promise<Bytes | undefined> {
  return opened(fromBase64url(head), { key, data: dataOf(address) });
}

/** The body again; undefined when it was not sealed by this shop, or with another head. */
export async function openBody(
  { head, body }: { readonly head: string; readonly body: Bytes },
  { key, address }: Opening,
): Promise<Bytes | undefined> {
  const sealedHead = fromBase64url(head);
  return sealedHead && opened(body, { key, data: dataOfBody(address, sealedHead) });
}

async function opened(
  sealed: Bytes | undefined,
  { key, data }: { key: CryptoKey; data: Bytes },
): Promise<Bytes | undefined> {
  if (!sealed || sealed.length < nonceLength) return undefined;
  return decrypted(key, { iv: sealed.slice(0, nonceLength), bytes: sealed.slice(nonceLength), data });
}
