/** Starts the hub: the app over HTTPS, the broker behind the same address, and the page about the certificate. */
import { copyFileSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { basename, join } from 'node:path';
import { makeStream } from './broker-admin.mjs';
import { forgetFormer, keysIn, writeWhole } from './data-folder.mjs';
import { freePorts, refuseTakenPort } from './free-ports.mjs';
import { keepRunning } from './keep-running.mjs';
import { certificatePage, fingerprints, joiningPage } from './pages.mjs';
import { publishApp } from './publish-app.mjs';
import { endLeftOver } from './running.mjs';
import { joiningLink } from './shop-keys.mjs';
import { template } from './template.mjs';
import { webServerAnswers } from './web-server-answers.mjs';
import { writeBrokerConfig, writeCaddyConfig } from './written-config.mjs';

/**
 * @typedef {object} Wanted
 * @property {import('./data-folder.mjs').Files} files
 * @property {string} built folder of the built app
 * @property {import('./programs.mjs').Programs} programs
 * @property {import('./data-folder.mjs').Place} place where tablets find it
 * @property {readonly string[]} hosts by which it may be called besides
 * @property {string | undefined} bind the only address to listen at; undefined for the whole network
 * @property {import('./written-config.mjs').Nodes | undefined} nodes undefined where the broker is the only one
 * @property {(line: string) => void} say
 * @property {() => number} now ms UTC
 * @property {AbortSignal} ending ends it, at any time
 */
/**
 * @typedef {object} Hub
 * @property {string} shop
 * @property {string} origin of the app
 * @property {string} link by which a tablet joins; it holds the shop's key
 * @property {string} broker address and port for the admin
 * @property {string} certificateAddress
 * @property {string} sha256 of the root certificate
 */
/**
 * @typedef {object} Started
 * @property {() => Hub} hub as it is now
 * @property {() => number[]} children pids of broker and web server
 * @property {() => Promise<void>} renew takes new keys from the data folder
 * @property {Promise<void>} closed when it was told to end and has
 */

/** What both say of themselves when all is well, and that the broker is behind a web server. */
const usual = /\[INF\]|Websocket not configured with TLS|"level":"(info|warn)"/;

/**
 * @param {Wanted} wanted
 * @throws {Error} when a port is taken, or broker or web server do not come up
 * @returns {Promise<Started>}
 */
export async function startHub({ files, built, programs, place, hosts, bind, nodes, say, now, ending }) {
  await endLeftOver(files);
  await refuseTakenPort('HUB_PORT', place.port, bind);
  await refuseTakenPort('HUB_CERTIFICATE_PORT', place.certificatePort, bind);
  for (const folder of [files.app, files.certificatePage, files.broker, files.caddy]) {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
  }
  publishApp({ built, app: files.app, seen: files.assets, now: now() });

  const [client, websocket] = (await freePorts(2)).map((port) => `127.0.0.1:${port}`);
  if (!client || !websocket) throw new Error('The system gave no ports.');
  const origin = `https://${place.host}${place.port === 443 ? '' : `:${place.port}`}`;
  const address = `${origin.replace('https:', 'wss:')}/sync`;
  // By number where there is one: a tablet that has seen the app asks for HTTPS at every port of its name (RFC 6797).
  const certificateAddress = `http://${hosts[0] ?? place.host}:${place.certificatePort}/`;

  /** @param {string} line */
  const pass = (line) => {
    if (!usual.test(line)) say(line);
  };
  let keys = keysIn(files);
  const isOver = () => ending.aborted;
  /** @type {import('./keep-running.mjs').Kept | undefined} */
  let broker;
  /** @type {import('./keep-running.mjs').Kept | undefined} */
  let webServer;
  const children = () => [broker?.pid(), webServer?.pid()].filter((pid) => pid !== undefined);
  // What a hub that is killed leaves behind is found by this at the next start.
  const writeDown = () =>
    writeWhole(files.running, {
      pid: process.pid,
      program: basename(process.argv[1] ?? ''),
      broker: client,
      shop: keys.shop,
      children: children().map((pid) => ({ pid, config: files.folder })),
    });

  const startBroker = () => {
    forgetFormer(files);
    writeBrokerConfig(files, keys, { client, websocket, nodes });
    broker = keepRunning({
      name: 'Broker',
      command: programs.broker,
      args: ['-c', files.brokerConfig],
      say: pass,
      started: writeDown,
    });
  };
  const startWebServer = () => {
    writeCaddyConfig(files, place, { hosts, bind, websocket });
    webServer = keepRunning({
      name: 'Web server',
      command: programs.webServer,
      args: ['run', '--config', files.caddyConfig, '--adapter', 'caddyfile'],
      // What it would else keep in the home of whoever starts it.
      env: { ...process.env, XDG_CONFIG_HOME: files.caddy, XDG_DATA_HOME: files.caddy },
      say: pass,
      started: writeDown,
    });
  };
  /** @returns {Promise<Hub>} */
  const settle = async () => {
    if (nodes) say('Waiting for the other brokers …');
    const [replicas, patience] = nodes ? [nodes.nodes.length, Number.POSITIVE_INFINITY] : [1, 120_000];
    await makeStream({ broker: client, keys, replicas, patience, isOver });
    const { sha256 } = fingerprints(readFileSync(files.root));
    const { shop } = keys;
    const link = joiningLink(keys, { origin, address });
    const page = joiningPage(template('joining.html'), { shop, link, origin, certificateAddress, sha256 });
    writeWhole(files.joining, page);
    writeDown();
    return { shop, origin, link, broker: client, certificateAddress, sha256 };
  };
  let renewing = Promise.resolve();
  const close = async () => {
    await renewing.catch(() => {});
    await webServer?.stop();
    await broker?.stop();
    rmSync(files.running, { force: true });
  };

  try {
    startBroker();
    startWebServer();
    await webServerAnswers(files, place, isOver);
    writeCertificatePage(files, origin);
    let hub = await settle();
    const takeNewKeys = async () => {
      await broker?.stop();
      if (isOver()) return;
      keys = keysIn(files);
      startBroker();
      hub = await settle();
    };
    return {
      hub: () => hub,
      children,
      renew() {
        renewing = renewing.catch(() => {}).then(takeNewKeys);
        return renewing;
      },
      closed: told(ending).then(close),
    };
  } catch (error) {
    await close();
    throw error;
  }
}

/** @param {AbortSignal} ending @returns {Promise<void>} */
const told = (ending) =>
  new Promise((resolve) => {
    if (ending.aborted) resolve();
    else ending.addEventListener('abort', () => resolve(), { once: true });
  });

/** @param {import('./data-folder.mjs').Files} files @param {string} origin */
function writeCertificatePage(files, origin) {
  const certificate = readFileSync(files.root);
  const page = certificatePage(template('certificate.html'), { origin, certificate });
  copyFileSync(files.root, join(files.certificatePage, 'root.crt'));
  writeWhole(join(files.certificatePage, 'page.css'), template('page.css'));
  writeWhole(join(files.certificatePage, 'index.html'), page);
}
