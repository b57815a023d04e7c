import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changeScan } from '../../../src/domain/signals/change-scan.ts';
import { newestRun, type Tally } from '../../../src/domain/signals/tally.ts';
import { fisherExact } from '../../../src/domain/statistics/fisher-exact.ts';

const scan = (tally: Tally, mostPieces = 3000) => changeScan(newestRun(tally, mostPieces));

/** Every order of the pieces that a tally holds, as tallies with groups of the same sizes, each as likely as any other. */
function allOrders({ counts, sizes }: Tally): Tally[] {
  const pieces = sizes.reduce((sum, size) => sum + size, 0);
  const flawed = counts.reduce((sum, count) => sum + count, 0);
  const orders: Tally[] = [];
  for (let bits = 0; bits < 2 ** pieces; bits += 1) {
    const isFlawed = Array.from({ length: pieces }, (_, piece) => (bits >> piece) & 1);
    if (isFlawed.reduce((sum, each) => sum + each, 0) !== flawed) continue;
    let from = 0;
    const found = sizes.map((size) => {
      from += size;
      return isFlawed.slice(from - size, from).reduce((sum, each) => sum + each, 0);
    });
    orders.push({ counts: found, sizes });
  }
  return orders;
}

const smallTally = fc
  .array(fc.integer({ min: 1, max: 4 }), { minLength: 2, maxLength: 5 })
  .filter((sizes) => sizes.reduce((sum, size) => sum + size, 0) <= 11)
  .chain((sizes) =>
    fc.record({ sizes: fc.constant(sizes), counts: fc.tuple(...sizes.map((size) => fc.nat(size))) }),
  );

describe('the chance that it states is exact', () => {
  test('p is the share of all orders that look as strange, and the least is the least of them', () => {
    fc.assert(
      fc.property(smallTally, (tally) => {
        const found = scan(tally);
        if (!found) return;
        const orders = allOrders(tally).flatMap((order) => scan(order) ?? []);
        const asStrange = orders.filter(({ tail }) => tail <= found.tail * (1 + 1e-9)).length;
        expect(found.p).toBeCloseTo(asStrange / orders.length, 10);
        expect(found.leastP).toBeCloseTo(Math.min(...orders.map(({ p }) => p)), 10);
      }),
      { numRuns: 60 },
    );
  });

  test('a split alone is judged by the tail of Fisher’s exact test', () => {
    // 2 in 96 before and 9 in 61 since, as one split: with no other, p is that of both tails that are as small.
    const found = scan({ counts: [2, 9], sizes: [96, 61] });
    expect(found?.tail).toBeCloseTo(fisherExact({ k: 2, n: 96 }, { k: 9, n: 61 }).less, 12);
    // With no other split, p adds the other tail as far as it is no larger: 11 flawed before and none since is 0.0036.
    const other = [9, 10, 11].map((k) => fisherExact({ k, n: 96 }, { k: 11 - k, n: 61 }).greater);
    const asSmall = other.find((each) => each <= (found?.tail ?? 0)) ?? 0;
    expect(found?.p).toBeCloseTo((found?.tail ?? 0) + asSmall, 12);
    expect(found).toMatchObject({
      direction: 'worse',
      since: 1,
      before: { flawed: 2, pieces: 96 },
      after: { flawed: 9, pieces: 61 },
    });
  });

  test('so it is for hundreds of pieces', () => {
    const part = fc
      .integer({ min: 1, max: 900 })
      .chain((n) => fc.record({ n: fc.constant(n), k: fc.nat(n) }));
    fc.assert(
      fc.property(part, part, (first, second) => {
        const found = scan({ counts: [first.k, second.k], sizes: [first.n, second.n] });
        if (!found) return;
        const { less, greater } = fisherExact(first, second);
        fc.pre(Math.min(less, greater) > 1e-250);
        expect(found.tail / Math.min(less, greater)).toBeCloseTo(1, 9);
      }),
    );
  });

  test('a very small chance keeps its digits: 40 good and then 40 flawed are one of C(80, 40) orders, or the other', () => {
    const counts = Array.from({ length: 80 }, (_, at) => (at < 40 ? 0 : 1));
    let orders = 1;
    for (let i = 1; i <= 40; i += 1) orders *= (40 + i) / i;
    const found = scan({ counts, sizes: counts.map(() => 1) });
    expect((found?.p ?? 0) / (2 / orders)).toBeCloseTo(1, 9);
    expect(found?.leastP).toBe(found?.p);
  });
});

