/** Hubs for tests: real programs at free ports of this machine alone, in folders that go away with them. */
import { readFileSync } from 'node:fs';
import { type IncomingHttpHeaders, request } from 'node:http';
import { request as secureRequest } from 'node:https';
import { join } from 'node:path';
import { connect, type NatsConnection, nkeyAuthenticator } from '@nats-io/transport-node';
import { afterAll, inject } from 'vitest';
import { type filesIn, keysIn, openFolder } from '../../.ci/hub/data-folder.mjs';
import { freePorts } from '../../.ci/hub/free-ports.mjs';
import { seatKey } from '../../.ci/hub/shop-keys.mjs';
import { startHub } from '../../.ci/hub/start-hub.mjs';
import { smallBuild } from './hub-folder.ts';

type Wanted = Parameters<typeof startHub>[0];
type Files = ReturnType<typeof filesIn>;

export interface TestHub {
  readonly files: Files;
  readonly port: number;
  readonly certificatePort: number;
  readonly said: readonly string[];
  readonly now: () => ReturnType<Awaited<ReturnType<typeof startHub>>['hub']>;
  readonly children: () => number[];
  readonly renew: () => Promise<void>;
  readonly close: () => Promise<void>;
}

/** Those of a test that failed, too. */
const open = new Set<TestHub>();
afterAll(async () => {
  await Promise.all([...open].map((hub) => hub.close()));
});

/** Starts a hub on `folder`, where keys, certificate and entries are kept. */
export async function openHub(
  folder: string,
  { built = smallBuild(folder), ...more }: Partial<Wanted> = {},
): Promise<TestHub> {
  const files = openFolder(join(folder, 'data'));
  const [port = 0, certificatePort = 0] = await freePorts(2);
  const ending = new AbortController();
  const said: string[] = [];
  const started = await startHub({
    files,
    built,
    programs: inject('hubPrograms'),
    place: { host: '127.0.0.1', port, certificatePort },
    hosts: [],
    bind: '127.0.0.1',
    nodes: undefined,
    say: (line: string) => said.push(line),
    now: () => Date.UTC(2026, 2, 1),
    ending: ending.signal,
    ...more,
  });
  const hub: TestHub = {
    files,
    port,
    certificatePort,
    said,
    now: started.hub,
    children: started.children,
    renew: started.renew,
    async close() {
      open.delete(hub);
      ending.abort();
      await started.closed;
    },
  };
  open.add(hub);
  return hub;
}

/** A tablet's connection, with the seed that a shop's key gives its seat. */
export function takeSeat(hub: TestHub, seat: string, keys = keysIn(hub.files)): Promise<NatsConnection> {
  return connectWith(hub.now().broker, {
    seed: seatKey(keys.key, seat).seed,
    inboxPrefix: `_INBOX_${keys.shop}_${seat}`,
  });
}

export const connectWith = (broker: string, { seed, inboxPrefix }: { seed: string; inboxPrefix?: string }) =>
  connect({
    servers: broker,
    authenticator: nkeyAuthenticator(new TextEncoder().encode(seed)),
    reconnect: false,
    timeout: 10_000,
    ...(inboxPrefix && { inboxPrefix }),
  });

export interface Answer {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
}

/** Fetches as a tablet that trusts the shop's root certificate and nothing else; as one that trusts public ones where said. */
export function fetchFrom(
  hub: TestHub,
  path: string,
  { headers = {}, isStranger = false }: { headers?: Record<string, string>; isStranger?: boolean } = {},
): Promise<Answer> {
  const trust = isStranger ? {} : { ca: readFileSync(hub.files.root) };
  return answerOf(
    secureRequest({ host: '127.0.0.1', port: hub.port, path, headers, agent: false, ...trust }),
  );
}

export const fetchPlainly = (hub: TestHub, path: string): Promise<Answer> =>
  answerOf(request({ host: '127.0.0.1', port: hub.certificatePort, path, agent: false }));

function answerOf(asked: ReturnType<typeof request>): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const given = (status: number | undefined, headers: IncomingHttpHeaders, body: string) =>
      resolve({ status: status ?? 0, headers, body });
    asked.on('error', reject);
    asked.on('response', (response) => {
      let body = '';
      response.setEncoding('utf8').on('data', (text: string) => {
        body += text;
      });
      response.on('end', () => given(response.statusCode, response.headers, body));
    });
    asked.on('upgrade', (response, socket) => {
      socket.destroy();
      given(response.statusCode, response.headers, '');
    });
    asked.end();
  });
}

/** Asks for a websocket at /sync as a page of `origin` does (RFC 6455, section 4.1). */
export const upgradeFrom = (hub: TestHub, origin: string): Promise<Answer> =>
  fetchFrom(hub, '/sync', {
    headers: {
      Connection: 'Upgrade',
      Upgrade: 'websocket',
      'Sec-WebSocket-Version': '13',
      'Sec-WebSocket-Key': 'dGhlIHNhbXBsZSBub25jZQ==',
      Origin: origin,
    },
  });
