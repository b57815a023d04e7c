/** When the web server is up. */
import { existsSync, readFileSync } from 'node:fs';
import { get } from 'node:https';

/**
 * Waits until the app is served under a certificate of the shop's own root.
 *
 * @param {import('./data-folder.mjs').Files} files
 * @param {import('./data-folder.mjs').Place} place
 * @param {() => boolean} isOver
 */
export async function webServerAnswers(files, { port }, isOver) {
  const until = performance.now() + 60_000;
  while (!(existsSync(files.root) && (await answers(port, readFileSync(files.root))))) {
    if (isOver() || performance.now() > until) {
      throw new Error(
        `The web server does not come up at port ${port}: see what it says above. HUB_PORT= chooses another one.`,
      );
    }
    await new Promise((resolve) => setTimeout(resolve, 200));
  }
}

/** @param {number} port @param {Buffer} ca @returns {Promise<boolean>} */
const answers = (port, ca) =>
  new Promise((resolve) => {
    const here = { host: '127.0.0.1', servername: 'localhost', headers: { Host: `localhost:${port}` } };
    const request = get({ ...here, port, ca, path: '/', timeout: 2000 }, (response) => {
      response.resume();
      resolve(response.statusCode === 200);
    });
    request.on('timeout', () => request.destroy());
    request.on('error', () => resolve(false));
  });
