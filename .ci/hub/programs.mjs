/** Finds the two programs that the hub starts, and installs them from Debian where that is wanted. */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';

/** @typedef {{ broker: string, webServer: string }} Programs paths */

/** Where Debian puts servers, which is not in every user's PATH. */
const places = ['/usr/local/bin', '/usr/local/sbin', '/usr/bin', '/usr/sbin', '/opt/homebrew/bin'];
const packages = { broker: 'nats-server', webServer: 'caddy' };
/** Words that make each say its version. */
const versionWords = { broker: ['--version'], webServer: ['version'] };

/**
 * Programs that were seen to start. HUB_NATS and HUB_CADDY, where set, are the only ones tried.
 *
 * @throws {Error} that says what to do when one is missing
 * @returns {Programs}
 */
export function findPrograms(env = process.env) {
  const missing = packagesMissing(present(env));
  if (missing.length > 0) installFromDebian(missing, env);
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

/** As root on Debian, where it is wanted (CI or INSTALL_HUB=1). @param {readonly string[]} names @param {NodeJS.ProcessEnv} env */
function installFromDebian(names, env) {
  const wanted = env.CI || env.INSTALL_HUB === '1';
  const release = existsSync('/etc/os-release') ? readFileSync('/etc/os-release', 'utf8') : '';
  if (!wanted || !/^ID(_LIKE)?=.*debian/m.test(release) || process.getuid?.() !== 0) return;
  console.log(`Installing ${names.join(' and ')} from Debian …`);
  const run = (/** @type {string} */ command, /** @type {string[]} */ ...args) =>
    spawnSync(command, args, {
      stdio: ['ignore', 'ignore', 'inherit'],
      // Else the package would start services, one of them at port 80.
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive', RUNLEVEL: '1' },
    });
  const apt = (/** @type {string[]} */ ...args) => run('apt-get', '-o', 'DPkg::Lock::Timeout=600', ...args);
  apt('update');
  apt('install', '-y', '--no-install-recommends', ...names);
  if (existsSync('/run/systemd/system')) run('systemctl', 'disable', '--now', ...names);
}
