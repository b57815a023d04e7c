import {
  type Consumer,
  JetStreamApiError,
  type JetStreamClient,
  type JetStreamManager,
  type JsMsg,
  jetstream,
  jetstreamManager,
  type StreamInfo,
} from '@nats-io/jetstream';
import {
  AuthorizationError,
  type ConnectionOptions,
  headers,
  type NatsConnection,
  nkeyAuthenticator,
  PermissionViolationError,
} from '@nats-io/nats-core';
import {
  type Exchange,
  type Glance,
  LaneMoved,
  type Look,
  laneKey,
  type Outgoing,
  type Placed,
  type Range,
  Refused,
  type TakeBatch,
} from './exchange.ts';
import { nkeySeed } from './nkey-seed.ts';
import type { Seat } from './shop-key.ts';
import { inboxOf, readSubject, type StreamKind, streamOf, subjectOf } from './subjects.ts';

export interface NatsParts {
  /** The client's way of connecting, over whatever it has: a WebSocket in a browser. */
  readonly connect: (options: ConnectionOptions) => Promise<NatsConnection>;
  readonly address: string;
  readonly shop: string;
  readonly seat: Seat;
  /** The log, unless it is said otherwise. */
  readonly kind?: StreamKind;
  /** See `seatSeedOf`. */
  readonly seed: Uint8Array;
}

/** How long (ms) the broker may take for an answer; an election in a cluster takes some seconds. */
const patience = 10_000;
/** Messages, and bytes of them, that are taken in at a time. */
const [mostMessages, mostBytes] = [128, 2_000_000];
const header = { kind: 'Tw-Kind', head: 'Tw-Head', rollUp: 'Nats-Rollup' } as const;

/**
 * A line to a NATS server with JetStream, as one seat. It is not mended when it is lost: the replicator opens another, and
 * meets the broker anew. Rejects with `Refused` where the broker does not know the seat or the shop.
 */
export async function openNatsExchange({
  connect,
  address,
  shop,
  seat,
  kind: streamKind = 'log',
  seed,
}: NatsParts): Promise<Exchange> {
  const connection = await connect({
    servers: address,
    authenticator: nkeyAuthenticator(nkeySeed(seed)),
    inboxPrefix: inboxOf(shop, seat),
    reconnect: false,
    timeout: patience,
    pingInterval: 20_000,
    maxPingOut: 2,
    ignoreClusterUpdates: true,
  }).catch(passOn);
  const closed = connection.closed().then(() => undefined);
  const lost = closed.then(() => Promise.reject(new Error('the line is lost')));
  lost.catch(() => undefined);
  /** What waits for the broker ends with the line. */
  const orLost = <Result>(work: Promise<Result>): Promise<Result> =>
    Promise.race([work.catch(passOn<Result>), lost]);
  const manager: JetStreamManager = await orLost(
    jetstreamManager(connection, { checkAPI: false, timeout: patience }),
  );
  const client: JetStreamClient = jetstream(connection, { timeout: patience });
  const stream = streamOf(shop, streamKind);

  async function consumerFrom({ from, bodies, of }: Range): Promise<Consumer> {
    const options = { opt_start_seq: from, headers_only: !bodies };
    const filter = of && { filter_subjects: subjectOf(shop, of) };
    return orLost(client.consumers.get(stream, { ...options, ...filter }));
  }

  async function publish({ lane, kind, head, body, id, replaces, after }: Outgoing): Promise<number> {
    const said = headers();
    said.set(header.kind, kind);
    said.set(header.head, head);
    if (replaces) said.set(header.rollUp, 'sub');
    const { seq } = await client.publish(subjectOf(shop, { seat, lane }), body, {
      msgID: id,
      headers: said,
      timeout: patience,
      expect: { streamName: stream, ...(after !== undefined && { lastSubjectSequence: after }) },
    });
    return seq;
  }

  return {
    async glance(): Promise<Glance> {
      return glanceOf(await orLost(manager.streams.info(stream)));
    },
    async look(): Promise<Look> {
      const info = await orLost(manager.streams.info(stream, { subjects_filter: '>' }));
      const counts = new Map<string, number>();
      for (const [subject, count] of Object.entries(info.state.subjects ?? {})) {
        const place = readSubject(shop, subject);
        if (place) counts.set(laneKey(place), count);
      }
      return { ...glanceOf(info), counts };
    },
    async read(range, take) {
      const { from, to = Number.POSITIVE_INFINITY, bodies } = range;
      const consumer = await consumerFrom(range);
      const { num_pending } = await orLost(consumer.info(true));
      if (num_pending > 0 && from === to) {
        // Asked for one, the broker sends no more of them.
        const message = await orLost(consumer.next({ expires: patience }));
        const placed = message && placedOf(message, { shop, bodies });
        if (placed?.at === to) await take([placed]);
      } else if (num_pending > 0)
        await orLost(
          give(consumer, {
            take,
            shop,
            bodies,
            isLast: ({ seq, info }) => seq >= to || info.pending === 0,
            to,
          }),
        );
      await orLost(consumer.delete()).catch(() => undefined);
    },
    async follow(after, take) {
      const consumer = await consumerFrom({ from: after + 1, bodies: true });
      await orLost(
        give(consumer, { take, shop, bodies: true, isLast: () => false, to: Number.POSITIVE_INFINITY }),
      );
    },
    async push(messages) {
      const sent = await orLost(Promise.allSettled(messages.map(publish)));
      return sent.map((result) => (result.status === 'fulfilled' ? result.value : passOn(result.reason)));
    },
    closed,
    close: () => void connection.close().catch(() => undefined),
  };
}

