/** Installs packages of Debian. */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';

/**
 * As root on Debian, or on what is made of it where `alsoLike` says so; anywhere else nothing happens. Whether it went well is
 * for the caller to see by what is there afterwards. Services that a package would begin are left alone.
 *
 * @param {readonly string[]} names
 * @param {{ alsoLike?: boolean }} [options]
 */
export function installFromDebian(names, { alsoLike = false } = {}) {
  const release = existsSync('/etc/os-release') ? readFileSync('/etc/os-release', 'utf8') : '';
  const isDebian = (alsoLike ? /^ID(_LIKE)?=.*debian/m : /^ID=debian$/m).test(release);
  if (!isDebian || process.getuid?.() !== 0) return;
  console.log(`Installing ${names.join(' and ')} from Debian …`);
  const apt = (/** @type {string[]} */ ...args) =>
    spawnSync('apt-get', ['-o', 'DPkg::Lock::Timeout=600', ...args], {
      stdio: ['ignore', 'ignore', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive', RUNLEVEL: '1' },
    });
  apt('update');
  apt('install', '-y', '--no-install-recommends', ...names);
}
