/** What the broker of a running hub holds, and who is connected, as lines for a person. */
import { asAdmin, streamState, usersConnected } from './broker-admin.mjs';
import { seatKey, seats } from './shop-keys.mjs';

/**
 * @param {import('./shop-keys.mjs').ShopKeys} keys
 * @param {string} broker address and port for the admin
 * @throws {Error} when it does not answer
 */
export async function statusOf(keys, broker) {
  const [state, users] = await Promise.all([
    asAdmin(broker, keys, (connection) => streamState(connection, keys.shop)),
    usersConnected(broker, keys),
  ]);
  return statusLines({ keys, state, users });
}

/**
 * @param {object} what
 * @param {import('./shop-keys.mjs').ShopKeys} what.keys
 * @param {import('./broker-admin.mjs').StreamState | undefined} what.state
 * @param {readonly string[]} what.users public keys of those connected
 * @returns {string[]}
 */
function statusLines({ keys: { shop, key }, state, users }) {
  if (!state) return [`Shop ${shop}: the broker holds nothing.`];
  const counts = Object.entries(state.subjects);
  const rows = seats.map((seat) => {
    const own = seatKey(key, seat).public;
    /** @param {string} kind */
    const messages = (kind) =>
      counts
        .filter(([subject]) => `${subject}.`.startsWith(`tw.${shop}.${kind}.${seat}.`))
        .reduce((sum, [, count]) => sum + count, 0);
    return {
      seat,
      connected: users.filter((user) => user === own).length,
      numbers: [messages('ev'), messages('run'), messages('ph')],
    };
  });
  const taken = rows.filter(({ connected, numbers }) => connected > 0 || numbers.some((count) => count > 0));
  return [
    `Shop ${shop}: ${state.messages} messages, ${(state.bytes / 1e6).toFixed(1)} MB, since ${state.created.slice(0, 10)}`,
    ...(taken.length === 0 ? ['No tablet has joined yet.'] : ['seat  connected  young  packed  photos']),
    ...taken.map(({ seat, connected, numbers: [young, packed, photos] }) =>
      [seat.padEnd(4), String(connected).padStart(11), pad(young), pad(packed, 8), pad(photos, 8)].join(''),
    ),
  ];
}

/** @param {number | undefined} count @param {number} [width] */
const pad = (count, width = 7) => String(count ?? 0).padStart(width);
