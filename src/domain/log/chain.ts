import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import * as v from 'valibot';
import type { StationId } from './ids.ts';
import type { LogEvent } from './read-event.ts';

/** A link of a station's chain: the first 128 bits of a SHA-256 sum, as 32 hex digits. */
export const linkText = v.pipe(v.string(), v.regex(/^[0-9a-f]{32}$/), v.brand('Link'));
export type Link = v.InferOutput<typeof linkText>;

/** What stands before the first event of a station. */
export const noLink = v.parse(linkText, '0'.repeat(32));

/** An event with its place in the chain of its station: whoever changes or leaves out one is found out. */
export interface Entry<E extends LogEvent = LogEvent> {
  readonly prev: Link;
  readonly link: Link;
  readonly event: E;
}

/**
 * The link of an event that follows `prev`: SHA-256 (FIPS 180-4) over the text of `prev` and the event as JSON, in the
 * order of fields that its station wrote. It guards against faults, not against a forger, who could sum up anew.
 */
export function linkAfter(prev: Link, event: LogEvent): Link {
  return linkOver(prev, JSON.stringify(event));
}

/** The same link, of an event that is still the JSON text that its station wrote. */
export function linkOver(prev: Link, json: string): Link {
  return bytesToHex(sha256(utf8ToBytes(prev + json)).subarray(0, 16)) as Link;
}

export function entryAfter<E extends LogEvent>(prev: Link, event: E): Entry<E> {
  return { prev, link: linkAfter(prev, event), event };
}

/** Whether an entry is as its station wrote it. What stands before it is not looked at. */
export function isSound({ prev, link, event }: Entry): boolean {
  return linkAfter(prev, event) === link;
}

/** Chains the events of whole logs, each station's from its first on; they come back in the order of their numbers. */
export function chained<E extends LogEvent>(events: Iterable<E>): readonly Entry<E>[] {
  const last = new Map<StationId, Link>();
  return [...events]
    .sort((a, b) => a.seq - b.seq)
    .map((event) => {
      const entry = entryAfter(last.get(event.station) ?? noLink, event);
      last.set(event.station, entry.link);
      return entry;
    });
}
