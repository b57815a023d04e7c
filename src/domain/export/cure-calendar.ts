import type { CureRound } from '../rollup/holds.ts';

export interface CalendarParts {
  /** When it is written, ms UTC. */
  readonly now: number;
  /** What the calendar is called. */
  readonly name: string;
  /** What a round is called, and what else is to be said of it. */
  readonly say: (round: CureRound) => { readonly summary: string; readonly description: string };
}

/**
 * The times at which rounds are ready, as an iCalendar stream (RFC 5545): an event and an alarm each, in UTC, so that no
 * zone has to be told. A round keeps its UID (3.8.4.7) however often it is exported and whatever more is loaded into it. A
 * later export has a SEQUENCE that is greater, or the same with a later DTSTAMP, so that it takes the place of an earlier
 * one (3.8.7.4; RFC 5546, 2.1.5).
 */
export function cureCalendar(rounds: readonly CureRound[], { now, name, say }: CalendarParts): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Tallywright//Cures//EN',
    'CALSCALE:GREGORIAN',
    'METHOD:PUBLISH',
    `NAME:${escaped(name)}`,
    ...rounds.flatMap((round) => eventOf(round, { now, ...say(round) })),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}

function eventOf(
  { tray, stage, soonest, ready }: CureRound,
  { now, summary, description }: { now: number; summary: string; description: string },
): readonly string[] {
  return [
    'BEGIN:VEVENT',
    `UID:${tray.tray}.${stage}.${soonest}.cure.tallywright`,
    `DTSTAMP:${utc(now)}`,
    `SEQUENCE:${revision(now)}`,
    `DTSTART:${utc(ready)}`,
    'DURATION:PT15M',
    `SUMMARY:${escaped(summary)}`,
    `DESCRIPTION:${escaped(description)}`,
    'TRANSP:TRANSPARENT',
    'BEGIN:VALARM',
    'ACTION:DISPLAY',
    `DESCRIPTION:${escaped(summary)}`,
    'TRIGGER:PT0S',
    'END:VALARM',
    'END:VEVENT',
  ];
}

/** Exports are not remembered, so the time stands for their number: whole minutes, which fit into 31 bits (3.3.8). */
const revision = (now: number) => Math.floor(now / 60_000);

/** A moment as a date with UTC time (3.3.5), to the second: one begun counts, so that nothing is told too soon. */
function utc(ms: number): string {
  const text = new Date(Math.ceil(ms / 1000) * 1000).toISOString();
  return `${text.slice(0, 19).replaceAll(/[-:]/g, '')}Z`;
}

/** A text as a property has it (3.3.11); other control characters may not stand in one. */
function escaped(text: string): string {
  return text
    .replaceAll(/\r\n?/g, '\n')
    .replaceAll(/[^\n\t\P{Cc}]/gu, '')
    .replaceAll(/[\\;,]/g, '\\$&')
    .replaceAll('\n', '\\n');
}

/** Octets of a line, its break aside (3.1). */
const longest = 75;

/** A line folded so that none is longer than 75 octets; no sign is cut in two. */
function folded(line: string): string {
  let written = '';
  let octets = 0;
  for (const sign of line) {
    const more = octetsOf(sign);
    if (octets + more > longest) {
      written += '\r\n ';
      octets = 1;
    }
    written += sign;
    octets += more;
  }
  return written;
}

/** Octets of a sign in UTF-8. */
function octetsOf(sign: string): number {
  const code = sign.codePointAt(0) ?? 0;
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code < 0x10000 ? 3 : 4;
}
