import * as v from 'valibot';
import { noteSchema } from '../set-up/text-schema.ts';
import { partId } from './ids.ts';

/** More pieces of one part than a shop's stores will ever hold. */
export const mostParts = 999_999;
const count = (least: number) => v.pipe(v.number(), v.integer(), v.minValue(least), v.maxValue(mostParts));

/** One line of a delivery. */
const received = v.object({
  part: partId,
  pieces: count(1),
  /** What the line cost as a whole, in whole minor units (cents, pence); null is not known. */
  cost: v.nullable(v.pipe(v.number(), v.safeInteger(), v.minValue(0))),
});

/** Parts came into the stores. */
export const partsReceived = {
  kind: v.literal('parts-received'),
  parts: v.pipe(v.array(received), v.minLength(1)),
  note: noteSchema,
};
