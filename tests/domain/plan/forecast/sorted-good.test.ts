import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sortedGood } from '../../../../src/domain/plan/forecast/sorted-good.ts';

test('each variant and mark, and all variants together, are sorted as they would be one by one', () => {
  const tables = fc
    .record({
      count: fc.nat({ max: 20 }),
      variants: fc.integer({ min: 1, max: 4 }),
      marks: fc.integer({ min: 1, max: 4 }),
    })
    .chain(({ count, variants, marks }) => {
      const length = count * variants * marks;
      // Below 0 where taps crossed.
      const pieces = fc.integer({ min: -3, max: 50 });
      return fc.record({
        ...{ count: fc.constant(count), variants: fc.constant(variants), marks: fc.constant(marks) },
        good: fc.array(pieces, { minLength: length, maxLength: length }),
      });
    });
  fc.assert(
    fc.property(tables, ({ count, variants, marks, good }) => {
      const cut = Math.floor(count / 2);
      const parts = [
        { count: cut, good: Int32Array.from(good.slice(0, cut * variants * marks)) },
        { count: count - cut, good: Int32Array.from(good.slice(cut * variants * marks)) },
      ];
      const sorted = sortedGood(parts, { variants, marks });
      const at = (run: number, variant: number, mark: number) =>
        good[(run * variants + variant) * marks + mark] ?? 0;
      const runs = Array.from({ length: count }, (_, run) => run);
      const each = Array.from({ length: variants }, (_, variant) => variant);
      for (let mark = 0; mark < marks; mark += 1) {
        for (const variant of each)
          expect([...sorted(variant, mark)]).toEqual(
            runs.map((run) => at(run, variant, mark)).sort((a, b) => a - b),
          );
        const all = runs.map((run) => each.reduce((sum, variant) => sum + at(run, variant, mark), 0));
        expect([...sorted(variants, mark)]).toEqual(all.sort((a, b) => a - b));
      }
    }),
  );
});
