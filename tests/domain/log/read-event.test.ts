import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { type EventKind, eventKinds, eventSchema } from '../../../src/domain/log/event.ts';
import { deepestVoid, readEvent } from '../../../src/domain/log/read-event.ts';
import { sampleLog, sampleOfKind } from './sample-events.ts';

const log = sampleLog();
const passed = sampleOfKind('passed');
const voided = sampleOfKind('voided');
const setUp = sampleOfKind('set-up');
const problemsOf = (raw: unknown) => {
  const read = readEvent(raw);
  return read.kind === 'damaged' ? read.problems : [];
};

describe('an event that this version knows', () => {
  test.each(eventKinds)('of kind %s is read, and comes back as it came', (kind) => {
    const event = sampleOfKind(kind);
    const read = readEvent(event);
    expect(read.kind).toBe('known');
    expect(read.kind === 'known' && read.event).toBe(event);
  });

  test.each(eventKinds)('of kind %s keeps a field that a newer version has added', (kind) => {
    const event = { ...sampleOfKind(kind), humidity: 54, note2: { deep: [1] } };
    const read = readEvent(event);
    expect(read.kind === 'known' && read.event).toBe(event);
    expect(read.kind === 'known' && read.event).toMatchObject({ humidity: 54, note2: { deep: [1] } });
  });

  test('keeps such a field deep inside, in a move and in a copy that a void carries', () => {
    const [move] = 'moves' in passed ? passed.moves : [];
    const richer = { ...passed, moves: [{ ...move, lid: 'closed' }] };
    const read = readEvent({ ...voided, event: richer });
    expect(read.kind === 'known' && read.event).toMatchObject({ event: { moves: [{ lid: 'closed' }] } });
  });

  test('is judged as the schema judges it', () => {
    for (const event of log) expect(v.is(eventSchema, event), event.kind).toBe(true);
  });
});

describe('an event of a newer version is kept and passed on, not counted', () => {
  const newer = { ...passed, kind: 'weighed', grams: 41 };

  test.each([
    ['of a kind that this version does not know', newer],
    ['that takes back an event of such a kind', { ...voided, event: newer }],
    ['that takes back the taking back of one', { ...voided, event: { ...voided, event: newer } }],
    [
      'that sets up a kind of fact that this version does not know',
      { ...setUp, set: { register: 'supplier', id: 'mill', value: { name: 'Mill' } } },
    ],
  ])('%s', (_, raw) => {
    expect(readEvent(raw)).toEqual({ kind: 'newer', event: raw });
  });

  test('but not when its envelope is damaged: nobody could say whose it is', () => {
    expect(readEvent({ ...newer, seq: 0 }).kind).toBe('damaged');
    expect(readEvent({ ...voided, event: { ...newer, station: 7 } }).kind).toBe('damaged');
  });
});

