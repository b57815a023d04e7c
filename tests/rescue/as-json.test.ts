import { expect, test } from 'vitest';
import { asJson, momentOf } from '../../src/rescue/as-json.ts';

test.each<[string, unknown, unknown]>([
  ['plain values as they are', { a: [1, 'x', true, null] }, { a: [1, 'x', true, null] }],
  ['maps and sets by their entries', new Map([['k', new Set([1])]]), { $map: [['k', { $set: [1] }]] }],
  ['moments', new Date(0), { $date: '1970-01-01T00:00:00.000Z' }],
  // 'Tally' in base64, RFC 4648 section 4, worked out by hand.
  ['bytes', new TextEncoder().encode('Tally'), { $bytes: 'VGFsbHk=' }],
  ['files', new Blob(['Tally'], { type: 'text/plain' }), { $file: 'VGFsbHk=', type: 'text/plain' }],
  ['numbers that JSON has not', [Number.NaN, 12n], [{ $number: 'NaN' }, { $number: '12' }]],
  ['nothing', [undefined], [{ $undefined: true }]],
])('carries %s', async (_, value, expected) => {
  expect(JSON.parse(JSON.stringify(await asJson(value)))).toEqual(expected);
});

test('a name like __proto__ stays a name', async () => {
  const hostile: unknown = JSON.parse('{"__proto__":{"polluted":true}}');
  expect(JSON.stringify(await asJson(hostile))).toBe('{"__proto__":{"polluted":true}}');
  expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
});

test('a value nested without end is cut, not followed for ever', async () => {
  const round: unknown[] = [];
  round.push(round);
  expect(JSON.stringify(await asJson(round))).toContain('nested too deep');
});

test('the moment of a record is that of its stamp', () => {
  expect(momentOf({ event: { stamp: { wall: 1772442000000, tick: 0 } } })).toBe(1772442000000);
  expect(momentOf({ name: 'wall' })).toBeNull();
  expect(momentOf({ stamp: { wall: 0, tick: 0 } })).toBeNull();
});
