/** The key of a shop on a broker, and what is worked out from it: seats, and the link by which a tablet joins. */
import { hkdfSync } from 'node:crypto';
import { userKey } from './nkey.mjs';

/** As many tablets as a shop has station letters; a tablet takes a free seat, whatever its letter. */
export const seats = [...'ABCDEFGHIJKLM'];

/** Small letters and digits that are not taken for one another. */
const nameSigns = 'abcdefghjkmnpqrstuvwxyz23456789';

/**
 * @typedef {object} ShopKeys what the hub keeps of a shop; all of it but its name is secret
 * @property {string} shop its name on the broker, ten letters and digits
 * @property {Uint8Array} key 16 bytes, known to the tablets and the hub alone
 * @property {Uint8Array} admin seed of who may make the stream, 32 bytes
 * @property {Uint8Array} watch seed of who may look at connections, 32 bytes
 */

/** @param {(bytes: number) => Uint8Array} random @returns {ShopKeys} */
export function newShopKeys(random) {
  return {
    shop: newShopName(random),
    key: random(16),
    admin: random(32),
    watch: random(32),
  };
}

/** @param {(bytes: number) => Uint8Array} random */
function newShopName(random) {
  // A byte past the last whole round of the signs is drawn anew, so that all are alike likely.
  const whole = 256 - (256 % nameSigns.length);
  let name = '';
  while (name.length < 10) {
    const [byte = 255] = random(1);
    if (byte < whole) name += nameSigns[byte % nameSigns.length];
  }
  return name;
}

/**
 * The broker's user of a seat: HKDF with SHA-256 (RFC 5869), no salt, 32 bytes.
 *
 * @param {Uint8Array} key of the shop
 * @param {string} seat
 */
export const seatKey = (key, seat) =>
  userKey(new Uint8Array(hkdfSync('sha256', key, new Uint8Array(), `tallywright seat ${seat}`, 32)));

/** What the broker may know of a shop: its name and public keys. @param {ShopKeys} keys @returns {import('./broker-config.mjs').BrokerShop} */
export const openPart = ({ shop, key, admin }) => ({
  shop,
  admin: userKey(admin).public,
  seats: seats.map((seat) => ({ seat, key: seatKey(key, seat).public })),
});

/**
 * The link by which a tablet joins. What stands behind the # is sent to no server.
 *
 * @param {ShopKeys} keys
 * @param {{ origin: string, address: string }} where `origin` serves the app, `address` is that of the broker
 */
export function joiningLink({ shop, key }, { origin, address }) {
  const said = { v: 1, a: address, s: shop, k: Buffer.from(key).toString('base64url') };
  return `${origin}/#/join/${Buffer.from(JSON.stringify(said)).toString('base64url')}`;
}
