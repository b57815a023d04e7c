/** A host whose folder a test changes under the feet of the app: a later build, an older one, one that arrives broken. */
import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { serveBuild } from '../../.ci/serve-build.mjs';

/** What becomes of a file on its way: cut in the middle, gone, or another text in its place. */
type Fault = 'cut' | 'gone' | 'other';

export interface Host {
  readonly url: string;
  readonly folder: string;
  /** Puts another build in the place of the one that is served. */
  readonly put: (build: string) => void;
  /** Lets the files whose path matches arrive broken; all arrive whole again without a fault. */
  readonly breakFiles: (path: RegExp, fault: Fault | undefined) => void;
  /** How often a broken file was asked for. */
  readonly broken: () => number;
  readonly close: () => Promise<void>;
}

export async function openHost(build: string): Promise<Host> {
  const folder = mkdtempSync(join(tmpdir(), 'tallywright-'));
  cpSync(build, folder, { recursive: true });
  let sick: { readonly path: RegExp; readonly fault: Fault } | undefined;
  let broken = 0;
  const answered = (request: IncomingMessage, response: ServerResponse): boolean => {
    const path = (request.url ?? '').split('?')[0] ?? '';
    if (!sick?.path.test(path)) return false;
    broken += 1;
    answerBroken(response, { path: join(folder, path), fault: sick.fault });
    return true;
  };
  const served = await serveBuild({ folder, under: '/shop/', answered });
  return {
    url: served.url,
    folder,
    put(next) {
      rmSync(folder, { recursive: true });
      cpSync(next, folder, { recursive: true });
    },
    breakFiles(path, fault) {
      broken = 0;
      sick = fault && { path, fault };
    },
    broken: () => broken,
    async close() {
      await served.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

function answerBroken(response: ServerResponse, { path, fault }: { path: string; fault: Fault }): void {
  if (fault === 'gone') {
    response.statusCode = 404;
    response.end('Not here');
    return;
  }
  if (fault === 'other') {
    response.setHeader('Content-Type', path.endsWith('.js') ? 'text/javascript' : 'text/html');
    response.end('/* sign in to this network */');
    return;
  }
  const whole = readFileSync(path);
  response.setHeader('Content-Type', 'text/javascript');
  response.setHeader('Content-Length', whole.length);
  response.write(whole.subarray(0, Math.floor(whole.length / 2)));
  setTimeout(() => response.destroy(), 50);
}
