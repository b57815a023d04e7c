import * as v from 'valibot';
import { type Entry, isSound, linkText } from './chain.ts';
import type { ShopEvent } from './event.ts';
import { type NewerEvent, readEvent } from './read-event.ts';

const outline = v.object({ prev: linkText, link: linkText, event: v.unknown() });

export type ReadEntry =
  | { readonly kind: 'sound'; readonly of: 'known'; readonly entry: Entry<ShopEvent> }
  | { readonly kind: 'sound'; readonly of: 'newer'; readonly entry: Entry<NewerEvent> }
  | { readonly kind: 'damaged'; readonly problems: readonly string[] };

/** Judges an entry that comes from outside (a store, a twin, a file, a broker). Never throws. */
export function readEntry(raw: unknown): ReadEntry {
  const shape = v.safeParse(outline, raw);
  if (!shape.success) return { kind: 'damaged', problems: shape.issues.map(({ message }) => message) };
  const read = readEvent(shape.output.event);
  if (read.kind === 'damaged') return read;
  const { prev, link } = shape.output;
  if (!isSoundAtAnyDepth({ prev, link, event: read.event })) {
    return { kind: 'damaged', problems: ['its link does not fit'] };
  }
  return read.kind === 'known'
    ? { kind: 'sound', of: 'known', entry: { prev, link, event: read.event } }
    : { kind: 'sound', of: 'newer', entry: { prev, link, event: read.event } };
}

/** An event of an unknown kind may nest deeper than JSON can be written: no station ever wrote that. */
function isSoundAtAnyDepth(entry: Entry): boolean {
  try {
    return isSound(entry);
  } catch {
    return false;
  }
}
