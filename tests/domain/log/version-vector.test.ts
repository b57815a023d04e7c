import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { cases } from '../../../shared/check-values/grow-only-set.json' with { type: 'json' };
import { stationId } from '../../../src/domain/log/ids.ts';
import {
  type EventId,
  eventKey,
  hasSeen,
  markSeen,
  type VersionVector,
} from '../../../src/domain/log/version-vector.ts';

const stations = ['bench', 'lathe', 'office'].map((name) => v.parse(stationId, name));
const [bench] = stations;

function seenOf(ids: readonly EventId[]): VersionVector {
  const seen: VersionVector = new Map();
  for (const id of ids) markSeen(seen, id);
  return seen;
}

const numbersOf = (...numbers: readonly number[]) =>
  numbers.flatMap((seq) => (bench ? [{ station: bench, seq }] : []));

describe('what a store holds', () => {
  test('is written as one number as long as there is no gap', () => {
    expect(seenOf(numbersOf(1, 2, 3))).toEqual(new Map([[bench, { upTo: 3, extra: new Set() }]]));
  });

  test('names what lies beyond a gap, and draws it in when the gap closes', () => {
    const seen = seenOf(numbersOf(1, 4, 3, 7));
    expect(seen).toEqual(new Map([[bench, { upTo: 1, extra: new Set([3, 4, 7]) }]]));
    for (const id of numbersOf(2)) markSeen(seen, id);
    expect(seen).toEqual(new Map([[bench, { upTo: 4, extra: new Set([7]) }]]));
  });

  test('says of an event in a gap that it is not held', () => {
    const seen = seenOf(numbersOf(1, 3));
    expect(numbersOf(1, 2, 3, 4).map((id) => hasSeen(seen, id))).toEqual([true, false, true, false]);
  });

  test('knows nothing of a station that it never heard of', () => {
    const [, lathe] = stations;
    expect(lathe && hasSeen(seenOf(numbersOf(1)), { station: lathe, seq: 1 })).toBe(false);
  });
});

test('the key of an event is that of no other', () => {
  // A station's id may end in a number; the colon, which no id holds, keeps the two parts apart.
  const [one, other] = ['bench-1', 'bench'].map((name) => v.parse(stationId, name));
  if (!one || !other) throw new Error('ids');
  expect(eventKey({ station: one, seq: 1 })).not.toBe(eventKey({ station: other, seq: 11 }));
});

/** Laws of the state-based grow-only set: see the source in the check values. */
describe(`a grow-only set of events: ${cases['crdt-gset'].source}`, () => {
  const { inputs, expected } = cases['crdt-gset'];
  const idsOf = (names: readonly string[]) => numbersOf(...names.map((name) => Number(name.slice(1))));

  test('the published sets, in any order, come to the same union, and twice adds nothing', () => {
    const { A, B, C } = inputs;
    expect(seenOf(idsOf([...A, ...B]))).toEqual(seenOf(idsOf(expected.AB)));
    for (const order of [
      [A, B, C],
      [C, B, A],
      [B, A, C],
      [A, A, B, C, B],
    ]) {
      expect(seenOf(idsOf(order.flat()))).toEqual(seenOf(idsOf(expected.ABC_any_order)));
    }
  });

  const id = fc.record({ station: fc.constantFrom(...stations), seq: fc.integer({ min: 1, max: 12 }) });
  const ids = fc.array(id, { maxLength: 40 });

  test('is the same for any order and any repetition of the same events', () => {
    fc.assert(
      fc.property(ids, fc.nat(), (some, turn) => {
        const cut = turn % (some.length + 1);
        const other = [...some.slice(cut), ...some.slice(0, cut).toReversed(), ...some];
        expect(seenOf(other)).toEqual(seenOf(some));
      }),
      { numRuns: 300 },
    );
  });

  test('holds exactly the events that were marked, as a plain set of names would', () => {
    fc.assert(
      fc.property(ids, (some) => {
        const seen = seenOf(some);
        const plain = new Set(some.map(eventKey));
        for (const station of stations) {
          for (let seq = 1; seq <= 13; seq += 1) {
            expect(hasSeen(seen, { station, seq })).toBe(plain.has(eventKey({ station, seq })));
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  test('never forgets: what was held is held after more came', () => {
    fc.assert(
      fc.property(ids, ids, (some, more) => {
        const seen = seenOf([...some, ...more]);
        expect(some.filter((each) => !hasSeen(seen, each))).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });
});
