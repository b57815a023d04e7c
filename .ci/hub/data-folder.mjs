/** What the hub keeps between starts, in a folder that only its owner may read: keys, and where it is found. */
import { randomBytes } from 'node:crypto';
import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeSync,
} from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { streamName } from './broker-config.mjs';
import { newShopKeys } from './shop-keys.mjs';

/** @typedef {import('./shop-keys.mjs').ShopKeys} ShopKeys */
/** @typedef {{ host: string, port: number, certificatePort: number }} Place where tablets find the hub */
/** @typedef {ReturnType<typeof filesIn>} Files */

/**
 * The folder that HUB_DATA names, or one in the user's data directory (XDG Base Directory Specification).
 *
 * @param {NodeJS.ProcessEnv} env
 */
export function folderOf(env) {
  if (env.HUB_DATA) return env.HUB_DATA;
  const base =
    env.XDG_DATA_HOME ||
    (process.platform === 'win32' && env.LOCALAPPDATA) ||
    join(homedir(), '.local', 'share');
  return join(base, 'tallywright-hub');
}

/** What lies where. @param {string} folder */
export const filesIn = (folder) => ({
  folder,
  keys: join(folder, 'keys.json'),
  former: join(folder, 'former-keys'),
  place: join(folder, 'place.json'),
  running: join(folder, 'running.json'),
  joining: join(folder, 'joining.html'),
  app: join(folder, 'app'),
  assets: join(folder, 'assets.json'),
  certificatePage: join(folder, 'certificate'),
  broker: join(folder, 'broker'),
  brokerConfig: join(folder, 'broker.conf'),
  caddy: join(folder, 'caddy'),
  caddyConfig: join(folder, 'Caddyfile'),
  root: join(folder, 'caddy', 'pki', 'authorities', 'local', 'root.crt'),
});

/** @param {string} folder @returns {Files} */
export function openFolder(folder) {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  return filesIn(folder);
}

/**
 * The keys of the shop, made at the first start and never again.
 *
 * @param {Files} files
 * @throws {Error} when they are there and cannot be read: new ones would lock every tablet out
 * @returns {ShopKeys}
 */
export function keysIn(files) {
  if (existsSync(files.keys)) return readKeys(files.keys);
  const keys = newShopKeys(randomBytes);
  writeKeys(files.keys, keys);
  return keys;
}

/**
 * Puts new keys in the place of the old ones, which are kept beside them.
 *
 * @param {Files} files
 * @param {{ forget: boolean }} choice whether what the broker holds under the old ones is to go, and they with it
 * @returns {{ old: ShopKeys, keys: ShopKeys }}
 */
export function renewKeys(files, { forget }) {
  const old = readKeys(files.keys);
  mkdirSync(files.former, { recursive: true, mode: 0o700 });
  writeKeys(join(files.former, `${old.shop}.json`), old, { forget });
  const keys = newShopKeys(randomBytes);
  writeKeys(files.keys, keys);
  return { old, keys };
}

/** Deletes what the broker holds of shops that are to be forgotten. It must not run meanwhile. @param {Files} files */
export function forgetFormer({ former, broker }) {
  for (const name of existsSync(former) ? readdirSync(former) : []) {
    const path = join(former, name);
    const { shop, forget } = readJson(path);
    if (forget !== true || name !== `${shop}.json`) continue;
    rmSync(join(broker, 'jetstream', streamName(shop)), { recursive: true, force: true });
    rmSync(path);
  }
}

/** @param {string} path @returns {ShopKeys} */
function readKeys(path) {
  const said = readJson(path);
  const [key, admin, watch] = [said.key, said.admin, said.watch].map((raw) =>
    Buffer.from(String(raw), 'base64url'),
  );
  const isWhole =
    said.v === 1 &&
    /^[a-z0-9]{4,32}$/.test(said.shop) &&
    key?.length === 16 &&
    admin?.length === 32 &&
    watch?.length === 32;
  if (!isWhole || !key || !admin || !watch) {
    throw new Error(
      `${path} is damaged. Put it back from a backup: with other keys every tablet must join anew.`,
    );
  }
  return { shop: said.shop, key, admin, watch };
}

/** @param {string} path @param {ShopKeys} keys @param {{ forget?: boolean }} [more] */
function writeKeys(path, { shop, key, admin, watch }, more = {}) {
  const [k, a, w] = [key, admin, watch].map((raw) => Buffer.from(raw).toString('base64url'));
  writeWhole(path, { v: 1, shop, key: k, admin: a, watch: w, ...more });
}

/** What was written there; undefined when there is nothing. @param {string} path @throws {Error} when it is damaged */
export const readIfThere = (path) => (existsSync(path) ? readJson(path) : undefined);

/** @param {string} path */
function readJson(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch (error) {
    throw new Error(`${path} cannot be read: ${String(error)}`);
  }
}

/**
 * Writes a file that is there as a whole or not at all, for its owner alone.
 *
 * @param {string} path
 * @param {string | object} content a text, or what is written as JSON
 */
export function writeWhole(path, content) {
  const beside = `${path}.new`;
  const file = openSync(beside, 'w', 0o600);
  try {
    writeSync(file, typeof content === 'string' ? content : `${JSON.stringify(content, undefined, 2)}\n`);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
  renameSync(beside, path);
}
