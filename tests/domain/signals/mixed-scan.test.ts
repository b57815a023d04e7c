import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seededRandom } from '../../../src/domain/chance/seeded-random.ts';
import { mixedScan } from '../../../src/domain/signals/mixed-scan.ts';
import { newestRun, type Tally } from '../../../src/domain/signals/tally.ts';

const scan = (tally: Tally, { seed = 1, most = 2000 } = {}) =>
  mixedScan(newestRun(tally, 3000), { random: seededRandom(seed), most });

const tray = fc
  .record({ size: fc.integer({ min: 1, max: 15 }), kind: fc.constantFrom('ash', 'plum', 'yew') })
  .chain(({ size, kind }) =>
    fc.record({ size: fc.constant(size), kind: fc.constant(kind), count: fc.nat(size) }),
  );
const tallies = fc.array(tray, { maxLength: 15 }).map((trays) => ({
  counts: trays.map(({ count }) => count),
  sizes: trays.map(({ size }) => size),
  kinds: trays.map(({ kind }) => kind),
}));

describe('each wood at its own rate', () => {
  test('a week of a difficult wood is no change, though pieces fail ten times as often', () => {
    const counts = [0, 1, 0, 1, 0, 1, 5, 6, 5, 4, 6, 5];
    const sizes = counts.map(() => 12);
    const kinds = counts.map((_, at) => (at < 6 ? 'ash' : 'plum'));
    expect(scan({ counts, sizes, kinds })?.p).toBeGreaterThan(0.2);
    expect(scan({ counts, sizes })?.p).toBeLessThan(0.01);
  });

  test('a change in all woods at once is one, with what was expected since', () => {
    const kinds = Array.from({ length: 24 }, (_, at) => (at % 2 === 0 ? 'ash' : 'plum'));
    const counts = kinds.map((kind, at) => (at < 12 ? 0 : 2) + (kind === 'plum' ? 2 : 0));
    const found = scan({ counts, sizes: counts.map(() => 12), kinds });
    expect(found).toMatchObject({
      direction: 'worse',
      since: 12,
      before: { flawed: 12, pieces: 144 },
      after: { flawed: 36, pieces: 144 },
    });
    // Half of the 12 of ash and half of the 36 of plum.
    expect(found?.expected).toBeCloseTo(24, 9);
    expect(found?.p).toBeLessThan(0.002);
  });

  test('the strangest split is told by hand: one tray with all the flaws of its wood', () => {
    // Expected: 1 in each of four trays of ash, none in plum. All four at the end: 4 ln 4 against nothing before.
    const found = scan({ counts: [0, 0, 0, 0, 4], sizes: [9, 9, 9, 9, 9], kinds: ['a', 'a', 'p', 'a', 'a'] });
    expect(found).toMatchObject({ direction: 'worse', since: 4 });
    expect(found?.expected).toBeCloseTo(1, 9);
    // As strange at either end of the four places of ash: 2 of 4 orders.
    expect(found?.p).toBeGreaterThan(0.3);
  });
});

describe('laws', () => {
  test('p is a chance that is never 0, and both parts are the whole', () => {
    fc.assert(
      fc.property(tallies, (tally) => {
        const found = scan(tally, { most: 60 });
        if (!found) return;
        expect(found.p).toBeGreaterThanOrEqual(found.leastP);
        expect(found.p).toBeLessThanOrEqual(1);
        expect(found.before.pieces + found.after.pieces).toBe(
          tally.sizes.reduce((sum, size) => sum + size, 0),
        );
        expect(found.expected).toBeGreaterThanOrEqual(0);
        expect(found.expected).toBeLessThanOrEqual(found.before.flawed + found.after.flawed + 1e-9);
      }),
    );
  });

  test('in quiet stages one in ten has a p of at most a tenth', () => {
    const random = seededRandom(77);
    const stages = 400;
    let strange = 0;
    for (let stage = 0; stage < stages; stage += 1) {
      const kinds = Array.from({ length: 30 }, () => (random() < 0.5 ? 'ash' : 'plum'));
      const counts = kinds.map((kind) => {
        let flawed = 0;
        for (let piece = 0; piece < 12; piece += 1)
          flawed += random() < (kind === 'ash' ? 0.02 : 0.2) ? 1 : 0;
        return flawed;
      });
      const p = scan({ counts, sizes: counts.map(() => 12), kinds }, { seed: stage, most: 199 })?.p ?? 1;
      if (p <= 0.1) strange += 1;
    }
    // Three standard errors of 400 stages are 0.045.
    expect(strange / stages).toBeLessThan(0.145);
    expect(strange / stages).toBeGreaterThan(0.055);
  });
});

test('there is nothing to compare in one group, or when nothing or everything is flawed', () => {
  expect(scan({ counts: [], sizes: [], kinds: [] })).toBeUndefined();
  expect(scan({ counts: [1], sizes: [5], kinds: ['ash'] })).toBeUndefined();
  expect(scan({ counts: [0, 0], sizes: [5, 5], kinds: ['ash', 'yew'] })).toBeUndefined();
  expect(scan({ counts: [5, 5], sizes: [5, 5], kinds: ['ash', 'yew'] })).toBeUndefined();
  expect(() => scan({ counts: [0, 1], sizes: [5, 5], kinds: ['ash'] })).toThrow(RangeError);
});
