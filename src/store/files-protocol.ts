import * as v from 'valibot';
import { holdingSchema } from '../domain/log/holding.ts';
import { type PackedRun, type RunHead, runHeadSchema } from '../domain/packed/packed-run.ts';

/** What a page can ask of its journal worker, and with what. Entries and acts go as the JSON that is written. */
export interface Asked {
  readonly look: Record<never, never>;
  readonly add: { readonly texts: readonly string[] };
  readonly 'add-runs': { readonly runs: readonly PackedRun[] };
  readonly 'keep-act': { readonly json: string };
  readonly 'settle-act': { readonly act: string };
  readonly heads: Record<never, never>;
  readonly parcel: { readonly heads: readonly RunHead[] };
  readonly 'file-names': Record<never, never>;
  readonly 'read-file': { readonly file: string };
  readonly 'write-file': { readonly file: string; readonly bytes: Uint8Array };
  readonly 'remove-file': { readonly file: string };
}
export type Ask = keyof Asked;

/** The first message to a worker: which store it serves. */
export interface Begin {
  readonly ask: 'begin';
  readonly store: string;
}
export type Request = { readonly [A in Ask]: { readonly id: number; readonly ask: A } & Asked[A] }[Ask];

const nothing = v.undefined();
/** What the answer to each request must be. */
export const answers = {
  look: v.object({
    holding: holdingSchema,
    unreadable: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
    unsettled: v.array(v.string()),
  }),
  add: nothing,
  'add-runs': nothing,
  'keep-act': nothing,
  'settle-act': nothing,
  heads: v.array(runHeadSchema),
  /** The worker has read the runs by their schema, and chained them. */
  parcel: v.object({ runs: v.array(v.unknown()), texts: v.array(v.string()) }),
  'file-names': v.array(v.string()),
  'read-file': v.optional(v.instance(Uint8Array)),
  'write-file': nothing,
  'remove-file': nothing,
} satisfies Record<Ask, v.GenericSchema>;
export type Answer<A extends Ask> = v.InferOutput<(typeof answers)[A]>;

/** What a worker says. `busy` tells only that it is still at work. */
export const replySchema = v.variant('kind', [
  v.object({ kind: v.literal('busy') }),
  v.object({ kind: v.literal('done'), id: v.number(), value: v.unknown() }),
  /** The browser keeps no files, now or later. */
  v.object({ kind: v.literal('nowhere'), id: v.number() }),
  v.object({ kind: v.literal('failed'), id: v.number(), why: v.string() }),
]);
export type Reply = v.InferOutput<typeof replySchema>;
