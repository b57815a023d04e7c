import { utf8ToBytes } from '@noble/hashes/utils.js';
import * as v from 'valibot';
import { fromBase64url, toBase64url } from './base64url.ts';
import { type ShopKey, shopKeyLength } from './shop-key.ts';

/** The name of a shop on a broker: it is part of subjects and of the name of a stream. */
export const shopName = v.pipe(v.string(), v.regex(/^[a-z0-9]{4,24}$/));

/** Where the broker is: a WebSocket, without a name or a password in it. */
export const brokerAddress = v.pipe(
  v.string(),
  v.maxLength(200),
  v.check((text) => {
    const url = URL.canParse(text) ? new URL(text) : undefined;
    return (
      url !== undefined &&
      (url.protocol === 'wss:' || url.protocol === 'ws:') &&
      url.username === '' &&
      url.password === '' &&
      url.hash === ''
    );
  }, 'no address of a broker'),
);

/** What a tablet has to know to join a shop. */
export interface Invitation {
  readonly address: string;
  readonly shop: string;
  readonly key: ShopKey;
}

const placeSchema = v.object({ address: brokerAddress, shop: shopName });

/** An invitation of parts that were typed; undefined when one of them cannot be. */
export function readInvitation({ key, ...place }: Invitation): Invitation | undefined {
  const read = v.safeParse(placeSchema, place);
  return read.success && key.length === shopKeyLength ? { ...read.output, key } : undefined;
}

const payload = v.object({ v: v.literal(1), a: brokerAddress, s: shopName, k: v.string() });
const place = '#/join/';
/** No link of ours is longer. */
const longest = 1000;

/** The link that invites: its fragment is sent to no server. `page` is the address of the app. */
export function joiningLink({ address, shop, key }: Invitation, page: string): string {
  const said: v.InferOutput<typeof payload> = { v: 1, a: address, s: shop, k: toBase64url(key) };
  return `${page.replace(/#.*$/, '')}${place}${toBase64url(utf8ToBytes(JSON.stringify(said)))}`;
}

/** What a link or its fragment says, as it was scanned or typed; undefined when it invites to nothing. Never throws. */
export function readJoiningLink(text: string): Invitation | undefined {
  const at = text.indexOf(place);
  if (at < 0 || text.length > longest) return undefined;
  const bytes = fromBase64url(text.slice(at + place.length).trim());
  if (!bytes) return undefined;
  try {
    const raw: unknown = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
    const said = v.safeParse(payload, raw);
    const key = said.success ? fromBase64url(said.output.k) : undefined;
    return said.success && key
      ? readInvitation({ address: said.output.a, shop: said.output.s, key })
      : undefined;
  } catch {
    return undefined;
  }
}
