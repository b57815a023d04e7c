import * as v from 'valibot';
import { speciesId, variantId } from './ids.ts';
import { gradeSchema, piecesSchema } from './place.ts';
import { money } from './stores-facts.ts';

/** Where finished pieces are: on the shelf from their last stage on, until somebody takes them elsewhere. */
export const shelfPlaces = ['shelf', 'listed', 'sold', 'given', 'kept'] as const;
const shelfPlace = v.picklist(shelfPlaces);
export type ShelfPlace = v.InferOutput<typeof shelfPlace>;

/** Finished pieces went from one place to another, or back. */
export const shelfMoved = {
  kind: v.literal('shelf-moved'),
  variant: variantId,
  species: speciesId,
  grade: gradeSchema,
  pieces: piecesSchema,
  from: shelfPlace,
  to: shelfPlace,
  /** What each brought, in minor units, where they were sold and it is known. */
  price: money,
};
