import * as v from 'valibot';
import { routeId, shopDayText, variantId } from '../log/ids.ts';
import { money } from '../log/stores-facts.ts';
import { whole } from '../log/whole.ts';
import { nameSchema } from './text-schema.ts';

const retired = v.boolean();

/** What a batch was expected to come to, by a forecast that the maker kept as its plan. */
export const batchPlan = v.object({
  /** When it was kept. */
  day: shopDayText,
  /** Pieces made up in all, and those that come out, as firsts or at all. */
  started: whole(0, 9_999_999),
  firsts: whole(0, 9_999_999),
  comesOut: whole(0, 9_999_999),
  /** Work on its pieces, from the first to the last. */
  minutes: whole(0, 99_999_999),
  /** Of all that comes out, with what is lost in it; minor units, null where something was not known. */
  cost: money,
  /** By which nothing was in work any more in 85 of 100 futures; null where that lay too far off. */
  done: v.nullable(shopDayText),
});
export type BatchPlan = v.InferOutput<typeof batchPlan>;

export const batchFact = v.object({
  name: nameSchema,
  route: routeId,
  wanted: v.array(
    v.object({
      variant: variantId,
      good: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(99_999)),
    }),
  ),
  due: v.nullable(shopDayText),
  retired,
  /** How sure one wants to be of enough good ones, whole per cent; left out while nobody has said, see `usualChance`. */
  chance: v.exactOptional(whole(50, 99)),
  /** Left out while none was kept. */
  plan: v.exactOptional(batchPlan),
});
/** Whole per cent. */
export const usualChance = 90;

export type BatchFact = Readonly<v.InferOutput<typeof batchFact>>;
