/** Whether a hub runs on a data folder, and what one that was killed has left behind. */
import { execFileSync } from 'node:child_process';
import { readFileSync, rmSync } from 'node:fs';
import { readIfThere } from './data-folder.mjs';

/**
 * @typedef {object} Running what a hub writes down while it runs
 * @property {number} pid of the hub
 * @property {string} program name of its script
 * @property {string} broker address and port for the admin
 * @property {string} shop
 * @property {readonly { pid: number, config: string }[]} children
 */

/** The hub that runs on the folder. @param {import('./data-folder.mjs').Files} files @returns {Running | undefined} */
export function runningHub(files) {
  /** @type {Running | undefined} */
  const said = readIfThere(files.running);
  return said && said.pid !== process.pid && commandOf(said.pid).includes(said.program) ? said : undefined;
}

/** Ends programs of a hub that was killed and could not end them: they hold its ports. @param {import('./data-folder.mjs').Files} files */
export async function endLeftOver(files) {
  /** @type {Running | undefined} */
  const said = readIfThere(files.running);
  const children = said?.children ?? [];
  // A number that the system has given to another program since does not name our configuration.
  const isOurs = (/** @type {{ pid: number, config: string }} */ { pid, config }) =>
    commandOf(pid).includes(config);
  for (const child of children.filter(isOurs)) process.kill(child.pid, 'SIGTERM');
  for (let tries = 0; children.some(isOurs) && tries < 100; tries++) {
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  rmSync(files.running, { force: true });
}

/** The command line of a process; empty when there is none. @param {number} pid */
function commandOf(pid) {
  try {
    if (process.platform === 'linux')
      return readFileSync(`/proc/${pid}/cmdline`, 'utf8').replaceAll('\0', ' ');
    return execFileSync('ps', ['-o', 'args=', '-p', String(pid)], { encoding: 'utf8' });
  } catch {
    return '';
  }
}
