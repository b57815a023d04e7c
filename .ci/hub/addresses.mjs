/** Under which addresses the tablets find this machine. Pure. */

/** Bridges, tunnels and machines inside this one: no tablet is there. */
const within = /^(docker|br-|veth|virbr|vmnet|vboxnet|tun|tap|utun|wg|zt|lxc|lxd|cni|flannel)/;

/**
 * The IPv4 addresses in the shop's network, the likeliest first. A tablet keeps its records by the address of the page, and
 * those of IPv6 change by themselves.
 *
 * @param {NodeJS.Dict<import('node:os').NetworkInterfaceInfo[]>} interfaces as `os.networkInterfaces()` gives them
 * @returns {string[]}
 */
export function lanAddresses(interfaces) {
  return Object.entries(interfaces)
    .flatMap(([name, addresses = []]) => addresses.map((address) => ({ name, ...address })))
    .filter(
      ({ family, internal, address }) => family === 'IPv4' && !internal && !address.startsWith('169.254.'),
    )
    .toSorted((one, other) => rank(one) - rank(other))
    .map(({ address }) => address);
}

/** @param {{ name: string, address: string }} where */
const rank = ({ name, address }) => (within.test(name) ? 2 : 0) + (isPrivate(address) ? 0 : 1);

/** Of a network of its own (RFC 1918). @param {string} address */
const isPrivate = (address) => /^(10[.]|192[.]168[.]|172[.](1[6-9]|2\d|3[01])[.])/.test(address);

/**
 * A name or IPv4 address that may stand in the address of a page.
 *
 * @param {string} host
 * @throws {Error} when it is none
 */
export function checkedHost(host) {
  const fits = /^[a-z0-9]([a-z0-9-]*[a-z0-9])?([.][a-z0-9]([a-z0-9-]*[a-z0-9])?)*$/i.test(host);
  if (!fits || host.length > 253)
    throw new Error(`“${host}” is no name and no address of a machine. Try HUB_HOST=tally.lan`);
  return host.toLowerCase();
}

/** @param {string} name of the variable @param {string} value @throws {Error} when it is no port */
export function checkedPort(name, value) {
  const port = Number(value);
  if (!Number.isInteger(port) || port < 1 || port > 65535) throw new Error(`${name}=${value} is no port.`);
  return port;
}
