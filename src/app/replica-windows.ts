import * as v from 'valibot';
import type { PhotosStatus, ReplicaStatus, SetAside } from '../replication/replica-status.ts';

const refusal = v.picklist(['key', 'rights', 'no-shop', 'full']);

const status = v.variant('kind', [
  v.object({ kind: v.picklist(['off', 'meeting', 'up-to-date']) }),
  v.object({ kind: v.literal('to-send'), entries: v.number() }),
  v.object({ kind: v.literal('unreachable'), since: v.number(), entries: v.nullable(v.number()) }),
  v.object({ kind: v.literal('refused'), why: refusal }),
]) satisfies v.GenericSchema<unknown, ReplicaStatus>;

const photos = v.object({
  toSend: v.number(),
  toFetch: v.number(),
  refused: v.nullable(refusal),
}) satisfies v.GenericSchema<unknown, PhotosStatus>;

const setAside = v.object({
  at: v.number(),
  seat: v.string(),
  reason: v.picklist(['not-sealed-here', 'newer', 'malformed', 'repeated']),
  problem: v.string(),
}) satisfies v.GenericSchema<unknown, SetAside>;

/** What the windows of a tablet say to each other about the other tablets. */
const said = v.variant('kind', [
  /** How it stands, from the window whose worker knows. */
  v.object({ kind: v.literal('standing'), status, photos, setAside: v.array(setAside) }),
  /** A photo has come in. */
  v.object({ kind: v.literal('photo-came') }),
  /** The store goes on under another station. */
  v.object({ kind: v.literal('renewed') }),
  /** Whoever has the worker is to say how it stands. */
  v.object({ kind: v.literal('how-does-it-stand') }),
  /** Whoever has the worker is to try at once. */
  v.object({ kind: v.literal('hurry') }),
  /** This tablet has joined, or left. */
  v.object({ kind: v.literal('kept-another') }),
]);
export type SaidOfReplica = v.InferOutput<typeof said>;

/** The other windows of this tablet, as far as other tablets are concerned. */
export interface ReplicaWindows {
  readonly say: (what: SaidOfReplica) => void;
  readonly close: () => void;
}

/** What is no message of this version is not heard. Undefined without BroadcastChannel: such windows are on their own. */
export function replicaWindows(hear: (what: SaidOfReplica) => void): ReplicaWindows | undefined {
  if (typeof BroadcastChannel === 'undefined') return undefined;
  const channel = new BroadcastChannel('other tablets');
  channel.addEventListener('message', ({ data }) => {
    const read = v.safeParse(said, data);
    if (read.success) hear(read.output);
  });
  return { say: (what) => channel.postMessage(what), close: () => channel.close() };
}
