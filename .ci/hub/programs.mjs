/** Finds the two programs that the hub starts, and installs them from Debian where that is wanted. */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { installFromDebian } from '../debian.mjs';

/** @typedef {{ broker: string, webServer: string }} Programs paths */

/** Where Debian puts servers, which is not in every user's PATH. */
const places = ['/usr/local/bin', '/usr/local/sbin', '/usr/bin', '/usr/sbin', '/opt/homebrew/bin'];
const packages = { broker: 'nats-server', webServer: 'caddy' };
/** Words that make each say its version. */
const versionWords = { broker: ['--version'], webServer: ['version'] };

/**
 * Programs that were seen to start. HUB_NATS and HUB_CADDY, where set, are the only ones tried. Missing ones are installed
 * where CI or INSTALL_HUB=1 asks for it.
 *
 * @throws {Error} that says what to do when one is missing
 * @returns {Programs}
 */
export function findPrograms(env = process.env) {
  const missing = packagesMissing(present(env));
  if (missing.length > 0 && (env.CI || env.INSTALL_HUB === '1')) {
    installFromDebian(missing, { alsoLike: true });
    // Both would run as services of their own.
    if (existsSync('/run/systemd/system'))
      spawnSync('systemctl', ['disable', '--now', ...missing], { stdio: 'ignore' });
  }
  const { broker, webServer } = present(env);
  if (broker && webServer) return { broker, webServer };
  throw new Error(
    [
      `The hub needs ${packagesMissing({ broker, webServer }).join(' and ')}. On Debian or Ubuntu:`,
      '  sudo apt-get install nats-server caddy',
      '  sudo systemctl disable --now nats-server caddy',
      '(the second since both would run as services of their own, which the hub has no use for).',
      'Elsewhere both are single files from their projects: nats-server 2.9 or later, caddy 2.6 or later. Put them into the',
      'PATH, or name them: HUB_NATS=/path/to/nats-server HUB_CADDY=/path/to/caddy npm run hub',
    ].join('\n'),
  );
}

/** @typedef {{ broker: string | undefined, webServer: string | undefined }} Found */

/** @param {Found} found */
const packagesMissing = ({ broker, webServer }) => [
  ...(broker ? [] : [packages.broker]),
  ...(webServer ? [] : [packages.webServer]),
];

/** @param {NodeJS.ProcessEnv} env @returns {Found} */
function present(env) {
  /** @param {keyof Programs} name @param {string | undefined} named */
  const find = (name, named) => {
    const tried = named ? [named] : [packages[name], ...places.map((place) => `${place}/${packages[name]}`)];
    return tried.find((path) => spawnSync(path, versionWords[name], { stdio: 'ignore' }).status === 0);
  };
  return { broker: find('broker', env.HUB_NATS), webServer: find('webServer', env.HUB_CADDY) };
}
