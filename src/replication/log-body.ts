import { utf8ToBytes } from '@noble/hashes/utils.js';
import { type Entry, type Link, linkOver } from '../domain/log/chain.ts';
import { holdingOf } from '../domain/log/holding.ts';
import { isSameHead, type RunHead } from '../domain/packed/packed-run.ts';
import { entryOfText } from '../domain/packed/text-entry.ts';
import { usualLimits } from '../store/backup/backup-format.ts';
import { lineReader } from '../store/backup/read-line.ts';
import type { Bytes } from '../store/backup/sealing-keys.ts';

/** Entries that follow on from each other, as the lines of their events. Their links are not kept: the chain gives them again. */
export function logBody(entries: readonly Entry[]): Uint8Array {
  return utf8ToBytes(entries.map(({ event }) => `${JSON.stringify(event)}\n`).join(''));
}

/** What is said of entries that follow on from each other. */
export function headOfEntries(entries: readonly Entry[]): RunHead {
  const [first, last] = [entries[0], entries.at(-1)];
  if (!first || !last) throw new Error('no entries have no head');
  return {
    station: first.event.station,
    first: first.event.seq,
    entries: entries.length,
    prev: first.prev,
    link: last.link,
    sum: holdingOf(entries.map(({ link }) => link)).sum,
  };
}

/** Judges the lines of a body as those of a backup are judged, and holds them against the head. */
export function logBodyReader(): (content: Bytes, head: RunHead) => readonly Entry[] {
  const read = lineReader(usualLimits);
  return (content, head) => {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(content);
    const lines = text.split('\n');
    if (lines.pop() !== '') throw new Error('its last line is cut');
    const entries: Entry[] = [];
    let prev: Link = head.prev;
    for (const event of lines) {
      if (event.length > usualLimits.line) throw new Error('a line is too long');
      const link = linkOver(prev, event);
      const line = read(utf8ToBytes(`{"prev":"${prev}","link":"${link}","event":${event}}`));
      if (line.kind === 'unreadable') throw new Error(line.problems.join());
      if (line.kind !== 'entry') throw new Error('a line is no event');
      entries.push(entryOfText(line.entry));
      prev = link;
    }
    const areNumbered = entries.every(
      ({ event }, at) => event.station === head.station && event.seq === head.first + at,
    );
    if (!areNumbered || !isSameHead(headOfEntries(entries), head)) throw new Error(unlikeHead);
    return entries;
  };
}

export const unlikeHead = 'it does not say what its head says';
