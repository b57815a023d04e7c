import * as v from 'valibot';
import { noteSchema } from '../set-up/text-schema.ts';
import { partId } from './ids.ts';

/** More pieces of one part than a shop's stores will ever hold. */
export const mostParts = 999_999;
export const partCount = (least: number) =>
  v.pipe(v.number(), v.integer(), v.minValue(least), v.maxValue(mostParts));
/** Money is whole minor units (cents, pence); null is not known. */
export const money = v.nullable(v.pipe(v.number(), v.safeInteger(), v.minValue(0)));

/** One line of a delivery. */
const received = v.object({
  part: partId,
  pieces: partCount(1),
  /** What the line cost as a whole. */
  cost: money,
});

/** Parts came into the stores. */
export const partsReceived = {
  kind: v.literal('parts-received'),
  parts: v.pipe(v.array(received), v.minLength(1)),
  note: noteSchema,
};

const countReason = v.picklist(['first-count', 'miscounted', 'found', 'lost', 'spoilt']);
export type CountReason = v.InferOutput<typeof countReason>;

/** Where parts lie: ready to be used, or saved from scrap and still to be cleaned. */
const heap = v.picklist(['shelf', 'to-clean']);
export type Heap = v.InferOutput<typeof heap>;

/** A person has counted what lies there of a part. */
export const partsCounted = {
  kind: v.literal('parts-counted'),
  part: partId,
  heap,
  counted: partCount(0),
  /** What the count adds to what the log had: below 0 takes away. */
  pieces: v.pipe(v.number(), v.safeInteger()),
  why: countReason,
  note: noteSchema,
};

/** Saved parts were cleaned: some are back on the shelf, some were lost over it. */
export const partsCleaned = {
  kind: v.literal('parts-cleaned'),
  part: partId,
  back: partCount(0),
  lost: partCount(0),
};

const verdict = v.picklist(['accepted', 'refused']);
export type Verdict = v.InferOutput<typeof verdict>;

/** Of a delivery a sample was checked. It changes no count: what is sent back or thrown away a person counts out. */
export const partsSampled = {
  kind: v.literal('parts-sampled'),
  part: partId,
  /** How many came, the worst share of bad ones that is bearable (hundredths of a per cent), and the plan for both. */
  lot: partCount(1),
  limit: partCount(1),
  sample: partCount(1),
  /** With at most so many bad ones in the sample the delivery is accepted. */
  accept: partCount(0),
  bad: partCount(0),
  /** The code letter of the plan; null where every piece was checked. */
  letter: v.nullable(v.pipe(v.string(), v.maxLength(1))),
  verdict,
  note: noteSchema,
};