describe('a damaged event is named with the place of the damage', () => {
  test.each([
    ['station', { ...passed, station: 'Bench!' }],
    ['seq', { ...passed, seq: 0 }],
    ['seq', { ...passed, seq: 1.5 }],
    ['stamp.wall', { ...passed, stamp: { wall: -1, tick: 0 } }],
    ['stamp.tick', { ...passed, stamp: { wall: 1, tick: 0.5 } }],
    ['zone.offset', { ...passed, zone: { name: 'Europe/London', offset: 5000 } }],
    ['day', { ...passed, day: '2 March' }],
    ['person', { ...passed, person: 3 }],
    ['kind', { ...passed, kind: 7 }],
    ['pieces', { ...passed, pieces: 0 }],
    ['pieces', { ...passed, pieces: 2.5 }],
    ['pieces', { ...passed, pieces: '3' }],
    ['again', { ...passed, again: -1 }],
    ['elapsed', { ...passed, elapsed: -5 }],
    ['of.tray', { ...passed, of: { ...('of' in passed && passed.of), tray: '' } }],
    ['moves.0.pieces', { ...passed, moves: [{ ...firstMove(), pieces: 0 }] }],
    ['moves.0.to.at', { ...passed, moves: [{ ...firstMove(), to: { at: 'lost' } }] }],
    ['outcome.kind', { ...sampleOfKind('flawed'), outcome: { kind: 'eaten' } }],
    ['reasons', { ...sampleOfKind('flawed'), reasons: [] }],
    ['why', { ...sampleOfKind('recounted'), why: 'whim' }],
    [
      'set.value.name',
      { ...setUp, set: { register: 'person', id: 'edda', value: { name: '', retired: false } } },
    ],
    ['event.pieces', { ...voided, event: { ...passed, pieces: 0 } }],
    ['event.event.seq', { ...voided, event: { ...voided, event: { ...passed, seq: -1 } } }],
    ['event.kind', { ...voided, event: setUp }],
    ['event.kind', { ...voided, event: sampleOfKind('spell-begun') }],
    ['event.', { ...voided, event: undefined }],
  ])('at %s (row %#)', (place, raw) => {
    expect(readEvent(raw).kind).toBe('damaged');
    expect(problemsOf(raw).map((problem) => problem.slice(0, problem.indexOf(': ')))).toContain(place);
  });

  test.each([
    [undefined],
    [null],
    [0],
    [''],
    ['passed'],
    [[]],
    [{}],
    [[passed]],
    [() => passed],
    [Symbol('x')],
  ])('what is no event at all: %s', (raw) => {
    expect(readEvent(raw).kind).toBe('damaged');
  });

  test('a void that nests deeper than any hand could is refused and does not overflow', () => {
    const nested = (levels: number): unknown => {
      let event: unknown = passed;
      for (let level = 0; level < levels; level += 1) event = { ...voided, event };
      return event;
    };
    expect(readEvent(nested(deepestVoid)).kind).toBe('known');
    expect(readEvent(nested(deepestVoid + 1)).kind).toBe('damaged');
    expect(readEvent(nested(50_000)).kind).toBe('damaged');
  });
});

function firstMove() {
  return 'moves' in passed ? passed.moves[0] : undefined;
}

describe('reading never throws', () => {
  const kinds = fc.constantFrom<EventKind | 'weighed'>(...eventKinds, 'weighed');

  test('whatever it is given', () => {
    fc.assert(
      fc.property(
        fc.anything({
          withNullPrototype: true,
          withBigInt: true,
          withDate: true,
          withMap: true,
          withSparseArray: true,
        }),
        (raw) => {
          expect(readEvent(raw).kind).toBe('damaged');
        },
      ),
      { numRuns: 1000 },
    );
  });

  test('whatever JSON stands under the names of an event', () => {
    const names = [
      'stamp',
      'zone',
      'of',
      'moves',
      'parts',
      'outcome',
      'set',
      'event',
      'elapsed',
      'into',
      'reasons',
    ];
    const fields = fc.dictionary(fc.constantFrom(...names), fc.jsonValue());
    fc.assert(
      fc.property(kinds, fields, (kind, wrong) => {
        const { station, seq, stamp, zone, day, person } = passed;
        const raw = { station, seq, stamp, zone, day, person, kind, ...wrong };
        expect(['known', 'newer', 'damaged']).toContain(readEvent(raw).kind);
      }),
      { numRuns: 1000 },
    );
  });

  test('and an event with one field turned into something else is known only if the schema would have it', () => {
    fc.assert(
      fc.property(fc.constantFrom(...log), fc.nat(), fc.jsonValue(), (event, which, value) => {
        const names = Object.keys(event).filter(
          (name) => name !== 'kind' && name !== 'set' && name !== 'event',
        );
        const raw = { ...event, [names[which % names.length] ?? '']: value };
        expect(readEvent(raw).kind === 'known').toBe(v.is(eventSchema, raw));
      }),
      { numRuns: 1000 },
    );
  });
});
