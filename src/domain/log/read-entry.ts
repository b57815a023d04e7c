import * as v from 'valibot';
import { type Entry, isSound, linkText } from './chain.ts';
import { readEvent } from './read-event.ts';

const outline = v.object({ prev: linkText, link: linkText, event: v.unknown() });

export type ReadEntry =
  | { readonly kind: 'sound'; readonly entry: Entry }
  | { readonly kind: 'damaged'; readonly problems: readonly string[] };

/** Judges an entry that comes from outside (a store, a twin, a file, a broker). Never throws. */
export function readEntry(raw: unknown): ReadEntry {
  const shape = v.safeParse(outline, raw);
  if (!shape.success) return { kind: 'damaged', problems: shape.issues.map(({ message }) => message) };
  const read = readEvent(shape.output.event);
  if (read.kind === 'damaged') return read;
  const { prev, link } = shape.output;
  const entry = { prev, link, event: read.event };
  return isSoundAtAnyDepth(entry)
    ? { kind: 'sound', entry }
    : { kind: 'damaged', problems: ['its link does not fit'] };
}

/** An event of an unknown kind may nest deeper than JSON can be written: no station ever wrote that. */
function isSoundAtAnyDepth(entry: Entry): boolean {
  try {
    return isSound(entry);
  } catch {
    return false;
  }
}
