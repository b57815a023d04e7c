import type { Link } from '../../domain/log/chain.ts';
import { linkOverBytes } from '../../domain/log/link-over-bytes.ts';
import type { KnownForms } from '../../domain/packed/known-forms.ts';
import type { TextEntry } from '../../domain/packed/text-entry.ts';

/** A line as this app writes it, up to its event. */
const beginning = /^\{"prev":"[0-9a-f]{32}","link":"[0-9a-f]{32}","event":/;
const [prevFrom, linkFrom, linkLength, eventFrom] = [9, 51, 32, 93];

/**
 * Reads a line without parsing it, given as text and as bytes, if that can be: when it is, to the letter, what `JSON.stringify`
 * makes of an entry, and its event has a known form. Undefined for any other, sound or not.
 */
export function quickLine({
  text,
  bytes,
  forms,
}: {
  text: string;
  bytes: Uint8Array;
  forms: KnownForms;
}): TextEntry | undefined {
  if (!beginning.test(text) || !text.endsWith('}')) return undefined;
  const event = text.slice(eventFrom, -1);
  const told = forms.tell(event);
  if (!told) return undefined;
  const prevTo = prevFrom + linkLength;
  const link = linkOverBytes(bytes.subarray(prevFrom, prevTo), bytes.subarray(eventFrom, -1));
  if (!text.startsWith(link, linkFrom)) return undefined;
  const { station, seq, wall, cut } = told;
  return { prev: text.slice(prevFrom, prevTo) as Link, link, station, seq, wall, text: event, cut };
}
