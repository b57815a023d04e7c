import * as v from 'valibot';
import { type Link, linkText, noLink } from './chain.ts';

export const holdingSchema = v.object({
  entries: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
  sum: linkText,
});
/**
 * How much a copy of the log holds: its entries, and their links added up bit by bit (exclusive or). Two copies that
 * hold the same entries have the same sum, in whatever order they came.
 */
export type Holding = Readonly<v.InferOutput<typeof holdingSchema>>;

export const emptyHolding: Holding = { entries: 0, sum: noLink };

/** The holding with one entry more; the caller knows that it was not counted yet. */
export function withLink({ entries, sum }: Holding, link: Link): Holding {
  return { entries: entries + 1, sum: added(sum, link) };
}

export function holdingOf(links: Iterable<Link>): Holding {
  const words = new Uint32Array(4);
  let entries = 0;
  for (const link of links) {
    entries += 1;
    addWords(words, link);
  }
  return { entries, sum: linkOf(words) };
}

/** Two holdings that have no entry in common, in one; or a holding without the one that is a part of it. */
export function joined(a: Holding, b: Holding): Holding {
  return { entries: a.entries + b.entries, sum: added(a.sum, b.sum) };
}
export function without(a: Holding, part: Holding): Holding {
  return { entries: a.entries - part.entries, sum: added(a.sum, part.sum) };
}

export function isSameHolding(a: Holding, b: Holding): boolean {
  return a.entries === b.entries && a.sum === b.sum;
}

/** Exclusive or of two links. */
function added(a: Link, b: Link): Link {
  const words = new Uint32Array(4);
  addWords(words, a);
  addWords(words, b);
  return linkOf(words);
}

/** Adds a link to four words of 32 bits. */
function addWords(words: Uint32Array, link: Link): void {
  for (let at = 0; at < 4; at += 1)
    words[at] = (words[at] ?? 0) ^ Number.parseInt(link.slice(at * 8, at * 8 + 8), 16);
}

function linkOf(words: Uint32Array): Link {
  return v.parse(linkText, [...words].map((word) => word.toString(16).padStart(8, '0')).join(''));
}
