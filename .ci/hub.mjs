/**
 * One PC of the shop as the meeting place of its tablets: `npm run hub`. It serves the app over HTTPS and runs the broker that
 * the tablets meet through. `npm run hub -- help` says what else there is.
 */
import { existsSync, readFileSync } from 'node:fs';
import { networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { installWhatIsMissing } from './install.mjs';
import { buildApp, root } from './tools.mjs';

const help = `npm run hub                          starts the hub; Ctrl+C ends it
npm run hub -- join                  shows the joining picture again
npm run hub -- status                what the broker holds, and who is connected
npm run hub -- new-key               shuts out every tablet, lost ones too: the others join anew
npm run hub -- new-key --forget-old  the same, and deletes what the broker holds under the old key

HUB_HOST=name              the name or address by which tablets find this PC (else its address in the network)
HUB_PORT=8443              of the app
HUB_CERTIFICATE_PORT=8080  of the page about the certificate
HUB_DATA=folder            where keys, certificate and entries are kept
HUB_BUILT=folder           of a build that was made elsewhere
HUB_NODES, HUB_NODE        several PCs as one hub: see shared/hub/guide.md`;

installWhatIsMissing();

const { lanAddresses } = await import('./hub/addresses.mjs');
const { folderOf, openFolder, keysIn, renewKeys } = await import('./hub/data-folder.mjs');
const { nodesOf } = await import('./hub/nodes.mjs');
const { inLines, symbolInTerminal } = await import('./hub/pages.mjs');
const { placeOf } = await import('./hub/place.mjs');
const { findPrograms } = await import('./hub/programs.mjs');
const { isOutOfDate } = await import('./hub/publish-app.mjs');
const { runningHub } = await import('./hub/running.mjs');
const { startHub } = await import('./hub/start-hub.mjs');
const { statusOf } = await import('./hub/status.mjs');

const files = openFolder(folderOf(process.env));
/** Tells a hub that runs to look at its keys; that of a terminal which is closed ends it, like Ctrl+C. */
const newKeys = 'SIGUSR2';
const say = (/** @type {string} */ line) => console.log(line);

/** @param {AbortSignal} ending */
async function run(ending) {
  const other = runningHub(files);
  if (other) throw new Error(`A hub runs on ${files.folder} already (process ${other.pid}).`);
  const programs = findPrograms();
  const nodes = nodesOf(process.env);
  const addresses = lanAddresses(networkInterfaces());
  const { remark, ...where } = placeOf({ env: process.env, files, addresses });
  const built = process.env.HUB_BUILT || buildWhereNeeded();
  const started = await startHub({ files, built, programs, nodes, say, now: Date.now, ending, ...where });
  present(started.hub());
  if (remark) say(`\n${remark}`);
  process.on(newKeys, () => {
    say('New keys: the broker starts anew.');
    started.renew().then(
      () => present(started.hub()),
      (error) => say(String(error)),
    );
  });
  await started.closed;
}

function buildWhereNeeded() {
  const built = join(root, 'dist');
  const sources = ['src', 'shared', 'public', 'index.html', 'vite.config.ts', 'package-lock.json'];
  if (
    isOutOfDate(
      built,
      sources.map((name) => join(root, name)),
    )
  ) {
    say('Building the app …');
    buildApp(built);
  }
  return built;
}

/** @param {import('./hub/start-hub.mjs').Hub} hub */
function present({ origin, link, certificateAddress, sha256 }) {
  say(`
Tallywright is at ${origin}/ (Ctrl+C ends it)

1. On each tablet, once: trust this shop's certificate. The page ${certificateAddress} tells how. It must show
   ${inLines(sha256).join('\n   ')}
2. Then join: point the tablet's camera at the picture.`);
  presentLink(link);
}

/** The link holds the shop's key: it is shown to a person, and not written into a log. @param {string} link */
function presentLink(link) {
  if (process.stdout.isTTY) say(`\n${symbolInTerminal(link)}\n${link}\n`);
  say(
    `The picture is in ${pathToFileURL(files.joining)} too. Whoever has seen it can read and write in the shop.`,
  );
}

/** @returns {import('./hub/running.mjs').Running} */
function hubThatRuns() {
  const running = runningHub(files);
  if (!running) throw new Error(`No hub runs on ${files.folder}: npm run hub starts one.`);
  return running;
}

/** @param {boolean} forget */
async function renew(forget) {
  const running = runningHub(files);
  const { old, keys } = renewKeys(files, { forget });
  say(`The shop is now ${keys.shop}. Nobody gets in with the key of ${old.shop} any more.`);
  say('Every tablet that is still yours joins anew: it then offers all that it has.');
  if (running) process.kill(running.pid, newKeys);
  else say('npm run hub shows the new picture.');
}

const ending = new AbortController();
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) {
  process.on(signal, () => {
    if (!ending.signal.aborted) say('Ending …');
    ending.abort();
  });
}

/** @type {Record<string, () => Promise<void> | void>} */
const commands = {
  run: () => run(ending.signal),
  join: () => {
    const link =
      existsSync(files.joining) &&
      /href="([^"]*#\/join\/[^"]*)"/.exec(readFileSync(files.joining, 'utf8'))?.[1];
    if (!link) throw new Error('There is no picture yet: npm run hub makes it.');
    presentLink(link);
  },
  status: async () => {
    const { broker } = hubThatRuns();
    for (const line of await statusOf(keysIn(files), broker)) say(line);
  },
  'new-key': () => renew(process.argv.includes('--forget-old')),
  help: () => say(help),
};

const [name = 'run'] = process.argv.slice(2);
try {
  const command = commands[name];
  if (!command) throw new Error(`There is no “${name}”.\n\n${help}`);
  await command();
} catch (error) {
  if (!ending.signal.aborted) console.error(error instanceof Error ? error.message : error);
  process.exitCode = ending.signal.aborted ? 0 : 1;
}
