/** Builds the app and serves it to this machine, for trying it out: `npm start`, or `PORT=8080 npm start`. */
import { installWhatIsMissing } from './install.mjs';
import { buildApp, root } from './tools.mjs';

const usualPort = 4173;

installWhatIsMissing();
buildApp();

const { serveBuild } = await import('./serve-build.mjs');

/** @param {number} port @returns {Promise<import('./serve-build.mjs').Served>} */
const serveFrom = (port) =>
  serveBuild({ folder: `${root}dist`, port }).catch((error) => {
    if (process.env.PORT || error.code !== 'EADDRINUSE') throw error;
    return serveFrom(port + 1);
  });

const { url, port } = await serveFrom(Number(process.env.PORT || usualPort));
if (!process.env.PORT && port !== usualPort) {
  console.log(
    `Port ${usualPort} is taken. A browser keeps a shop's records per address: those made at another port do not show here.`,
  );
}
console.log(`Tallywright is at ${url} (stop it with Ctrl+C)`);
