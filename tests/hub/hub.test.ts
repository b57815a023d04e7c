/** A hub with its real broker and web server: what it serves, to whom, and what outlives it. */
import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { jetstream } from '@nats-io/jetstream';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { securityHeaders } from '../../.ci/content-security-policy.mjs';
import { asAdmin, streamState } from '../../.ci/hub/broker-admin.mjs';
import { keysIn, renewKeys } from '../../.ci/hub/data-folder.mjs';
import { statusOf } from '../../.ci/hub/status.mjs';
import { fetchFrom, fetchPlainly, openHub, type TestHub, takeSeat, upgradeFrom } from '../support/hub.ts';
import { aFolder, smallBuild } from '../support/hub-folder.ts';

const held = (hub: TestHub, keys = keysIn(hub.files)) =>
  asAdmin(hub.now().broker, keys, (admin) => streamState(admin, keys.shop));

async function send(hub: TestHub, seat: string, text: string): Promise<void> {
  const connection = await takeSeat(hub, seat);
  await jetstream(connection).publish(`tw.${hub.now().shop}.ev.${seat}`, text);
  await connection.close();
}

describe('what a tablet gets', () => {
  const folder = aFolder();
  let hub: TestHub;
  beforeAll(async () => {
    hub = await openHub(folder);
  });
  afterAll(async () => {
    await hub?.close();
  });

  test('is the app, under a certificate of the shop’s own root, with the headers of a host', async () => {
    const page = await fetchFrom(hub, '/');
    expect(page.status).toBe(200);
    expect(page.body).toContain('assets/first.js');
    for (const [name, value] of Object.entries(securityHeaders))
      expect(page.headers[name.toLowerCase()]).toBe(value);
    expect(page.headers['strict-transport-security']).toBe('max-age=31536000');
  });

  test('comes with the cache rules of DEVELOPERS.md: named files for ever, all else asked for anew', async () => {
    const cacheOf = async (path: string) => (await fetchFrom(hub, path)).headers['cache-control'];
    expect(await cacheOf('/assets/first.js')).toBe('public, max-age=31536000, immutable');
    for (const path of ['/', '/index.html', '/sw.js']) expect(await cacheOf(path)).toBe('no-cache');
    const absent = await fetchFrom(hub, '/assets/none.js');
    expect([absent.status, absent.headers['cache-control']]).toEqual([404, 'no-cache']);
  });

  test('is nothing without the root certificate', async () => {
    await expect(fetchFrom(hub, '/', { isStranger: true })).rejects.toThrow(/certificate/);
  });

  test('is a way to the broker from the app’s own page, and from no other', async () => {
    const { origin } = hub.now();
    expect((await upgradeFrom(hub, origin)).status).toBe(101);
    for (const other of ['https://elsewhere.example', origin.replace(/:\d+$/, ':1'), 'null']) {
      expect((await upgradeFrom(hub, other)).status).toBe(403);
    }
  });

  test('over plain HTTP is the certificate with its fingerprint, and not the app or the shop’s key', async () => {
    const page = await fetchPlainly(hub, '/');
    const shown = /data-testid="fingerprint">([^"]*)<\/p>/.exec(page.body)?.[1] ?? '';
    expect(shown.replaceAll('<br>', ':')).toBe(hub.now().sha256);
    const root = await fetchPlainly(hub, '/root.crt');
    expect(root.body).toBe(readFileSync(hub.files.root, 'utf8'));
    expect(root.headers['content-type']).toBe('application/x-x509-ca-cert');
    expect(root.body).not.toContain('PRIVATE KEY');
    const said = hub.now().link.split('#/join/')[1] ?? '';
    expect(page.body).not.toContain(said);
    for (const path of ['/assets/first.js', '/joining.html', '/../joining.html', '/..%2fkeys.json']) {
      expect((await fetchPlainly(hub, path)).status).toBeGreaterThanOrEqual(400);
    }
  });

  test('is the joining picture by no way: it is a file that only the owner of the PC’s hub may read', async () => {
    const { link } = hub.now();
    expect(readFileSync(hub.files.joining, 'utf8')).toContain(link);
    expect(statSync(hub.files.joining).mode & 0o777).toBe(0o600);
    for (const path of ['/joining.html', '/keys.json', '/..%2fjoining.html', '/app/../../joining.html']) {
      expect((await fetchFrom(hub, path)).status).toBeGreaterThanOrEqual(400);
    }
  });

  test('is said by the status of the hub', async () => {
    const connection = await takeSeat(hub, 'G');
    await jetstream(connection).publish(`tw.${hub.now().shop}.ev.G`, 'sealed');
    const lines = await statusOf(keysIn(hub.files), hub.now().broker);
    expect(lines[0]).toContain(hub.now().shop);
    expect(lines.find((line) => line.startsWith('G'))?.split(/\s+/)).toEqual(['G', '1', '1', '0', '0']);
    await connection.close();
  });
});

test('keys, certificate and entries outlive the hub, and a new build comes with its next start', async () => {
  const folder = aFolder();
  const first = await openHub(folder);
  await send(first, 'A', 'kept');
  const [keys, root, before] = [keysIn(first.files), readFileSync(first.files.root), await held(first)];
  await first.close();

  const second = await openHub(folder, { built: smallBuild(folder, 'second') });
  expect(keysIn(second.files)).toEqual(keys);
  expect(readFileSync(second.files.root)).toEqual(root);
  expect(await held(second)).toEqual(before);
  expect((await fetchFrom(second, '/')).body).toContain('assets/second.js');
  expect((await fetchFrom(second, '/assets/first.js')).status).toBe(200);
  await second.close();
});

test('a broker or a web server that dies is said and started again', async () => {
  const folder = aFolder();
  const hub = await openHub(folder);
  await send(hub, 'A', 'kept');
  const before = hub.children();
  for (const pid of before) process.kill(pid, 'SIGKILL');
  await expect
    .poll(() => hub.children().filter((pid) => !before.includes(pid)).length, { timeout: 20_000 })
    .toBe(2);
  await expect
    .poll(
      () =>
        fetchFrom(hub, '/').then(
          ({ status }) => status,
          () => 0,
        ),
      { timeout: 20_000 },
    )
    .toBe(200);
  await expect
    .poll(
      () =>
        held(hub).then(
          (state) => state?.messages,
          () => 0,
        ),
      { timeout: 20_000 },
    )
    .toBe(1);
  expect(hub.said.filter((line) => line.includes('ended (SIGKILL)'))).toHaveLength(2);
  await hub.close();
});

test.each([false, true])(
  'a new key shuts every seat of the old one out (entries forgotten: %s)',
  async (forget) => {
    const folder = aFolder();
    const hub = await openHub(folder);
    await send(hub, 'A', 'before');
    const lost = await takeSeat(hub, 'B');
    const { old } = renewKeys(hub.files, { forget });
    await hub.renew();

    await lost.closed();
    expect(lost.isClosed()).toBe(true);
    for (const seat of ['A', 'B', 'M'])
      await expect(takeSeat(hub, seat, old)).rejects.toThrow(/authorization/i);
    expect(hub.now().shop).not.toBe(old.shop);
    expect(hub.now().link).toContain('#/join/');
    expect(readFileSync(hub.files.joining, 'utf8')).toContain(hub.now().link);
    expect((await held(hub))?.messages).toBe(0);
    await send(hub, 'A', 'offered anew');
    expect((await held(hub))?.messages).toBe(1);
    const entries = statSync(join(hub.files.broker, 'jetstream', `TW_${old.shop}`), {
      throwIfNoEntry: false,
    });
    expect(entries !== undefined).toBe(!forget);
    await hub.close();
  },
);
