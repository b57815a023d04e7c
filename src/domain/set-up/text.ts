import * as v from 'valibot';

/** Longest name of anything in the shop, in characters as a person counts them (code points). */
export const longestName = 80;
/** Longest note or caution. */
export const longestNote = 500;

/** Control characters and the marks that turn the direction of text round: never stored in a name. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: the control characters are what it looks for
const unseen = /[\u0000-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]/g;

/** A name as it is kept: composed (NFC), without unseen marks, blanks run together. */
export function tidyText(typed: string): string {
  return typed.normalize('NFC').replace(unseen, ' ').replace(/\s+/g, ' ').trim();
}

function lengthOf(text: string): number {
  return [...text].length;
}

const atMost = (most: number) => v.check((text: string) => lengthOf(text) <= most);

export const nameSchema = v.pipe(v.string(), v.minLength(1), atMost(longestName));
export const noteSchema = v.pipe(v.string(), atMost(longestNote));

export type TextProblem =
  | { readonly kind: 'empty' }
  | { readonly kind: 'too-long'; readonly length: number; readonly most: number };

/** What is wrong with a typed name, or null. */
export function problemOfName(typed: string): TextProblem | null {
  const name = tidyText(typed);
  if (name === '') return { kind: 'empty' };
  return problemOfLength(name, longestName);
}

/** What is wrong with a typed note, or null; a note may be empty. */
export function problemOfNote(typed: string): TextProblem | null {
  return problemOfLength(tidyText(typed), longestNote);
}

function problemOfLength(text: string, most: number): TextProblem | null {
  const length = lengthOf(text);
  return length > most ? { kind: 'too-long', length, most } : null;
}

/** Whether two names read alike to a person: case and accents composed alike are set aside. */
export function sameName(a: string, b: string): boolean {
  return tidyText(a).toLowerCase() === tidyText(b).toLowerCase();
}
