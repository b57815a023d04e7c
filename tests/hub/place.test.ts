import { mkdtempSync } from 'node:fs';
import type { NetworkInterfaceInfo } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkedHost, lanAddresses } from '../../.ci/hub/addresses.mjs';
import { folderOf, openFolder } from '../../.ci/hub/data-folder.mjs';
import { nodesOf } from '../../.ci/hub/nodes.mjs';
import { placeOf } from '../../.ci/hub/place.mjs';
import { aFolder } from '../support/hub-folder.ts';

const folder = aFolder();
const fresh = () => openFolder(join(mkdtempSync(join(folder, 'hub-')), 'data'));

const card = (address: string, internal = false): NetworkInterfaceInfo =>
  address.includes(':')
    ? { address, internal, family: 'IPv6', netmask: 'ffff::', mac: '', cidr: null, scopeid: 0 }
    : { address, internal, family: 'IPv4', netmask: '255.255.255.0', mac: '', cidr: null };

test('the shop’s network comes before bridges of this machine, and a private address before a public one', () => {
  const found = lanAddresses({
    lo: [card('127.0.0.1', true)],
    docker0: [card('172.17.0.1')],
    eth1: [card('203.0.113.9')],
    wlan0: [card('169.254.3.4'), card('192.168.1.20'), card('fe80::1')],
  });
  expect(found).toEqual(['192.168.1.20', '203.0.113.9', '172.17.0.1']);
});

test.each(['tally.lan', 'PC-7', '192.168.1.20'])('%s is a name of a machine', (host) => {
  expect(checkedHost(host)).toBe(host.toLowerCase());
});

test.each(['', 'tally lan', 'a/b', 'tally.lan:8443', '-pc', 'x{y}', 'a;b', '[::1]'])(
  '“%s” is none',
  (host) => {
    expect(() => checkedHost(host)).toThrow('HUB_HOST');
  },
);

describe('the place of a hub', () => {
  test('is what the first start finds, and stays when the network changes, which is said', () => {
    const files = fresh();
    const first = placeOf({ env: {}, files, addresses: ['192.168.1.20'] });
    expect(first.place).toEqual({ host: '192.168.1.20', port: 8443, certificatePort: 8080 });
    expect(first.remark).toBeUndefined();
    const later = placeOf({ env: {}, files, addresses: ['192.168.1.33'] });
    expect(later.place).toEqual(first.place);
    expect(later.remark).toMatch(/was 192.168.1.20.*now 192.168.1.33/);
  });

  test('is what the person names, from then on', () => {
    const files = fresh();
    placeOf({ env: { HUB_HOST: 'Tally.lan', HUB_PORT: '443' }, files, addresses: ['192.168.1.20'] });
    const { place, remark } = placeOf({ env: {}, files, addresses: ['192.168.1.33'] });
    expect(place).toEqual({ host: 'tally.lan', port: 443, certificatePort: 8080 });
    expect(remark).toBeUndefined();
  });

  test('is this PC alone where there is no network, and is found when there is one', () => {
    const files = fresh();
    expect(placeOf({ env: {}, files, addresses: [] })).toMatchObject({
      place: { host: 'localhost' },
      bind: '127.0.0.1',
      remark: expect.stringContaining('Only this PC'),
    });
    expect(placeOf({ env: {}, files, addresses: ['10.0.0.5'] })).toMatchObject({
      place: { host: '10.0.0.5' },
      bind: undefined,
    });
  });

  test('has no port twice, and no port that is none', () => {
    const files = fresh();
    const env = (HUB_PORT: string) => ({ HUB_PORT, HUB_CERTIFICATE_PORT: '9000' });
    for (const port of ['0', '65536', 'x', '80.5']) {
      expect(() => placeOf({ env: env(port), files, addresses: [] })).toThrow('is no port');
    }
    expect(() => placeOf({ env: env('9000'), files, addresses: [] })).toThrow('must differ');
  });
});

test('three PCs that are one hub have names, and each knows its own', () => {
  const HUB_NODES = 'bench=192.0.2.11, office=192.0.2.12:7000 attic=192.0.2.13';
  expect(nodesOf({ HUB_NODES, HUB_NODE: 'office' })).toEqual({
    own: 'office',
    nodes: [
      { name: 'bench', address: '192.0.2.11:6222' },
      { name: 'office', address: '192.0.2.12:7000' },
      { name: 'attic', address: '192.0.2.13:6222' },
    ],
  });
  expect(nodesOf({})).toBeUndefined();
  expect(() => nodesOf({ HUB_NODES })).toThrow('HUB_NODE');
  expect(() => nodesOf({ HUB_NODES, HUB_NODE: 'cellar' })).toThrow('HUB_NODE');
  expect(() => nodesOf({ HUB_NODES: 'a=192.0.2.1 b=192.0.2.2', HUB_NODE: 'a' })).toThrow('three');
  expect(() => nodesOf({ HUB_NODES: 'a=192.0.2.1 b=192.0.2.2 a=192.0.2.3', HUB_NODE: 'a' })).toThrow('three');
  expect(() => nodesOf({ HUB_NODES: 'bench', HUB_NODE: 'bench' })).toThrow('name=address');
});

test('data lies where HUB_DATA says, else in the user’s data directory', () => {
  expect(folderOf({ HUB_DATA: '/srv/tally', XDG_DATA_HOME: '/home/ada/data' })).toBe('/srv/tally');
  expect(folderOf({ XDG_DATA_HOME: '/home/ada/data' })).toBe(join('/home/ada/data', 'tallywright-hub'));
});
