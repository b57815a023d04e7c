import * as v from 'valibot';

/** Longest name of anything in the shop, in characters as a person counts them (code points). */
export const longestName = 80;
/** Longest note or caution. */
export const longestNote = 500;
/** Longest note of a mark: it stands beside a chart. */
export const longestMarkNote = 200;

/** Characters as a person counts them. */
export function lengthOf(text: string): number {
  return [...text].length;
}

const atMost = (most: number) => v.check((text: string) => lengthOf(text) <= most);

export const nameSchema = v.pipe(v.string(), v.minLength(1), atMost(longestName));
export const noteSchema = v.pipe(v.string(), atMost(longestNote));
export const markNoteSchema = v.pipe(v.string(), v.minLength(1), atMost(longestMarkNote));
