/** Where tablets find the hub, the same at every start: they keep their records by the address of the page. */
import { checkedHost, checkedPort } from './addresses.mjs';
import { readIfThere, writeWhole } from './data-folder.mjs';

/** @typedef {import('./data-folder.mjs').Place} Place */

const usual = { port: 8443, certificatePort: 8080 };
const here = ['localhost', '127.0.0.1'];

/**
 * What the person names, else what the first start has found.
 *
 * @param {object} what
 * @param {NodeJS.ProcessEnv} what.env
 * @param {import('./data-folder.mjs').Files} what.files
 * @param {readonly string[]} what.addresses of this machine in the shop's network, the likeliest first
 * @throws {Error} when a name or a port is none
 * @returns {{ place: Place, hosts: readonly string[], bind: string | undefined, remark: string | undefined }} `remark`: what a
 *   person should know
 */
export function placeOf({ env, files, addresses }) {
  /** @type {Partial<Place>} */
  const kept = readIfThere(files.place) ?? {};
  const [address] = addresses;
  const host = env.HUB_HOST ? checkedHost(env.HUB_HOST) : (kept.host ?? address ?? 'localhost');
  const place = {
    host,
    port: portOf(env, 'HUB_PORT', kept.port ?? usual.port),
    certificatePort: portOf(env, 'HUB_CERTIFICATE_PORT', kept.certificatePort ?? usual.certificatePort),
  };
  if (place.port === place.certificatePort) throw new Error('HUB_PORT and HUB_CERTIFICATE_PORT must differ.');
  const isHere = here.includes(host);
  // Without a network nothing is settled yet.
  if (!isHere || env.HUB_HOST) writeWhole(files.place, place);
  return {
    place,
    hosts: isHere ? [] : addresses,
    bind: isHere ? '127.0.0.1' : undefined,
    remark: remarkOn(host, addresses),
  };
}

/** @param {NodeJS.ProcessEnv} env @param {string} name @param {number} other */
function portOf(env, name, other) {
  const said = env[name];
  return said ? checkedPort(name, said) : other;
}

/** @param {string} host @param {readonly string[]} addresses */
function remarkOn(host, addresses) {
  if (here.includes(host))
    return 'Only this PC can reach the hub. HUB_HOST=<name or address> lets tablets in.';
  const isAddress = /^\d+([.]\d+){3}$/.test(host);
  if (!isAddress || addresses.includes(host)) return undefined;
  return [
    `This PC was ${host} when its hub began, and is now ${addresses.join(', ') || 'in no network'}: tablets look for it in vain.`,
    'Let the router give it the old address always (a DHCP reservation). To go on under another one,',
    `HUB_HOST=${addresses[0] ?? '<address>'} npm run hub: tablets then join anew, from a copy or from one that has all.`,
  ].join('\n');
}
