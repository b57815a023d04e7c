/** The broker's configuration: the templates of shared/hub with the rights of every seat. Pure. */
import { fill } from './template.mjs';

/**
 * @typedef {object} BrokerShop
 * @property {string} shop its name
 * @property {string} admin public key of who makes the stream
 * @property {readonly { seat: string, key: string }[]} seats public keys
 */
/**
 * @typedef {object} Broker
 * @property {string} name of the server
 * @property {string} listen address and port for the hub itself
 * @property {string} websocket address and port behind the web server
 * @property {string} store folder of what is kept
 * @property {string} room how much may be kept at most, e.g. "20GB"
 * @property {number} connections at most
 * @property {string} watch public key of who may look at connections
 * @property {readonly BrokerShop[]} shops
 * @property {Cluster} [cluster] left out where the broker is the only one
 */
/**
 * @typedef {object} Cluster
 * @property {string} listen address and port for the other brokers
 * @property {string} password that they share
 * @property {readonly string[]} routes address and port of each broker
 */

/** @param {Broker} broker @param {{ broker: string, cluster: string }} templates texts of shared/hub */
export function brokerConfig(broker, templates) {
  return fill(templates.broker, {
    name: text(broker.name),
    listen: text(broker.listen),
    websocket: text(broker.websocket),
    store: text(broker.store),
    room: broker.room,
    connections: String(broker.connections),
    watch: broker.watch,
    accounts: broker.shops.map(account).join('\n'),
    cluster: broker.cluster ? clusterPart(broker.cluster, templates.cluster) : '',
  });
}

/** The name of the stream of a shop's log, and of its account. @param {string} shop */
export const streamName = (shop) => `TW_${shop}`;
/** The name of the stream of a shop's photos. @param {string} shop */
export const photoStreamName = (shop) => `${streamName(shop)}_ph`;

/** Photos of ten years, 20 a day of 300 kB; what is left of the broker's room is the log's. */
const mostPhotoBytes = 16_000_000_000;

/**
 * What the broker keeps of a shop: everything, for good. No seat can delete; a roll-up puts one message in the place of
 * those of a subject. Photos lie apart, so that nobody who reads the log has to read past them, and they cannot fill its room.
 *
 * @param {string} shop
 * @param {number} replicas on how many brokers it is kept
 */
export const streamConfigs = (shop, replicas) => [
  { ...kept(replicas), name: streamName(shop), subjects: [`tw.${shop}.ev.>`, `tw.${shop}.run.>`] },
  {
    ...kept(replicas),
    name: photoStreamName(shop),
    subjects: [`tw.${shop}.ph.>`],
    max_bytes: mostPhotoBytes,
  },
];

/** @param {number} replicas */
const kept = (replicas) => ({
  storage: 'file',
  retention: 'limits',
  discard: 'new',
  num_replicas: replicas,
  max_consumers: -1,
  max_msgs: -1,
  max_bytes: -1,
  max_age: 0,
  max_msgs_per_subject: -1,
  max_msg_size: -1,
  // Two minutes, in nanoseconds. Only an economy: tablets know entries by their identity.
  duplicate_window: 120_000_000_000,
  deny_delete: true,
  deny_purge: false,
  allow_rollup_hdrs: true,
  allow_direct: true,
});

/** Where a seat may send, and where it may listen. @param {string} shop @param {string} seat */
export function rightsOf(shop, seat) {
  const own = [`ev.${seat}`, `run.${seat}.>`, `ph.${seat}.>`].map((subject) => `tw.${shop}.${subject}`);
  // Ordered readers need no more: they neither acknowledge nor are they pushed to.
  const api = [streamName(shop), photoStreamName(shop)].flatMap((stream) =>
    [
      `STREAM.INFO.${stream}`,
      ...['CREATE', 'INFO', 'MSG.NEXT', 'DELETE'].map((what) => `CONSUMER.${what}.${stream}.>`),
    ].map((subject) => `$JS.API.${subject}`),
  );
  return {
    publish: [...own, ...api],
    subscribe: [`_INBOX_${shop}_${seat}.>`],
  };
}

/** @param {BrokerShop} shop */
function account({ shop, admin, seats }) {
  const users = seats.map(({ seat, key }) => {
    const { publish, subscribe } = rightsOf(shop, seat);
    return [
      `      # seat ${seat}`,
      `      { nkey: ${key}, permissions: {`,
      `        publish: { allow: ${list(publish)} }`,
      `        subscribe: { allow: ${list(subscribe)} }`,
      '      } }',
    ].join('\n');
  });
  return [
    `  ${streamName(shop)}: {`,
    '    jetstream: enabled',
    '    users: [',
    '      # makes the stream; kept by the hub',
    `      { nkey: ${admin} }`,
    ...users,
    '    ]',
    '  }',
  ].join('\n');
}

/** @param {Cluster} cluster @param {string} template */
const clusterPart = ({ listen, password, routes }, template) =>
  fill(template, {
    listen: text(listen),
    password: text(password),
    routes: routes.map((route) => `    ${text(`nats-route://node:${password}@${route}`)}`).join('\n'),
  });

/** A text as nats-server reads it. @param {string} value */
const text = (value) => JSON.stringify(value);
/** @param {readonly string[]} values */
const list = (values) => `[${values.map(text).join(', ')}]`;
