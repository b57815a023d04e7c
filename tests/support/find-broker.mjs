/** Finds a NATS server to test with; on Debian, and where that is wanted, it is installed. Without one the run fails, and skips nothing. */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';

/**
 * The path of a server that was seen to start. BROKER_PATH, if set, is the only one tried.
 *
 * @throws {Error} when none can be found or installed
 * @returns {string}
 */
export function findBroker() {
  const named = process.env.BROKER_PATH;
  const places = named ? [named] : ['/usr/sbin/nats-server', '/usr/local/bin/nats-server', 'nats-server'];
  const found = places.find(starts) ?? (named ? undefined : debianBroker());
  if (found) return found;
  throw new Error(
    `No broker to test with: tried ${places.join(', ')}. Install nats-server (on Debian: apt-get install nats-server), ` +
      'or name one: BROKER_PATH=/path/to/nats-server npm test',
  );
}

/** @param {string} path */
function starts(path) {
  return spawnSync(path, ['--version'], { stdio: 'ignore' }).status === 0;
}

/** On Debian as root, where it is wanted (CI or INSTALL_BROKER=1). */
function debianBroker() {
  const wanted = process.env.CI || process.env.INSTALL_BROKER === '1';
  const release = existsSync('/etc/os-release') ? readFileSync('/etc/os-release', 'utf8') : '';
  if (!wanted || !/^ID=debian$/m.test(release) || process.getuid?.() !== 0) return undefined;
  console.log('Installing a broker from Debian …');
  const apt = (/** @type {string[]} */ ...args) =>
    spawnSync('apt-get', ['-o', 'DPkg::Lock::Timeout=600', ...args], {
      stdio: ['ignore', 'ignore', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
  apt('update');
  apt('install', '-y', '--no-install-recommends', 'nats-server');
  return ['/usr/sbin/nats-server'].find(starts);
}
