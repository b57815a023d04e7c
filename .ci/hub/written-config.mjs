/** Writes what the broker and the web server are told at their start into the data folder. */
import { hkdfSync } from 'node:crypto';
import { securityHeaders } from '../content-security-policy.mjs';
import { brokerConfig } from './broker-config.mjs';
import { caddyConfig } from './caddy-config.mjs';
import { writeWhole } from './data-folder.mjs';
import { userKey } from './nkey.mjs';
import { openPart } from './shop-keys.mjs';
import { template } from './template.mjs';

/** @typedef {{ name: string, address: string }} Node a broker of a cluster, with its address and port for the others */
/** @typedef {{ own: string, nodes: readonly Node[] }} Nodes `own` is the name of this one */

/**
 * @param {import('./data-folder.mjs').Files} files
 * @param {import('./shop-keys.mjs').ShopKeys} keys
 * @param {{ client: string, websocket: string, nodes: Nodes | undefined }} where addresses and ports
 */
export function writeBrokerConfig(files, keys, { client, websocket, nodes }) {
  const own = nodes?.nodes.find(({ name }) => name === nodes.own);
  const cluster = nodes &&
    own && {
      listen: own.address,
      // All of them have the keys of the shop, and only they.
      password: Buffer.from(hkdfSync('sha256', keys.admin, '', 'tallywright cluster', 16)).toString('hex'),
      routes: nodes.nodes.map(({ address }) => address),
    };
  const config = brokerConfig(
    {
      name: own?.name ?? 'hub',
      listen: client,
      websocket,
      store: files.broker,
      room: '20GB',
      connections: 256,
      watch: userKey(keys.watch).public,
      shops: [openPart(keys)],
      ...(cluster && { cluster }),
    },
    { broker: template('broker.conf'), cluster: template('cluster.conf') },
  );
  writeWhole(files.brokerConfig, config);
}

/**
 * @param {import('./data-folder.mjs').Files} files
 * @param {import('./data-folder.mjs').Place} place
 * @param {{ hosts: readonly string[], bind: string | undefined, websocket: string }} where
 */
export function writeCaddyConfig(files, place, { hosts, bind, websocket }) {
  const config = caddyConfig(
    {
      hosts: [...new Set([place.host, ...hosts, 'localhost'])],
      port: place.port,
      certificatePort: place.certificatePort,
      ...(bind && { bind }),
      storage: files.caddy,
      authority: `Tallywright ${place.host}`,
      app: files.app,
      certificatePage: files.certificatePage,
      broker: websocket,
      headers: securityHeaders,
    },
    template('Caddyfile'),
  );
  writeWhole(files.caddyConfig, config);
}
