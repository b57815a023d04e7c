/** Serves a built app as a shop's host should: hashed files for ever, the page and the service worker never from a cache. */
import { createServer } from 'node:http';
import sirv from 'sirv';

/** @typedef {{ url: string, port: number, close: () => Promise<void> }} Served */

/**
 * @param {object} what
 * @param {string} what.folder the built app
 * @param {string} [what.under] the path that it is served under, with a slash at both ends
 * @param {number} [what.port] 0, or left out, takes a free one
 * @throws {Error} with code EADDRINUSE when the port is taken
 * @returns {Promise<Served>} on the loopback address only
 */
export async function serveBuild({ folder, under = '/', port = 0 }) {
  const files = sirv(folder, {
    dev: true,
    etag: true,
    setHeaders: (response, path) => {
      const named = /[/\\]assets[/\\]/.test(path);
      response.setHeader('Cache-Control', named ? 'public, max-age=31536000, immutable' : 'no-cache');
      response.setHeader('X-Content-Type-Options', 'nosniff');
    },
  });
  const server = createServer((request, response) => {
    const absent = () => {
      response.statusCode = 404;
      response.end('Not here');
    };
    if (!request.url?.startsWith(under)) return absent();
    request.url = request.url.slice(under.length - 1);
    files(request, response, absent);
  });
  await new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => resolve(undefined));
  });
  const address = server.address();
  const taken = typeof address === 'object' && address ? address.port : port;
  return {
    url: `http://127.0.0.1:${taken}${under}`,
    port: taken,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
