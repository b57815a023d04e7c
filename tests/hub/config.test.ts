import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { expect, inject, test } from 'vitest';
import { rightsOf, streamConfigs } from '../../.ci/hub/broker-config.mjs';
import { caddyConfig } from '../../.ci/hub/caddy-config.mjs';
import { keysIn, openFolder } from '../../.ci/hub/data-folder.mjs';
import { fill, template } from '../../.ci/hub/template.mjs';
import { writeBrokerConfig, writeCaddyConfig } from '../../.ci/hub/written-config.mjs';
import { aFolder } from '../support/hub-folder.ts';

const folder = aFolder();

test('a template gets all of its words, and no others', () => {
  expect(fill('listen: %listen%', { listen: '"a$&b"' })).toBe('listen: "a$&b"');
  expect(() => fill('listen: %listen%', {})).toThrow('%listen%');
  expect(() => fill('listen', { listen: 'x' })).toThrow('listen');
});

test('a seat may send on its own subjects, and hear its own inbox alone', () => {
  const { publish, subscribe } = rightsOf('k3', 'B');
  const own = publish.filter((subject) => !subject.startsWith('$JS.'));
  expect(own).toEqual(['tw.k3.ev.B', 'tw.k3.run.B.>', 'tw.k3.ph.B.>']);
  expect(subscribe).toEqual(['_INBOX_k3_B.>']);
});

test('no right of a seat names another stream, or a way to change this one', () => {
  const { publish } = rightsOf('k3', 'B');
  const asked = publish.filter((subject) => subject.startsWith('$JS.'));
  for (const subject of asked) {
    expect(subject).toContain('TW_k3');
    expect(subject).not.toMatch(
      /STREAM[.](CREATE|UPDATE|DELETE|PURGE|RESTORE|SNAPSHOT|PEER|MSG[.]DELETE)|LEADER/,
    );
    // A wildcard stands behind the name of the stream only.
    expect(subject.split('TW_k3')[0]).not.toMatch(/[*>]/);
  }
});

test('the streams of log and photos keep everything, and take no deletion; photos leave room for the log', () => {
  const [log, photos, ...more] = streamConfigs('k3', 3);
  const kept = {
    num_replicas: 3,
    storage: 'file',
    discard: 'new',
    max_age: 0,
    max_msgs: -1,
    deny_delete: true,
  };
  expect(log).toMatchObject({
    ...kept,
    name: 'TW_k3',
    subjects: ['tw.k3.ev.>', 'tw.k3.run.>'],
    max_bytes: -1,
  });
  expect(photos).toMatchObject({ ...kept, name: 'TW_k3_ph', subjects: ['tw.k3.ph.>'] });
  // The hub gives its broker 20 GB.
  expect(photos?.max_bytes).toBeLessThan(20e9);
  expect(more).toEqual([]);
});

test.each(['plain', 'with space'])('both programs read what they are told, in a folder %s', (name) => {
  const files = openFolder(join(folder, name));
  const client = '127.0.0.1:4222';
  const websocket = '127.0.0.1:9080';
  const nodes = {
    own: 'bench',
    nodes: ['bench', 'office', 'attic'].map((node, index) => ({
      name: node,
      address: `127.0.0.1:${6222 + index}`,
    })),
  };
  const { broker, webServer } = inject('hubPrograms');
  for (const those of [undefined, nodes]) {
    writeBrokerConfig(files, keysIn(files), { client, websocket, nodes: those });
    execFileSync(broker, ['-t', '-c', files.brokerConfig], { stdio: 'pipe' });
  }
  const place = { host: 'tally.lan', port: 8443, certificatePort: 8080 };
  writeCaddyConfig(files, place, { hosts: ['192.0.2.7'], bind: undefined, websocket });
  const read = execFileSync(webServer, ['adapt', '--config', files.caddyConfig, '--adapter', 'caddyfile'], {
    stdio: 'pipe',
  });
  expect(hostsOf(JSON.parse(read.toString()))).toEqual(['192.0.2.7', 'localhost', 'tally.lan']);
});

/** Names for which a configuration of caddy answers. */
function hostsOf(config: unknown): unknown[] {
  const found: unknown[] = [];
  JSON.stringify(config, (key, value) => {
    if (key === 'host' && Array.isArray(value)) found.push(...value);
    return value;
  });
  return found.toSorted();
}

test('a folder that the web server would misread is refused', () => {
  const server = {
    hosts: ['tally.lan'],
    port: 8443,
    certificatePort: 8080,
    storage: '/data/{env.HOME}',
    authority: 'Tallywright',
    app: '/app',
    certificatePage: '/page',
    broker: '127.0.0.1:9080',
    headers: {},
  };
  expect(() => caddyConfig(server, template('Caddyfile'))).toThrow('cannot be told');
});