describe('laws', () => {
  const tally = fc.array(fc.integer({ min: 0, max: 15 }), { maxLength: 30 }).chain((sizes) =>
    fc.record({
      sizes: fc.constant(sizes),
      counts: fc.tuple(...sizes.map((size) => fc.nat(size))).map((counts): readonly number[] => counts),
    }),
  );

  test('both parts together are the whole, p lies between its least and 1, and the direction is that of the shares', () => {
    fc.assert(
      fc.property(tally, ({ counts, sizes }) => {
        const found = scan({ counts, sizes });
        if (!found) return;
        const { before, after, direction, p, leastP, since } = found;
        expect(before.pieces).toBe(sizes.slice(0, since).reduce((sum, size) => sum + size, 0));
        expect(before.flawed + after.flawed).toBe(counts.reduce((sum, count) => sum + count, 0));
        expect(p).toBeGreaterThanOrEqual(leastP * (1 - 1e-9));
        expect(p).toBeLessThanOrEqual(1);
        expect(leastP).toBeGreaterThan(0);
        const isWorse = after.flawed * before.pieces > before.flawed * after.pieces;
        // Where both shares are the same either name would do.
        if (after.flawed * before.pieces !== before.flawed * after.pieces) {
          expect(direction).toBe(isWorse ? 'worse' : 'better');
        }
      }),
    );
  });

  test('good for flawed turns worse into better and changes no chance', () => {
    fc.assert(
      fc.property(tally, ({ counts, sizes }) => {
        const found = scan({ counts, sizes });
        const turned = scan({ counts: sizes.map((size, at) => size - (counts[at] ?? 0)), sizes });
        expect(turned?.p === undefined).toBe(found?.p === undefined);
        if (!found || !turned) return;
        expect(turned.p / found.p).toBeCloseTo(1, 8);
        expect(turned.leastP / found.leastP).toBeCloseTo(1, 8);
      }),
    );
  });

  test('groups of no pieces change nothing but the numbering', () => {
    const found = scan({ counts: [0, 1, 0, 0, 5], sizes: [10, 10, 0, 0, 10] });
    const same = scan({ counts: [0, 1, 5], sizes: [10, 10, 10] });
    expect(found).toEqual({ ...same, since: 4 });
  });
});

describe('edges', () => {
  test('there is nothing to compare in one group, or when nothing or everything is flawed', () => {
    for (const [counts, sizes] of [
      [[], []],
      [[1], [5]],
      [
        [1, 0],
        [5, 0],
      ],
      [
        [0, 0],
        [5, 5],
      ],
      [
        [5, 5],
        [5, 5],
      ],
    ] as const) {
      expect(scan({ counts, sizes })).toBeUndefined();
    }
  });

  test('only whole groups of the newest pieces are looked at', () => {
    const found = scan({ counts: [9, 0, 1, 6], sizes: [10, 10, 10, 10] }, 39);
    expect(found).toMatchObject({
      since: 3,
      before: { flawed: 1, pieces: 20 },
      after: { flawed: 6, pieces: 10 },
    });
    expect(scan({ counts: [9, 0], sizes: [10, 10] }, 5)).toBeUndefined();
  });

  test('what cannot have been counted is refused', () => {
    expect(() => scan({ counts: [2, 0], sizes: [1, 1] })).toThrow(RangeError);
    expect(() => scan({ counts: [0.5, 0], sizes: [1, 1] })).toThrow(RangeError);
    expect(() => scan({ counts: [1], sizes: [1, 1] })).toThrow(RangeError);
  });
});
