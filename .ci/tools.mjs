/** Runs the command-line tools that the project installs. */
import { spawnSync } from 'node:child_process';
import { delimiter } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));

/**
 * The exit code of `command`, a line for the shell. Its output goes where ours goes.
 *
 * @param {string} command
 * @param {NodeJS.ProcessEnv} [extra] environment variables to add
 */
export function run(command, extra = {}) {
  const PATH = `${root}node_modules/.bin${delimiter}${process.env.PATH}`;
  const { status } = spawnSync(command, {
    cwd: root,
    shell: true,
    stdio: 'inherit',
    env: { ...process.env, ...extra, PATH },
  });
  return status ?? 1;
}

/**
 * Builds the app as it is shipped, whatever kind of run asks for it.
 *
 * @param {string} [folder] where to
 * @param {string} [version] the version that it is to call itself, when not the one of package.json
 * @throws {Error} when it cannot be built
 */
export function buildApp(folder = `${root}dist`, version) {
  const command = `vite build --logLevel warn --emptyOutDir --outDir ${quoted([folder])}`;
  const named = version === undefined ? {} : { APP_VERSION: version };
  if (run(command, { NODE_ENV: 'production', ...named }) !== 0) throw new Error('The app cannot be built.');
}

/** Arguments as one safe piece of a command line. @param {string[]} words */
export const quoted = (words) => words.map((word) => JSON.stringify(word)).join(' ');
