import * as v from 'valibot';

/** What a snapshot says of itself, beside its front and pages. */
export const editionSchema = v.object({ format: v.number(), edition: v.number(), pages: v.number() });
