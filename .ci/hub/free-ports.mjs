import { createServer } from 'node:net';

/** Ports of this machine alone that nobody uses just now. @param {number} count @returns {Promise<number[]>} */
export async function freePorts(count) {
  const servers = Array.from({ length: count }, () => createServer());
  const ports = await Promise.all(
    servers.map(
      (server) =>
        new Promise((resolve, reject) => {
          server.once('error', reject);
          server.listen(0, '127.0.0.1', () => {
            const address = server.address();
            resolve(typeof address === 'object' && address ? address.port : 0);
          });
        }),
    ),
  );
  await Promise.all(servers.map((server) => new Promise((resolve) => server.close(resolve))));
  return ports;
}

/**
 * @param {string} name of the setting that chooses the port
 * @param {number} port
 * @param {string | undefined} bind the only address that it is wanted at; undefined for all
 * @throws {Error} when another program has it, or it may not be had
 */
export async function refuseTakenPort(name, port, bind) {
  const server = createServer();
  await new Promise((resolve, reject) => {
    server.once('error', (/** @type {NodeJS.ErrnoException} */ { code }) =>
      reject(
        new Error(
          `Port ${port} ${code === 'EADDRINUSE' ? 'is taken' : `cannot be had (${code})`}: ${name}= chooses another one.`,
        ),
      ),
    );
    server.listen({ port, ...(bind && { host: bind }) }, () => server.close(resolve));
  });
}
