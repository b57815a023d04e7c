/** What the hub asks of its broker: that the stream is there, what it holds, who is connected. */
import { connect, nkeyAuthenticator } from '@nats-io/transport-node';
import { photoStreamName, streamConfigs, streamName } from './broker-config.mjs';
import { userKey } from './nkey.mjs';

/** @typedef {import('@nats-io/transport-node').NatsConnection} Connection */
/** @typedef {{ created: string, messages: number, bytes: number, subjects: Record<string, number> }} StreamState */

/** The stream is not there: any other code is a failure. */
const noSuchStream = 10059;

/**
 * @param {string} broker address and port
 * @param {Uint8Array} seed of the user
 * @param {string} [inboxPrefix]
 * @returns {Promise<Connection>}
 */
export const connectAs = (broker, seed, inboxPrefix) =>
  connect({
    servers: broker,
    authenticator: nkeyAuthenticator(new TextEncoder().encode(userKey(seed).seed)),
    reconnect: false,
    timeout: 5000,
    ...(inboxPrefix && { inboxPrefix }),
  });

/**
 * Waits for the broker, and makes the streams of `shop` where they are missing; a stream of an older hub is made as it is now.
 *
 * @param {object} what
 * @param {string} what.broker address and port
 * @param {import('./shop-keys.mjs').ShopKeys} what.keys
 * @param {number} what.replicas on how many brokers it is kept
 * @param {number} what.patience how long to try, in ms
 * @param {() => boolean} what.isOver whether to give up
 * @throws {Error} the last one, when nothing of that came about
 * @returns {Promise<StreamState>}
 */
export async function makeStream({ broker, keys, replicas, patience, isOver }) {
  const until = performance.now() + patience;
  for (;;) {
    try {
      return await asAdmin(broker, keys, async (connection) => {
        for (const wanted of streamConfigs(keys.shop, replicas)) await settle(connection, wanted);
        const made = await streamState(connection, keys.shop);
        if (!made) throw new Error('The broker has not made the stream.');
        return made;
      });
    } catch (error) {
      // A broker that starts refuses connections, and one of a cluster has no leader at first.
      if (isOver() || performance.now() > until) throw error;
      await new Promise((resolve) => setTimeout(resolve, 200));
    }
  }
}

/** @param {Connection} connection @param {ReturnType<typeof streamConfigs>[number]} wanted */
async function settle(connection, wanted) {
  const { config } = await api(connection, `STREAM.INFO.${wanted.name}`, {}, noSuchStream);
  if (!config) await api(connection, `STREAM.CREATE.${wanted.name}`, wanted);
  // Once, the log's stream had the subjects of photos too; nothing was ever put there.
  else if (String(config.subjects) !== String(wanted.subjects))
    await api(connection, `STREAM.UPDATE.${wanted.name}`, { ...config, subjects: wanted.subjects });
}

/**
 * @template Answer
 * @param {string} broker
 * @param {import('./shop-keys.mjs').ShopKeys} keys
 * @param {(connection: Connection) => Promise<Answer>} ask
 */
export async function asAdmin(broker, keys, ask) {
  const connection = await connectAs(broker, keys.admin);
  try {
    return await ask(connection);
  } finally {
    await connection.close();
  }
}

/**
 * Log and photos together.
 *
 * @param {Connection} connection of the admin
 * @param {string} shop
 * @returns {Promise<StreamState | undefined>} undefined when there is no such stream
 */
export async function streamState(connection, shop) {
  const [log, photos] = await Promise.all(
    [streamName(shop), photoStreamName(shop)].map((name) =>
      api(connection, `STREAM.INFO.${name}`, { subjects_filter: '>' }, noSuchStream),
    ),
  );
  if (log.error) return undefined;
  const states = [log.state, ...(photos.error ? [] : [photos.state])];
  return {
    created: log.created,
    messages: states.reduce((sum, { messages }) => sum + messages, 0),
    bytes: states.reduce((sum, { bytes }) => sum + bytes, 0),
    subjects: Object.assign({}, ...states.map(({ subjects }) => subjects ?? {})),
  };
}

/**
 * Public keys of the users that are connected to the shop, once for each connection.
 *
 * @param {string} broker
 * @param {import('./shop-keys.mjs').ShopKeys} keys
 * @returns {Promise<string[]>}
 */
export async function usersConnected(broker, { watch, shop }) {
  const connection = await connectAs(broker, watch);
  try {
    const question = JSON.stringify({ auth: true, acc: streamName(shop), limit: 1024 });
    const answer = await connection.request('$SYS.REQ.SERVER.PING.CONNZ', question, { timeout: 5000 });
    /** @type {{ data?: { connections?: { authorized_user?: string }[] } }} */
    const { data } = answer.json();
    return (data?.connections ?? []).flatMap(({ authorized_user: user }) => (user ? [user] : []));
  } finally {
    await connection.close();
  }
}

/**
 * @param {Connection} connection
 * @param {string} subject behind "$JS.API."
 * @param {object} question
 * @param {number} [expected] code of an error that is an answer
 * @throws {Error} that says what the broker says
 */
async function api(connection, subject, question, expected) {
  const answer = await connection.request(`$JS.API.${subject}`, JSON.stringify(question), { timeout: 5000 });
  const said = answer.json();
  if (said.error && said.error.err_code !== expected)
    throw new Error(`The broker refuses: ${said.error.description}`);
  return said;
}
