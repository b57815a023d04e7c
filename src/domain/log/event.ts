import * as v from 'valibot';
import { registerSchema } from '../set-up/register.ts';
import { noteSchema } from '../set-up/text-schema.ts';
import {
  batchId,
  partId,
  personId,
  reasonId,
  shopDayText,
  speciesId,
  stageId,
  stationId,
  trayId,
  variantId,
} from './ids.ts';
import { celsiusBounds, moistureRead } from './moisture-facts.ts';
import { photoLetGo, photoTaken, piecePhotographed } from './photo-facts.ts';
import { gradeSchema, moveSchema, piecesSchema } from './place.ts';
import { shelfMoved } from './shelf-facts.ts';
import { stampSchema } from './stamp.ts';
import { partsCleaned, partsCounted, partsReceived, partsSampled } from './stores-facts.ts';
import type { EventId } from './version-vector.ts';
import { zoneSchema } from './zone.ts';

const seq = v.pipe(v.number(), v.safeInteger(), v.minValue(1));

/** What every event carries. Identity is (station, seq); `day` is the shop day, computed once at the tap. */
const envelope = {
  station: stationId,
  seq,
  stamp: stampSchema,
  zone: zoneSchema,
  day: shopDayText,
  person: v.nullable(personId),
  /** The tablet's clock was in doubt at the tap: order and identity hold, its day may be another. */
  clock: v.exactOptional(v.literal('doubtful')),
};

/** The tray an event is about, with what it was at the tap, so that no sum looks anything up. */
export const trayFactsSchema = v.object({
  tray: trayId,
  code: v.pipe(v.string(), v.maxLength(12)),
  variant: variantId,
  species: speciesId,
  batch: batchId,
});
export type TrayFacts = Readonly<v.InferOutput<typeof trayFactsSchema>>;

/** Signed change of one part in the stores: negative is used, positive comes back. */
const partDelta = v.object({ part: partId, pieces: v.pipe(v.number(), v.safeInteger()) });
const about = { of: trayFactsSchema, moves: v.array(moveSchema) };
/** Milliseconds since the last tap of the same spell, by a clock that cannot be set; null at a break. */
const elapsed = v.nullable(v.pipe(v.number(), v.safeInteger(), v.minValue(0)));
/** A clock that was wrong by decades may make a cure seem that short. */
export const mostEarly = 100_000_000;
/** Whole minutes by which pieces came out of a hold before its least time; left out where none did. */
const early = v.exactOptional(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(mostEarly)));
const visit = {
  ...about,
  stage: stageId,
  pieces: piecesSchema,
  /** How many of the pieces had been at the stage before and came again. */
  again: v.pipe(v.number(), v.integer(), v.minValue(0)),
  parts: v.array(partDelta),
  elapsed,
};

export const outcomeSchema = v.variant('kind', [
  v.object({ kind: v.literal('mended') }),
  v.object({ kind: v.literal('sent-back'), to: stageId }),
  v.object({ kind: v.literal('second') }),
  v.object({ kind: v.literal('scrapped'), saved: v.array(partId) }),
]);
/** What became of a flawed piece; scrap names the parts that were saved. */
export type Outcome = Readonly<v.InferOutput<typeof outcomeSchema>>;
export type OutcomeKind = Outcome['kind'];

const recountReason = v.picklist(['miscounted', 'found', 'lost', 'two-tablets']);
export type RecountReason = v.InferOutput<typeof recountReason>;

const trayKinds = [
  v.object({ ...envelope, kind: v.literal('tray-made'), ...about }),
  v.object({ ...envelope, kind: v.literal('tray-split'), ...about, into: trayFactsSchema }),
  v.object({ ...envelope, kind: v.literal('tray-joined'), ...about, into: trayFactsSchema }),
  v.object({
    ...envelope,
    kind: v.literal('passed'),
    ...visit,
    early,
  }),
  v.object({
    ...envelope,
    kind: v.literal('flawed'),
    ...visit,
    grade: gradeSchema,
    reasons: v.pipe(v.array(reasonId), v.minLength(1)),
    outcome: outcomeSchema,
    /** Parts that a scrap saved and that have to be cleaned before they can be used again; left out where there are none. */
    toClean: v.exactOptional(v.array(partDelta)),
    early,
  }),
  v.object({
    ...envelope,
    kind: v.literal('hold-begun'),
    ...about,
    stage: stageId,
    elapsed,
    /** Tenths of °C that the times were reckoned for; left out where they stand as the stage has them. */
    celsius: v.exactOptional(
      v.pipe(v.number(), v.integer(), v.minValue(celsiusBounds.least), v.maxValue(celsiusBounds.most)),
    ),
  }),
  v.object({ ...envelope, kind: v.literal('recounted'), ...about, why: recountReason, note: noteSchema }),
  v.object({ ...envelope, kind: v.literal('rerouted'), ...about }),
  v.object({ ...envelope, ...piecePhotographed, ...about }),
  v.object({
    ...envelope,
    kind: v.literal('raised'),
    ...about,
    pieces: piecesSchema,
    /** Seconds were reworked and are firsts again; `reasons` are the blemishes that are gone. */
    reasons: v.array(reasonId),
  }),
] as const;
/** About no tray: what comes into the stores and is counted there, photos, and what becomes of finished pieces. */
const shopKinds = [
  v.object({ ...envelope, ...partsReceived }),
  v.object({ ...envelope, ...partsCounted }),
  v.object({ ...envelope, ...partsCleaned }),
  v.object({ ...envelope, ...partsSampled }),
  v.object({ ...envelope, ...moistureRead }),
  v.object({ ...envelope, ...photoTaken }),
  v.object({ ...envelope, ...photoLetGo }),
  v.object({ ...envelope, ...shelfMoved }),
] as const;
const tallyKinds = [...trayKinds, ...shopKinds] as const;

