/** A host of the app that can be told to serve badly, or another version. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { serveBuild } from '../../.ci/serve-build.mjs';

/** How scripts are served: whole, broken off after the first bytes, or only after a while. */
type Manner = 'whole' | 'cut' | 'slow';
const slowMs = 3000;

export interface BreakableHost {
  readonly port: number;
  /** Serves a version of the app: 0 is the built one, a greater number a later one. */
  readonly serve: (version: number) => void;
  readonly scripts: (manner: Manner) => void;
  /** How many scripts so far were asked for and not served whole and at once. */
  readonly spoilt: () => number;
  readonly close: () => Promise<void>;
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

/** Serves `builtApp` under `/shop/`, until it is told otherwise. */
export async function openBreakableHost(builtApp: string): Promise<BreakableHost> {
  const folder = mkdtempSync(join(tmpdir(), 'tallywright-'));
  let manner: Manner = 'whole';
  let spoilt = 0;
  const serve = (version: number) => {
    rmSync(folder, { recursive: true, force: true });
    cpSync(builtApp, folder, { recursive: true });
    if (version > 0) makeLaterVersion(folder, version);
  };
  serve(0);
  const whole = await serveBuild({ folder, under: '/shop/' });
  const server = createServer(({ url = '', headers }, response) => {
    const how = /\/assets\/.*\.js$/.test(url) ? manner : 'whole';
    if (how !== 'whole') spoilt += 1;
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
    port: address.port,
    serve,
    scripts(how) {
      manner = how;
    },
    spoilt: () => spoilt,
    async close() {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
      await whole.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
