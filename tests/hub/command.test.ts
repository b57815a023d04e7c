/** `npm run hub` as a person starts it: a process with signals. */
import { once } from 'node:events';
import { existsSync, readFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { filesIn, keysIn } from '../../.ci/hub/data-folder.mjs';
import { hubSettings, runningIn, sayToHub, startHubCommand } from '../support/hub-command.ts';
import { aFolder, smallBuild } from '../support/hub-folder.ts';

const folder = aFolder();
const settings = (name: string) => hubSettings({ data: join(folder, name), built: smallBuild(folder) });

/** Nobody may have asked yet how a process ended: it is then there, without a command line. */
const isAlive = (pid: number) =>
  existsSync('/proc')
    ? existsSync(`/proc/${pid}`) && readFileSync(`/proc/${pid}/cmdline`, 'utf8') !== ''
    : answers(pid);
function answers(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch {
    return false;
  }
}

test.each(['SIGINT', 'SIGTERM', 'SIGHUP'] as const)(
  '%s ends the hub with all that it started',
  async (signal) => {
    const env = await settings(signal);
    const hub = startHubCommand(env);
    await hub.says(/Tallywright is at https:\/\/127\.0\.0\.1:/);
    const { children: pids } = runningIn(env.HUB_DATA);
    expect(pids).toHaveLength(2);
    hub.child.kill(signal);
    expect(await hub.ended).toBe(0);
    expect(pids.filter(({ pid }) => isAlive(pid))).toEqual([]);
    expect(existsSync(filesIn(env.HUB_DATA).running)).toBe(false);
  },
);

test('the shop’s key is written into no log', async () => {
  const env = await settings('quiet');
  const hub = startHubCommand(env);
  await hub.says(/joining\.html/);
  const { key } = keysIn(filesIn(env.HUB_DATA));
  expect(hub.text()).not.toContain('#/join/');
  expect(hub.text()).not.toContain(Buffer.from(key).toString('base64url'));
  hub.child.kill();
  await hub.ended;
});

test('what a killed hub has left behind is ended by the next one; two at once are refused', async () => {
  const env = await settings('killed');
  const killed = startHubCommand(env);
  await killed.says('Tallywright is at');
  const left = runningIn(env.HUB_DATA).children;

  const second = startHubCommand(env);
  expect(await second.ended).toBe(1);
  expect(second.text()).toContain('runs on');

  killed.child.kill('SIGKILL');
  await killed.ended;
  expect(left.every(({ pid }) => isAlive(pid))).toBe(true);
  const next = startHubCommand(env);
  await next.says('Tallywright is at');
  await expect.poll(() => left.filter(({ pid }) => isAlive(pid))).toEqual([]);
  next.child.kill();
  expect(await next.ended).toBe(0);
});

test('status and new-key speak with the hub that runs', async () => {
  const env = await settings('spoken');
  const say = (...words: string[]) => sayToHub(env, ...words);
  expect(() => say('status')).toThrow(/No hub runs/);
  const hub = startHubCommand(env);
  await hub.says('Tallywright is at');
  const { shop } = runningIn(env.HUB_DATA);
  expect(say('status')).toContain(`Shop ${shop}: 0 messages`);

  expect(say('new-key')).toContain(`key of ${shop}`);
  await expect.poll(() => runningIn(env.HUB_DATA).shop, { timeout: 20_000 }).not.toBe(shop);
  expect(say('status')).toContain(`Shop ${keysIn(filesIn(env.HUB_DATA)).shop}: 0 messages`);
  hub.child.kill();
  await hub.ended;
});

test('a word that the hub does not know is answered by those that it does', () => {
  const env = { ...process.env, HUB_DATA: join(folder, 'unknown') };
  expect(() => sayToHub(env, 'fly')).toThrow(/new-key/);
});

test('without its programs the hub says how to come by them', () => {
  const env = {
    ...process.env,
    HUB_DATA: join(folder, 'bare'),
    HUB_NATS: '/no/such/program',
    CI: '',
    INSTALL_HUB: '',
  };
  expect(() => sayToHub(env)).toThrow(/needs nats-server[\s\S]*apt-get install/);
});

test('a port that another program has is said at once', async () => {
  const env = await settings('taken');
  const other = createServer().listen(Number(env.HUB_PORT), '127.0.0.1');
  await once(other, 'listening');
  const hub = startHubCommand(env);
  expect(await hub.ended).toBe(1);
  expect(hub.text()).toContain(`Port ${env.HUB_PORT} is taken: HUB_PORT=`);
  other.close();
});
