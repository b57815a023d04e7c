/**
 * A host of the app that can be told to serve badly. It is told through files, for the tests run in another process
 * than the host: what it serves lies in one folder, how it serves stands in a file beside it.
 */
import { appendFileSync, cpSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, request } from 'node:http';
import { join } from 'node:path';
import { serveBuild } from '../../.ci/serve-build.mjs';

/** How scripts are served: whole, broken off after the first bytes, or only after a while. */
type Manner = 'whole' | 'cut' | 'slow';
const slowMs = 3000;

const places = (folder: string) => ({
  served: join(folder, 'served'),
  manner: join(folder, 'manner'),
  spoilt: join(folder, 'spoilt'),
});

export interface HostControl {
  /** Serves a version of the app: 0 is the built one, a greater number a later one. */
  readonly serve: (version: number) => void;
  readonly scripts: (manner: Manner) => void;
  /** How many scripts so far were asked for and not served whole and at once. */
  readonly spoilt: () => number;
}

export function hostControl(folder: string, builtApp: string): HostControl {
  const { served, manner, spoilt } = places(folder);
  return {
    serve(version) {
      rmSync(served, { recursive: true, force: true });
      cpSync(builtApp, served, { recursive: true });
      if (version > 0) makeLaterVersion(served, version);
    },
    scripts: (how) => writeFileSync(manner, how),
    spoilt: () => readFileSync(spoilt, 'utf8').length,
  };
}

/** Makes of a built app a later version: its page says which it is, and one more script has to be fetched. */
function makeLaterVersion(folder: string, version: number): void {
  const script = `assets/later-${version}.js`;
  writeFileSync(join(folder, script), `/* ${'later '.repeat(1000)} */\n`);
  edit(join(folder, 'index.html'), /<head>/, `<head><meta name="later-version" content="${version}">`);
  edit(
    join(folder, 'sw.js'),
    /\{[^{}]*"url":"index\.html"[^{}]*\}/,
    `{"revision":"${version}","url":"index.html"},{"revision":null,"url":"${script}"}`,
  );
}

function edit(path: string, place: RegExp, text: string): void {
  const before = readFileSync(path, 'utf8');
  if (!place.test(before)) throw new Error(`${path} has nothing like ${place}`);
  writeFileSync(path, before.replace(place, text));
}

export interface BreakableHost {
  readonly url: string;
  readonly close: () => Promise<void>;
}

export async function breakableHost(folder: string): Promise<BreakableHost> {
  const { served, manner, spoilt } = places(folder);
  const under = '/shop/';
  writeFileSync(manner, 'whole');
  writeFileSync(spoilt, '');
  const whole = await serveBuild({ folder: served, under });
  const server = createServer(({ url = '', headers }, response) => {
    const how = /\/assets\/.*\.js$/.test(url) ? readFileSync(manner, 'utf8') : 'whole';
    if (how !== 'whole') appendFileSync(spoilt, '.');
    const pass = () =>
      request({ port: whole.port, path: url, headers }, (answer) => {
        response.writeHead(answer.statusCode ?? 500, answer.headers);
        if (how !== 'cut') {
          answer.pipe(response);
          return;
        }
        answer.once('data', (bytes: Buffer) => {
          response.write(bytes.subarray(0, 100), () => response.destroy());
          answer.destroy();
        });
      })
        .on('error', () => response.destroy())
        .end();
    if (how === 'slow') setTimeout(pass, slowMs);
    else pass();
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  if (typeof address !== 'object' || !address) throw new Error('The host has no port.');
  return {
    url: `http://127.0.0.1:${address.port}${under}`,
    async close() {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
      await whole.close();
    },
  };
}
