import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import schema from '../../../shared/log.schema.json' with { type: 'json' };
import { eventKinds, eventSchema } from '../../../src/domain/log/event.ts';
import { registerSchema } from '../../../src/domain/set-up/register.ts';
import { logJsonSchema } from './log-json-schema.ts';
import { sampleLog, sampleOfKind } from './sample-events.ts';

const fits = new Ajv2020({ strict: true, allErrors: false }).compile(schema);
const log = sampleLog();
const setUps = log.filter((event) => event.kind === 'set-up');

describe('the schema of the log in shared/log.schema.json', () => {
  test('is what the app reads events with: run `node .ci/write-log-schema.mjs` when it is not', () => {
    expect(schema).toEqual(JSON.parse(JSON.stringify(logJsonSchema())));
  });

  test.each(eventKinds)('has a branch for the kind %s, and for that kind alone', (kind) => {
    expect(schema.anyOf).toContainEqual({ $ref: `#/$defs/${kind}` });
    expect(schema.$defs[kind].properties.kind).toEqual({ const: kind });
    expect(schema.anyOf).toHaveLength(eventKinds.length);
  });

  test('has a branch for every kind of set-up fact', () => {
    const registers = registerSchema.options.map(({ entries }) => entries.register.literal);
    const branches = schema.$defs['set-up-fact'].oneOf.map(({ properties }) => properties.register.const);
    expect(branches).toEqual(registers);
    expect(new Set(setUps.map(({ set }) => set.register))).toEqual(new Set(registers));
  });
});

describe('the schema takes', () => {
  test.each(log.map((event, index) => [index, event.kind, event] as const))(
    'entry %i of a whole log: %s',
    (_, __, event) => {
      expect(fits(event)).toBe(true);
    },
  );

  test('fields that a newer version has added, everywhere', () => {
    const voided = sampleOfKind('voided');
    if (voided.kind !== 'voided') throw new Error('a void');
    expect(
      fits({ ...voided, lid: 1, stamp: { ...voided.stamp, lid: 1 }, event: { ...voided.event, lid: 1 } }),
    ).toBe(true);
  });
});

describe('the schema refuses', () => {
  const passed = sampleOfKind('passed');
  const { station, ...nobody } = passed;
  const person = setUps.find(({ set }) => set.register === 'person');
  const named = (name: string) => ({
    ...person,
    set: { register: 'person', id: 'edda', value: { name, retired: false } },
  });

  test.each([
    ['an entry without a station', nobody],
    ['a number below one', { ...passed, seq: 0 }],
    ['a count that is a text', { ...passed, pieces: '3' }],
    ['half a piece', { ...passed, pieces: 0.5 }],
    ['an outcome that there is not', { ...sampleOfKind('flawed'), outcome: { kind: 'eaten' } }],
    ['a flaw without a reason', { ...sampleOfKind('flawed'), reasons: [] }],
    ['a void of set-up', { ...sampleOfKind('voided'), event: setUps[0] }],
    [
      'a void within a void of something broken',
      { ...sampleOfKind('voided'), event: { ...sampleOfKind('voided'), event: nobody } },
    ],
    [
      'a kind of set-up fact that there is not',
      { ...setUps[0], set: { register: 'supplier', id: 'mill', value: {} } },
    ],
    ['an empty name', named('')],
    ['a name of 81 characters', named('\u{1F333}'.repeat(81))],
    ['an entry of a kind of a newer version, of which it cannot judge', { ...passed, kind: 'weighed' }],
    ['no entry at all', []],
  ])('%s', (_, raw) => {
    expect(fits(raw)).toBe(false);
  });

  test('nothing that the app takes: a name of 80 emoji fits both', () => {
    const long = named('\u{1F333}'.repeat(80));
    expect([fits(long), v.is(eventSchema, long)]).toEqual([true, true]);
  });
});

type Path = readonly (string | number)[];

/** Every place within a value, from the outside in. */
function pathsOf(value: unknown, path: Path = []): readonly Path[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([name, inner]) => pathsOf(inner, [...path, name]))];
}

function replacedAt(value: unknown, { path: [name, ...rest], by }: { path: Path; by: unknown }): unknown {
  if (name === undefined || typeof value !== 'object' || value === null) return by;
  const [inner] = Object.entries(value).flatMap(([each, its]) => (each === name ? [its] : []));
  const next = { [name]: replacedAt(inner, { path: rest, by }) };
  return Array.isArray(value) ? Object.assign([...value], next) : { ...value, ...next };
}

test('with anything put anywhere, the schema and the app agree on what is an entry', () => {
  const numbers = fc.oneof(
    fc.integer({ min: -3, max: 12_000 }),
    fc.double({ noNaN: true, noDefaultInfinity: true }),
  );
  const texts = fc.oneof(
    fc.constantFrom(
      '',
      'bore',
      'first',
      'mended',
      'waiting',
      'held',
      'scrapped',
      '#aabbcc',
      '2026-13-45',
      'A',
      'B',
    ),
    fc.string({ unit: 'grapheme-ascii', maxLength: 700 }),
  );
  const anything = fc.oneof(numbers, texts, fc.constantFrom(null, true, [], {}), fc.constantFrom(...log));
  let taken = 0;
  fc.assert(
    fc.property(fc.constantFrom(...log), fc.nat(), anything, (event, where, by) => {
      const paths = pathsOf(event);
      const raw = replacedAt(event, { path: paths[where % paths.length] ?? [], by });
      const known = v.is(eventSchema, raw);
      if (known) taken += 1;
      expect(fits(raw)).toBe(known);
    }),
    { numRuns: 3000 },
  );
  // Both answers were tried, or the agreement would say little.
  expect(taken).toBeGreaterThan(100);
  expect(taken).toBeLessThan(2900);
});