const glanceOf = ({ created, state }: StreamInfo): Glance => ({
  created: String(created),
  last: state.last_seq,
  messages: state.messages,
});

interface Giving {
  readonly take: TakeBatch;
  readonly shop: string;
  readonly bodies: boolean;
  readonly isLast: (message: JsMsg) => boolean;
  readonly to: number;
}

/** Gives what comes in, some at a time; the next are on their way meanwhile. */
async function give(consumer: Consumer, { take, shop, bodies, isLast, to }: Giving): Promise<void> {
  const incoming = await consumer.consume({ max_messages: 2 * mostMessages });
  let batch: Placed[] = [];
  let bytes = 0;
  for await (const message of incoming) {
    const placed = placedOf(message, { shop, bodies });
    if (placed && placed.at <= to) batch.push(placed);
    bytes += message.data.length;
    const isEnd = isLast(message);
    if (isEnd || message.info.pending === 0 || batch.length >= mostMessages || bytes >= mostBytes) {
      const now = batch;
      [batch, bytes] = [[], 0];
      if (now.length > 0) await take(now);
    }
    if (isEnd) break;
  }
  await incoming.close();
}

function placedOf(message: JsMsg, { shop, bodies }: { shop: string; bodies: boolean }): Placed | undefined {
  const place = readSubject(shop, message.subject);
  return (
    place && {
      ...place,
      at: message.seq,
      kind: message.headers?.get(header.kind) ?? '',
      head: message.headers?.get(header.head) ?? '',
      body: bodies ? Uint8Array.from(message.data) : null,
      ...(message.headers?.get(header.rollUp) === 'sub' && { replaces: true as const }),
    }
  );
}

/** Codes of the broker's JetStream (errors.json of nats-server, 2.9): no such stream, wrong last sequence, and no room left. */
const [noStream, wrongSequence] = [10059, 10071];
const noRoom: ReadonlySet<number> = new Set([10023, 10047, 10054, 10077]);

/** Tells refusals, which are for a person to mend, from what passes by itself. */
function passOn<Never = never>(error: unknown): Never {
  const text = String(error);
  if (error instanceof AuthorizationError || /authorization violation/i.test(text))
    throw new Refused('key', text);
  if (error instanceof PermissionViolationError) throw new Refused('rights', text);
  if (error instanceof JetStreamApiError) {
    if (error.code === noStream) throw new Refused('no-shop', text);
    if (error.code === wrongSequence) throw new LaneMoved(text);
    if (noRoom.has(error.code)) throw new Refused('full', text);
  }
  throw error;
}
