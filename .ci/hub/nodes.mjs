/** Several PCs as one hub: which there are, and which one this is. */
import { checkedHost, checkedPort } from './addresses.mjs';

const usualPort = '6222';

/**
 * HUB_NODES="bench=192.0.2.11 office=192.0.2.12 attic=192.0.2.13:6222" names all, HUB_NODE=bench the one that this is.
 *
 * @param {NodeJS.ProcessEnv} env
 * @throws {Error} when they do not fit together
 * @returns {import('./written-config.mjs').Nodes | undefined} undefined where the PC is alone
 */
export function nodesOf({ HUB_NODES, HUB_NODE }) {
  if (!HUB_NODES && !HUB_NODE) return undefined;
  const nodes = (HUB_NODES ?? '')
    .split(/[\s,]+/)
    .filter(Boolean)
    .map(nodeOf);
  const names = new Set(nodes.map(({ name }) => name));
  if (nodes.length !== 3 || names.size !== 3) {
    throw new Error(
      'HUB_NODES names three PCs, for instance "bench=192.0.2.11 office=192.0.2.12 attic=192.0.2.13".',
    );
  }
  if (!HUB_NODE || !names.has(HUB_NODE))
    throw new Error(`HUB_NODE says which one this is: ${[...names].join(', ')}.`);
  return { own: HUB_NODE, nodes };
}

/** @param {string} said @returns {import('./written-config.mjs').Node} */
function nodeOf(said) {
  const {
    name,
    host,
    port = usualPort,
  } = /^(?<name>[a-z0-9-]+)=(?<host>[^:]+)(:(?<port>\d+))?$/.exec(said)?.groups ?? {};
  if (!name || !host) throw new Error(`“${said}” of HUB_NODES is no name=address.`);
  return { name, address: `${checkedHost(host)}:${checkedPort('HUB_NODES', port)}` };
}
