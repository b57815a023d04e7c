import { type Entry, entryAfter, noLink } from '../../src/domain/log/chain.ts';
import type { LogEvent } from '../../src/domain/log/read-event.ts';
import { foreignLog } from './drafts.ts';

const passed = foreignLog('forger').find((event) => event.kind === 'passed');
if (!passed) throw new Error('the log has no pass');

/** The text of an event with other fields, and a link that fits: a forger can sum up too. */
function forged(fields: object): string {
  return JSON.stringify(entryAfter(noLink, { ...passed, ...fields } as LogEvent));
}

/** A field with a name that an object literal would not take as its own. */
function withKey(key: string, value: string): string {
  const event = JSON.parse(JSON.stringify(passed).replace('{', `{"${key}":${value},`));
  return JSON.stringify(entryAfter(noLink, event));
}

const wall = Date.UTC(2200, 0, 1);
const move = { tray: 'forger-1', from: null, to: null, since: null };

/** Lines that no reader may take for an entry, by what is wrong with them. */
export const hostileLines: readonly (readonly [what: string, line: string])[] = [
  ['a prototype by its accessor', withKey('__proto__', '{"kind":"flawed"}')],
  ['a prototype by its accessor, deep inside', forged({ x: [{ y: JSON.parse('{"__proto__":{}}') }] })],
  ['a constructor', withKey('constructor', '{"prototype":{"pieces":1}}')],
  ['a prototype', withKey('prototype', '[]')],
  ['a time after the year 2200', forged({ stamp: { wall: wall + 1, tick: 0 } })],
  ['a number that would end all numbering', forged({ seq: Number.MAX_SAFE_INTEGER })],
  ['a tick that would stop the clock', forged({ stamp: { wall: 1, tick: Number.MAX_SAFE_INTEGER } })],
  ['a count beyond reason', forged({ moves: [{ ...move, pieces: 1e12 }] })],
  ['parts beyond reason', forged({ parts: [{ part: 'core', pieces: -1e14 }] })],
  ['a stretch of work longer than a year', forged({ elapsed: 1e13 })],
  ['an arrival after the year 2200', forged({ moves: [{ ...move, pieces: 1, since: wall + 1 }] })],
  ['a day that no calendar has', forged({ day: '2026-02-30' })],
  ['a day of a thirteenth month', forged({ day: '2026-13-01' })],
  ['a day in the year 9999', forged({ day: '9999-12-31' })],
  ['half a piece', forged({ pieces: 0.5 })],
  ['pieces below zero', forged({ pieces: -3 })],
  ['a station that is a path', forged({ station: '../../forger' })],
  ['a name longer than a name', forged({ zone: { name: 'x'.repeat(100), offset: 0 } })],
  ['another event under a link that does not fit', forged({}).replace('"elapsed":null', '"elapsed":1')],
  ['a nest of brackets', '['.repeat(30_000)],
  ['a nest that closes', `${'['.repeat(200)}${']'.repeat(200)}`],
  ['a nest inside of an event', forged({ x: JSON.parse(`${'[['.repeat(50)}${']]'.repeat(50)}`) })],
  ['a text without an end', '{"prev":"'],
  ['a number', '1e400'],
  ['nothing', 'null'],
  ['a list', '[]'],
  ['an object', '{}'],
  ['markup', '<script>alert(1)</script>'],
  ['a formula', '=1+2";=1+2'],
  ['a zero', '\u0000'],
];

/** Entries of a forger that keep to every rule: they read, and do no more harm than any tap. */
export const plausibleForgeries: readonly Entry[] = [
  { note: '<img src=x onerror=alert(1)>\u202e\u0007', of: { ...passed.of, code: '\u202e=1+2' } },
  { zone: { name: 'Nowhere/At-All', offset: -1080 } },
  { kind: 'weighed', grams: 1e300, station: 'later' },
  { stamp: { wall, tick: 1_000_000_000 }, seq: 1_000_000_000 },
  { of: { ...passed.of, tray: 'constructor' }, stage: 'tostring' },
].map((fields) => entryAfter(noLink, { ...passed, ...fields } as LogEvent));
