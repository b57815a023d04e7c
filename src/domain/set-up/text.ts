import { lengthOf, longestMarkNote, longestName, longestNote } from './text-schema.ts';

/** Control characters, line ends among them: a blank in a name. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: the control characters are what it looks for
const controls = /[\u0000-\u001f\u007f-\u009f]/g;
/**
 * Marks that turn the direction of text round, and blanks of no width: never stored in a name. The joiners that
 * some scripts and emoji need (U+200C, U+200D) stay.
 */
const unseen = /[\u00ad\u061c\u200b\u200e\u200f\u202a-\u202e\u2060\u2066-\u2069\ufeff]/g;

/** A name as it is kept: composed (NFC), without unseen marks, blanks run together. */
export function tidyText(typed: string): string {
  return typed.replace(unseen, '').replace(controls, ' ').replace(/\s+/g, ' ').trim().normalize('NFC');
}

/**
 * A text of unknown origin as it may be shown: without the marks that turn text round or cannot be seen, and without
 * control characters; a line end or a tab is a blank. The event itself keeps what it has: its link is summed over it.
 */
export function plainText(text: string): string {
  return text
    .replace(unseen, '')
    .replace(/[\t\n\v\f\r\u0085]+/g, ' ')
    .replace(controls, '');
}

export type TextProblem =
  | { readonly kind: 'empty' }
  | { readonly kind: 'too-long'; readonly length: number; readonly most: number };

/** A text that nobody can see is empty: it has a letter, a digit or some other sign. */
const legible = /[\p{L}\p{N}\p{P}\p{S}]/u;

/** What is wrong with a typed name, or null. */
export function problemOfName(typed: string): TextProblem | null {
  return problemOfText(typed, longestName);
}

/** What is wrong with the typed note of a mark, or null; it says something. */
export function problemOfMarkNote(typed: string): TextProblem | null {
  return problemOfText(typed, longestMarkNote);
}

function problemOfText(typed: string, most: number): TextProblem | null {
  const text = tidyText(typed);
  if (!legible.test(text)) return { kind: 'empty' };
  return problemOfLength(text, most);
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
