/** The web server's configuration: the template of shared/hub with addresses, folders and the app's headers. Pure. */
import { fill } from './template.mjs';

/**
 * @typedef {object} WebServer
 * @property {readonly string[]} hosts names and addresses of this machine that tablets may use
 * @property {number} port of the app, HTTPS
 * @property {number} certificatePort of the page about the certificate, plain HTTP
 * @property {string} [bind] the only address to listen at; left out, the whole network
 * @property {string} storage folder of its certificates
 * @property {string} authority what its root certificate is called on a tablet
 * @property {string} app folder of the built app
 * @property {string} certificatePage folder of that page
 * @property {string} broker address and port of the broker's websocket
 * @property {Readonly<Record<string, string>>} headers of every answer
 */

/** @param {WebServer} server @param {string} template text of shared/hub/Caddyfile */
export function caddyConfig(server, template) {
  return fill(template, {
    storage: text(server.storage),
    authority: text(server.authority),
    intermediate: text(`${server.authority}, signing`),
    addresses: server.hosts.map((host) => `https://${host}:${server.port}`).join(', '),
    bind: server.bind ? `bind ${server.bind}` : '# listens on every address of this machine',
    headers: Object.entries(server.headers)
      .map(([name, value]) => `\theader ${name} ${text(value)}`)
      .join('\n'),
    broker: server.broker,
    port: String(server.port),
    app: text(server.app),
    certificatePort: String(server.certificatePort),
    certificatePage: text(server.certificatePage),
  });
}

/**
 * A text as caddy reads it: in quotes only `\"` is an escape. Braces would be taken for a placeholder.
 *
 * @param {string} value
 * @throws {Error} when it cannot stand in the configuration
 */
function text(value) {
  if (/[{}\n]/.test(value) || value.endsWith('\\'))
    throw new Error(`The web server cannot be told ${JSON.stringify(value)}.`);
  return `"${value.replaceAll('"', '\\"')}"`;
}