export const tallyEvent = v.variant('kind', tallyKinds);
/** A fact of the tally: its deltas are added up, and a void takes them back. */
export type TallyEvent = TrayEvent | AboutNoTray;
/** Of a tray: has the tray that it is about, and moves of its pieces. */
export type TrayEvent = Readonly<v.InferOutput<(typeof trayKinds)[number]>>;
type AboutNoTray = Readonly<v.InferOutput<(typeof shopKinds)[number]>>;

const spellKinds = [
  v.object({ ...envelope, kind: v.literal('spell-begun'), stage: stageId }),
  v.object({ ...envelope, kind: v.literal('spell-ended'), stage: stageId, elapsed }),
] as const;
export type SpellEvent = Readonly<v.InferOutput<(typeof spellKinds)[number]>>;

interface Envelope extends EventId {
  readonly stamp: v.InferOutput<typeof stampSchema>;
  readonly zone: v.InferOutput<typeof zoneSchema>;
  readonly day: v.InferOutput<typeof shopDayText>;
  readonly person: v.InferOutput<typeof personId> | null;
  readonly clock?: 'doubtful';
}

/** Takes back one event, of which it carries a copy; the copy may itself be a void (undo of an undo). */
export interface VoidEvent extends Envelope {
  readonly kind: 'voided';
  readonly event: TallyEvent | VoidEvent;
}

const voidEvent: v.GenericSchema<unknown, VoidEvent> = v.object({
  ...envelope,
  kind: v.literal('voided'),
  event: v.lazy(() => voidableEvent),
});
/** What a void can take back. */
export const voidableEvent = v.union([tallyEvent, voidEvent]);

/** More words on one fact than a shop can ever write; whatever claims to be past it was not written by the app. */
export const mostRevisions = 1_000_000_000;

const setUpEvent = v.object({
  ...envelope,
  kind: v.literal('set-up'),
  set: registerSchema,
  /** One more than the `rev` of the value that its author saw; 0, or left out by older versions, for the first. */
  rev: v.exactOptional(v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(mostRevisions))),
  /** Of a change of route that moved pieces: the value before, and of how many trays, so that an undo brings it back. */
  replaced: v.exactOptional(
    v.object({ set: registerSchema, trays: v.pipe(v.number(), v.integer(), v.minValue(1)) }),
  ),
});
export type SetUpEvent = Readonly<v.InferOutput<typeof setUpEvent>>;

export type ShopEvent = TallyEvent | SpellEvent | VoidEvent | SetUpEvent;
export type EventKind = ShopEvent['kind'];

/** Every kind this version knows. An event of another kind comes from a newer version: see read-event.ts. */
export const eventKinds = [
  'tray-made',
  'tray-split',
  'tray-joined',
  'passed',
  'flawed',
  'hold-begun',
  'recounted',
  'rerouted',
  'piece-photographed',
  'raised',
  'parts-received',
  'parts-counted',
  'parts-cleaned',
  'parts-sampled',
  'moisture-read',
  'photo-taken',
  'photo-let-go',
  'shelf-moved',
  'spell-begun',
  'spell-ended',
  'voided',
  'set-up',
] as const satisfies readonly EventKind[];

export const envelopeSchema = v.object({ ...envelope, kind: v.string() });
/** Every event but a void. */
export const plainEvent = v.variant('kind', [...tallyKinds, ...spellKinds, setUpEvent]);
export const eventSchema = v.union([plainEvent, voidEvent]);

/** An event before the store has given it station, number and stamp. */
export type Draft<E extends ShopEvent = ShopEvent> = E extends ShopEvent
  ? Omit<E, 'station' | 'seq' | 'stamp'>
  : never;
