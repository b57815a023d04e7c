import fc from 'fast-check';
import { expect, test } from 'vitest';
import { forecastOf, safeToPromise } from '../../../../src/domain/plan/forecast/forecast.ts';
import { forecast, slicesOf } from '../../../../src/domain/plan/forecast/forecast-desk.ts';
import { replicator } from '../../../../src/domain/plan/forecast/replicator.ts';
import { joinedRuns, partsFor } from '../../../../src/domain/plan/forecast/runs.ts';
import { day } from './plans.ts';
import { somePlan } from './random-plans.ts';

const marks = [1, 2, 5, 10, 80].map((days) => days * day);
const replications = 30;

test('no piece is lost from sight: in the end each is good, a second or scrapped, and good ones never grow fewer', () => {
  fc.assert(
    fc.property(somePlan, fc.nat(), (plan, seed) => {
      const runs = replicator({ plan, marks, seed, replications })(0, replications);
      const pieces = plan.lots.reduce((sum, { firsts, seconds }) => sum + firsts + seconds, 0);
      for (let run = 0; run < replications; run += 1) {
        let [all, isEnough] = [0, true];
        for (const [variant, { finished, wanted }] of plan.variants.entries()) {
          const place = run * plan.variants.length + variant;
          const good = runs.good.subarray(place * marks.length, (place + 1) * marks.length);
          if (good.some((count, at) => count < (good[at - 1] ?? finished)))
            throw new Error('good ones are fewer');
          const last = good.at(-1) ?? 0;
          all += last - finished + (runs.scrapped[place] ?? 0);
          if (plan.goal === 'firsts') all += runs.seconds[place] ?? 0;
          if (last < wanted) isEnough = false;
        }
        expect([all, Number.isFinite(runs.doneAt[run])]).toEqual([pieces, true]);
        expect(Number.isFinite(runs.enoughAt[run])).toBe(isEnough);
      }
    }),
  );
});

test('the same order gives the same answer', () => {
  fc.assert(
    fc.property(somePlan, fc.nat(), (plan, seed) => {
      const order = { plan, marks, seed, replications, confidence: 0.9 };
      expect(forecast(order)).toEqual(forecast(order));
    }),
    { numRuns: 30 },
  );
});

test('however the replications are cut and in whatever order the parts come, they come to the same', () => {
  fc.assert(
    fc.property(
      somePlan,
      fc.nat(),
      fc.array(fc.nat({ max: replications }), { maxLength: 4 }),
      (plan, seed, cuts) => {
        const order = { plan, marks, seed, replications, confidence: 0.9 };
        const ends = [0, ...cuts.toSorted((a, b) => a - b), replications];
        // Each part on a floor of its own, as in a worker of its own.
        const parts = ends.slice(1).map((to, at) => replicator(order)(ends[at] ?? 0, to));
        expect(joinedRuns(parts.toReversed())).toEqual(replicator(order)(0, replications));
        expect(forecastOf(order, parts.toReversed())).toEqual(forecast(order));
      },
    ),
    { numRuns: 40 },
  );
});

test('parts cover all replications, and slices say how far they have come', () => {
  // By hand: 3/8 each, then 1/16 each, then 1/32 four times.
  expect(partsFor(320, 2).map(({ from }) => from)).toEqual([0, 120, 240, 260, 280, 290, 300, 310]);
  fc.assert(
    fc.property(fc.nat(5000), fc.integer({ min: 1, max: 8 }), (replications, workers) => {
      let next = 0;
      for (const { from, to } of partsFor(replications, workers)) {
        expect(from).toBe(next);
        expect(to).toBeGreaterThan(from);
        next = to;
      }
      expect(next).toBe(replications);
    }),
  );
  fc.assert(
    fc.property(somePlan, (plan) => {
      const slices = [
        ...slicesOf({ plan, marks, seed: 1, replications: 0, confidence: 0.9 })({ from: 7, to: 127 }),
      ];
      expect(slices).toEqual(Array.from({ length: 12 }, (_, at) => 10 * (at + 1)));
    }),
    { numRuns: 5 },
  );
});

test('quantiles of a fan and of dates ascend, and what is safe to promise lies below the middle', () => {
  fc.assert(
    fc.property(somePlan, fc.nat(), (plan, seed) => {
      const found = forecast({ plan, marks, seed, replications, confidence: 0.9 });
      if (found.kind !== 'forecast') throw new Error(found.kind);
      const dates = [found.done.at50, found.done.at85, found.done.at95].map(
        (at) => at ?? Number.POSITIVE_INFINITY,
      );
      expect(dates).toEqual(dates.toSorted((a, b) => a - b));
      for (const { all, variants } of found.marks) {
        for (const { fan, safe, chance } of [all, ...variants]) {
          expect(chance).toBeGreaterThanOrEqual(0.9 - 1e-9);
          expect(fan).toEqual(fan.toSorted((a, b) => a - b));
          expect(safe).toBeLessThanOrEqual(fan[2]);
        }
      }
    }),
  );
});

test('of the safe number there are as many in at least the wanted share of the replications, and of one more there are not', () => {
  const counts = fc.array(fc.nat({ max: 40 }), { minLength: 1, maxLength: 300 });
  fc.assert(
    fc.property(counts, fc.integer({ min: 0, max: 100 }), (unsorted, percent) => {
      const sorted = Int32Array.from(unsorted).sort();
      const safe = safeToPromise(sorted, percent / 100);
      const atLeast = (pieces: number) => sorted.filter((count) => count >= pieces).length;
      expect(100 * atLeast(safe)).toBeGreaterThanOrEqual(percent * sorted.length);
      if (safe < (sorted.at(-1) ?? 0)) expect(100 * atLeast(safe + 1)).toBeLessThan(percent * sorted.length);
    }),
  );
  expect(safeToPromise(Int32Array.of(4, 6, 7, 7, 9), 0.8)).toBe(6);
});

test('whoever cancels between two slices stops the work', () => {
  fc.assert(
    fc.property(somePlan, (plan) => {
      const slices = slicesOf({ plan, marks, seed: 1, replications: 100_000, confidence: 0.9 })({
        from: 0,
        to: 100_000,
      });
      slices.next();
      expect(slices.return([]).done).toBe(true);
      expect(slices.next().done).toBe(true);
    }),
    { numRuns: 3 },
  );
});
