/** Serves a built app as a shop's host should: hashed files for ever, the page and the service worker never from a cache. */
import { createServer } from 'node:http';
import { connect } from 'node:net';
import sirv from 'sirv';
import { securityHeaders } from './content-security-policy.mjs';

/** @typedef {{ url: string, port: number, cutLines: () => void, close: () => Promise<void> }} Served */

/**
 * @param {object} what
 * @param {string} what.folder the built app
 * @param {string} [what.under] the path that it is served under, with a slash at both ends
 * @param {number} [what.port] 0, or left out, takes a free one
 * @param {(request: import('node:http').IncomingMessage, response: import('node:http').ServerResponse) => boolean} [what.answered]
 *   answers a request in the place of the folder and says whether it did: for trying out hosts that are ill
 * @param {number} [what.broker] the port of a broker's WebSocket on this machine, which is then served at `/sync`
 * @throws {Error} with code EADDRINUSE when the port is taken
 * @returns {Promise<Served>} on the loopback address only
 */
export async function serveBuild({ folder, under = '/', port = 0, answered = () => false, broker }) {
  const files = sirv(folder, {
    dev: true,
    etag: true,
    setHeaders: (response, path) => {
      const named = /[/\\]assets[/\\]/.test(path);
      response.setHeader('Cache-Control', named ? 'public, max-age=31536000, immutable' : 'no-cache');
    },
  });
  const server = createServer((request, response) => {
    for (const [name, value] of Object.entries(securityHeaders)) response.setHeader(name, value);
    const absent = () => {
      response.statusCode = 404;
      response.end('Not here');
    };
    if (!request.url?.startsWith(under)) return absent();
    request.url = request.url.slice(under.length - 1);
    if (answered(request, response)) return;
    files(request, response, absent);
  });
  /** @type {Set<import('node:stream').Duplex>} */
  const lines = new Set();
  server.on('upgrade', (request, socket) => {
    socket.on('error', () => socket.destroy());
    if (!broker || request.url !== '/sync') {
      socket.destroy();
      return;
    }
    const there = connect(broker, '127.0.0.1', () => {
      const said = [`GET ${request.url} HTTP/1.1`];
      for (let at = 0; at < request.rawHeaders.length; at += 2)
        said.push(`${request.rawHeaders[at]}: ${request.rawHeaders[at + 1]}`);
      there.write(`${said.join('\r\n')}\r\n\r\n`);
      socket.pipe(there).pipe(socket);
    });
    lines.add(socket);
    there.on('error', () => socket.destroy());
    socket.on('close', () => {
      lines.delete(socket);
      there.destroy();
    });
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
    /** Cuts every line to the broker, as a network does. */
    cutLines() {
      for (const line of lines) line.destroy();
    },
    close: () =>
      new Promise((resolve) => {
        for (const line of lines) line.destroy();
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
