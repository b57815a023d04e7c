/** `npm run hub` as a person starts it, at free ports of this machine; what was started ends with the tests of the file. */
import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, inject } from 'vitest';
import { filesIn } from '../../.ci/hub/data-folder.mjs';
import { freePorts } from '../../.ci/hub/free-ports.mjs';

/** As package.json names it. */
const hubScript = join('.ci', 'hub.mjs');
const children: ChildProcess[] = [];
afterAll(async () => {
  // Those of a test that failed: they end what they have started.
  const alive = children.filter(({ exitCode, signalCode }) => exitCode === null && signalCode === null);
  const ended = alive.map((child) => once(child, 'exit'));
  for (const child of alive) child.kill();
  await Promise.all(ended);
});

/** What a hub on a folder of data is told that serves `built`. */
export async function hubSettings({ data, built }: { data: string; built: string }) {
  const [port, certificatePort] = await freePorts(2);
  return {
    ...process.env,
    HUB_DATA: data,
    HUB_BUILT: built,
    HUB_HOST: '127.0.0.1',
    HUB_PORT: String(port),
    HUB_CERTIFICATE_PORT: String(certificatePort),
    HUB_NATS: inject('hubPrograms').broker,
    HUB_CADDY: inject('hubPrograms').webServer,
  };
}

/** The hub as a process of its own, and what it has said so far. */
export function startHubCommand(env: NodeJS.ProcessEnv, ...words: string[]) {
  const child = spawn(process.execPath, [hubScript, ...words], { env, stdio: ['ignore', 'pipe', 'pipe'] });
  children.push(child);
  let text = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding('utf8').on('data', (more: string) => {
      text += more;
    });
  }
  return {
    child,
    text: () => text,
    ended: new Promise<number | null>((resolve) => child.once('exit', resolve)),
    says: (what: string | RegExp) => expect.poll(() => text, { timeout: 40_000 }).toMatch(what),
  };
}

/** What another command of the hub says, once it has ended. */
export const sayToHub = (env: NodeJS.ProcessEnv, ...words: string[]): string =>
  execFileSync(process.execPath, [hubScript, ...words], { env, stdio: 'pipe' }).toString();

export const runningIn = (data: string): { shop: string; children: { pid: number }[] } =>
  JSON.parse(readFileSync(filesIn(data).running, 'utf8'));
