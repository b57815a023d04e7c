import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { cureCalendar } from '../../../src/domain/export/cure-calendar.ts';
import { cureRounds } from '../../../src/domain/rollup/holds.ts';
import { aWorkshop } from '../../support/a-shop.ts';
import { cureMinutes } from '../../support/workshop.ts';

/** Two rounds of one tray and one of another. */
function rounds() {
  const shop = aWorkshop();
  const [tray, other] = [shop.tray('ash-copper', 6), shop.tray('plum-copper', 2)];
  shop.pass(tray, 'bore', { pieces: 6 });
  shop.pass(other, 'bore', { pieces: 2 });
  const begun = shop.clock();
  shop.load(tray, 'glue', { pieces: 3 });
  shop.load(other, 'glue', { pieces: 2 });
  shop.later(60);
  shop.load(tray, 'glue', { pieces: 2 });
  return { found: cureRounds(shop.shop), begun };
}

const now = Date.UTC(2026, 2, 2, 18, 30, 0, 1);
const say = () => ({ summary: 'A17K is cured', description: '' });

const write = (text = 'A17K is cured') =>
  cureCalendar(rounds().found, { now, name: 'Cures', say: () => ({ summary: text, description: text }) });
const parse = (text: string) => new ICAL.Component(ICAL.parse(text));
const eventsOf = (text: string) =>
  parse(text)
    .getAllSubcomponents('vevent')
    .map((part) => new ICAL.Event(part));

describe('the calendar of cures', () => {
  test('has an event for each round, at the moment when it is ready, with an alarm then', () => {
    const { found, begun } = rounds();
    const text = cureCalendar(found, { now, name: 'Cures', say });
    const events = eventsOf(text);
    const minute = 60_000;
    expect(events.map(({ startDate }) => startDate.toJSDate().getTime())).toEqual(
      [0, 1, 62].map((after) => begun + (cureMinutes + after) * minute),
    );
    expect(events.every(({ startDate }) => startDate.zone.tzid === 'UTC')).toBe(true);
    for (const event of events) {
      const alarm = event.component.getFirstSubcomponent('valarm');
      expect(alarm?.getFirstPropertyValue('action')).toBe('DISPLAY');
      expect(String(alarm?.getFirstPropertyValue('trigger'))).toBe('PT0S');
      expect(alarm?.getFirstPropertyValue('description')).toBe('A17K is cured');
      // A stamp that is begun counts: 18:30:00.001 is written as 18:30:01.
      expect(String(event.component.getFirstPropertyValue('dtstamp'))).toBe('2026-03-02T18:30:01Z');
    }
  });

  test('is one of version 2.0 that names its maker and its name', () => {
    const calendar = parse(write());
    expect(calendar.name).toBe('vcalendar');
    expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
    expect(calendar.getFirstPropertyValue('prodid')).toBe('-//Tallywright//Cures//EN');
    expect(calendar.getFirstPropertyValue('name')).toBe('Cures');
  });

  test('gives a round the same UID at each export, and each round its own', () => {
    const { found } = rounds();
    const idsAt = (when: number) =>
      eventsOf(cureCalendar(found, { now: when, name: 'Cures', say })).map(({ uid }) => uid);
    expect(idsAt(now + 86_400_000)).toEqual(idsAt(now));
    expect(new Set(idsAt(now)).size).toBe(3);
  });

  test('of a round that was loaded into, taken from or undone updates the entry that a calendar has', () => {
    const tablet = aWorkshop();
    const tray = tablet.tray('ash-copper', 6);
    tablet.pass(tray, 'bore', { pieces: 6 });
    const calendar = new Map<string, ICAL.Event>();
    /** Brings a file in as RFC 5546, 2.1.5 has it: the greater SEQUENCE stands, of equal ones the later DTSTAMP. */
    const bringIn = () => {
      const parts = {
        now: tablet.clock(),
        name: 'Cures',
        say: ({ pieces }: { pieces: number }) => ({ summary: `${pieces} cured`, description: '' }),
      };
      for (const event of eventsOf(cureCalendar(cureRounds(tablet.shop), parts))) {
        const known = calendar.get(event.uid);
        const stamp = (of: ICAL.Event) => String(of.component.getFirstPropertyValue('dtstamp'));
        const isNewer =
          !known ||
          event.sequence > known.sequence ||
          (event.sequence === known.sequence && stamp(event) > stamp(known));
        if (isNewer) calendar.set(event.uid, event);
      }
      return [...calendar.values()].map(({ summary, startDate }) => [
        summary,
        (startDate.toJSDate().getTime() - begun) / 60_000 - cureMinutes,
      ]);
    };
    const begun = tablet.clock();
    const sinceBegun = () => (tablet.clock() - begun) / 60_000;
    tablet.load(tray, 'glue', { pieces: 3 });
    expect(bringIn()).toEqual([['3 cured', 0]]);
    tablet.later(10);
    const second = sinceBegun();
    const [more] = tablet.load(tray, 'glue', { pieces: 2 });
    expect(bringIn()).toEqual([['5 cured', second]]);
    if (!more) throw new Error('two more were loaded');
    tablet.undo([more]);
    expect(bringIn()).toEqual([['3 cured', 0]]);
    tablet.pass(tray, 'glue', { held: true });
    expect(bringIn()).toEqual([['2 cured', 0]]);
    // Another round of the tray has an entry of its own.
    tablet.later(60);
    const third = sinceBegun();
    tablet.load(tray, 'glue');
    expect(bringIn()).toEqual([
      ['2 cured', 0],
      ['1 cured', third],
    ]);
  });

  test('has a SEQUENCE that RFC 5545, 3.3.8 lets be an integer, until the year 3000', () => {
    const [event] = eventsOf(cureCalendar(rounds().found, { now: Date.UTC(3000, 0), name: 'Cures', say }));
    expect(event?.sequence).toBeGreaterThan(0);
    expect(event?.sequence).toBeLessThanOrEqual(2_147_483_647);
  });

  test('without rounds is a calendar all the same', () => {
    expect(eventsOf(cureCalendar([], { now, name: 'Cures', say }))).toEqual([]);
  });

  test.each([
    'Glue; then wax, twice',
    'a back\\slash, a "quote" and a: colon',
    'two\nlines\r\nor three',
    'Ébréché, שבר בעץ, 🔥 burn '.repeat(12),
  ])('carries the text %j to the sign', (text) => {
    const [event] = eventsOf(write(text));
    expect(event?.summary).toBe(text.replaceAll('\r\n', '\n'));
    expect(event?.description).toBe(text.replaceAll('\r\n', '\n'));
  });

  test('leaves out control characters, which may not stand in a text', () => {
    expect(eventsOf(write('a\u0000b\u0007c\u007f\u0085d'))[0]?.summary).toBe('abcd');
  });

  test('breaks its lines as RFC 5545 has it: CRLF, 75 octets at most, no sign cut in two', () => {
    const text = fc.string({ unit: 'grapheme', maxLength: 300 });
    fc.assert(
      fc.property(text, (summary) => {
        const written = write(summary);
        expect(written.endsWith('\r\n')).toBe(true);
        const octets = new TextEncoder();
        for (const line of written.slice(0, -2).split('\r\n')) {
          expect(octets.encode(line).length).toBeLessThanOrEqual(75);
          expect(line).not.toMatch(/[\r\n]/);
          expect(line.isWellFormed()).toBe(true);
        }
        expect(eventsOf(written)).toHaveLength(3);
      }),
      { numRuns: 60 },
    );
  });
});
