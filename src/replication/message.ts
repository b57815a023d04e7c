import { utf8ToBytes } from '@noble/hashes/utils.js';
import * as v from 'valibot';
import { type RunHead, runHeadSchema } from '../domain/packed/packed-run.ts';
import { emptyParcel } from '../domain/packed/parcel.ts';
import type { Bytes } from '../store/backup/sealing-keys.ts';
import type { ReadParcel } from '../store/log-store.ts';
import type { Outgoing, Placed } from './exchange.ts';
import { logBodyReader } from './log-body.ts';
import { packBodyReader } from './pack-body.ts';
import { openBody, openHead, sealMessage } from './sealing.ts';
import type { Seat } from './shop-key.ts';
import { unwrapped } from './wrapping.ts';

/** The name of a tablet on the broker, drawn when it first joined. */
export const tabletId = v.pipe(v.string(), v.regex(/^[a-z0-9]{4,40}$/));

/**
 * What a message is, its form by its number: entries as lines, entries as a run, that a seat is taken, and that the body of
 * a message with this head cannot be read and its entries are wanted again. Kinds of newer versions are set aside.
 */
const headSchemas = {
  log1: runHeadSchema,
  pack1: runHeadSchema,
  seat1: v.object({ tablet: tabletId }),
  want1: runHeadSchema,
};
type MessageKind = keyof typeof headSchemas;

/** What a head says. */
export type Said =
  | { readonly kind: 'log1' | 'pack1' | 'want1'; readonly head: RunHead }
  | { readonly kind: 'seat1'; readonly tablet: string };

/** Why a message was set aside. */
export type AsideReason =
  /** It was not sealed by this shop, or for another place or with another head. */
  | 'not-sealed-here'
  /** It is of a kind that a newer version writes. */
  | 'newer'
  /** It was sealed by this shop, and is not what it ought to be. */
  | 'malformed'
  /** It stood there before. */
  | 'repeated';

export type Opened<What> =
  | { readonly kind: 'opened'; readonly what: What }
  | { readonly kind: 'aside'; readonly reason: AsideReason; readonly problem: string };

/** What seals and opens the messages of one shop. */
export interface MessageDesk {
  /** A message ready to be sent. */
  readonly seal: (
    said: Said,
    message: Pick<Outgoing, 'body' | 'lane' | 'replaces' | 'after'>,
  ) => Promise<Outgoing>;
  readonly openHead: (placed: Placed) => Promise<Opened<Said>>;
  /** What is in the body of a message of entries. */
  readonly openBody: (placed: Placed, head: RunHead) => Promise<Opened<ReadParcel>>;
}

export interface DeskParts {
  readonly shop: string;
  readonly seat: Seat;
  readonly key: CryptoKey;
  readonly random: (length: number) => Bytes;
}

export const aside = (reason: AsideReason, problem: string) => ({ kind: 'aside', reason, problem }) as const;

export function messageDesk({ shop, seat, key, random }: DeskParts): MessageDesk {
  const readLog = logBodyReader();
  const readPacked = packBodyReader();
  const addressOf = ({ seat: by, lane, kind }: Pick<Placed, 'seat' | 'lane' | 'kind'>) => ({
    ...{ shop, seat: by, lane, kind },
  });
  return {
    async seal(said, { body, lane, ...how }) {
      const { kind } = said;
      const head = Uint8Array.from(
        utf8ToBytes(JSON.stringify(kind === 'seat1' ? { tablet: said.tablet } : said.head)),
      );
      const parts = { head, body };
      const address = addressOf({ seat, lane, kind });
      return {
        lane,
        kind,
        id: idOf(said, { seat, lane }),
        ...how,
        ...(await sealMessage(parts, { key, address, random })),
      };
    },
    async openHead(placed) {
      const { kind } = placed;
      if (!isKnown(kind)) return aside('newer', `its kind is ${kind.slice(0, 40)}`);
      const head = await openHead(placed.head, { key, address: addressOf(placed) });
      if (!head) return aside('not-sealed-here', 'its head does not open');
      const read = v.safeParse(headSchemas[kind], jsonOf(head));
      if (!read.success) return aside('malformed', read.issues[0].message);
      const what = { kind, ...('tablet' in read.output ? read.output : { head: read.output }) } as Said;
      return { kind: 'opened', what };
    },
    async openBody({ kind, body, ...placed }, head) {
      const opening = { key, address: addressOf({ ...placed, kind }) };
      const sealed = body && (await openBody({ head: placed.head, body }, opening));
      if (!sealed) return aside('not-sealed-here', 'its body does not open');
      try {
        const content = await unwrapped(sealed);
        if (kind === 'log1') return opened({ runs: [], entries: readLog(content, head) });
        const read = readPacked(content, head);
        if ('entries' in read) return opened({ runs: [], entries: read.entries });
        return opened({ runs: [read.run], entries: [], packs: new Map([[read.run.link, read.pack]]) });
      } catch (error) {
        return aside('malformed', String(error).slice(0, 200));
      }
    },
  };
}

const opened = (parcel: ReadParcel) => ({ kind: 'opened', what: { ...emptyParcel, ...parcel } }) as const;

const isKnown = (kind: string): kind is MessageKind => Object.hasOwn(headSchemas, kind);

/** What is offered twice within the broker's memory stands there once. Clones tell other stories under the same numbers. */
function idOf(said: Said, { seat, lane }: { seat: Seat; lane: string }): string {
  if (said.kind === 'seat1') return `${seat}:${lane}:${said.tablet}`;
  const { station, first, entries, link } = said.head;
  return `${said.kind}:${seat}:${lane}:${station}:${first}-${first + entries - 1}:${link}`;
}

/** What JSON says; undefined for what is none. */
export function jsonOf(bytes: Bytes): unknown {
  try {
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return undefined;
  }
}
