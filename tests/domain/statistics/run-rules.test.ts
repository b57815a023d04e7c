import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cases } from '../../../shared/check-values/control-charts.json' with { type: 'json' };
import { seededRandom } from '../../../src/domain/chance/seeded-random.ts';
import { nelsonRules, type RunRule, runRules } from '../../../src/domain/statistics/run-rules.ts';
import { shewhartArl } from '../../../src/domain/statistics/shewhart-arl.ts';
import { normalQuantile } from '../../../src/domain/statistics/special-functions.ts';

const hits = (rule: RunRule, deviations: readonly number[]) =>
  runRules(deviations, [rule]).map(({ index }) => index);

describe('each rule names the point that completes it', () => {
  test.each<[RunRule, number[], number[]]>([
    ['beyond-limits', [0, 3, 3.1, -3, -4], [2, 4]],
    ['two-of-three-beyond-two-sigma', [2.1, 0, 2.1, 0, 0, -2.1, 2.1, -2.1], [2, 7]],
    ['two-of-three-beyond-two-sigma', [2.1, 2.1, 0, 0], [1]],
    ['four-of-five-beyond-one-sigma', [1.1, 1.1, 0, 1.1, 1.1, -1.1], [4]],
    ['four-of-five-beyond-one-sigma', [1.1, 1.1, -1.1, 1.1, 1], []],
    ['eight-on-one-side', [1, 1, 1, 1, 1, 1, 1, 1, 1, -1], [7, 8]],
    ['eight-on-one-side', [1, 1, 1, 1, 0, 1, 1, 1, 1], []],
    ['nine-on-one-side', [-1, -1, -1, -1, -1, -1, -1, -1, -1], [8]],
    ['six-rising-or-falling', [0, 1, 2, 3, 4, 5, 4, 3, 2, 1, 0], [5, 10]],
    ['six-rising-or-falling', [0, 1, 2, 2, 4, 5, 6], []],
    ['fourteen-alternating', [0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 2], [13]],
    ['fifteen-within-one-sigma', Array.from({ length: 16 }, (_, at) => (at === 0 ? 1 : 0.9)), [15]],
    ['eight-beyond-one-sigma', [2, -2, 2, -2, 2, -2, 2, -2, 1], [7]],
  ])('%s in %j', (rule, deviations, expected) => {
    expect(hits(rule, deviations)).toEqual(expected);
  });

  test('several rules at one point stand in the order in which they were asked for', () => {
    expect(runRules([3.5, 3.5], ['two-of-three-beyond-two-sigma', 'beyond-limits'])).toEqual([
      { index: 0, rule: 'beyond-limits' },
      { index: 1, rule: 'two-of-three-beyond-two-sigma' },
      { index: 1, rule: 'beyond-limits' },
    ]);
  });
});

describe('laws', () => {
  test('turning all deviations round changes nothing, and no rule speaks of points to come', () => {
    const deviations = fc.array(fc.double({ min: -4, max: 4, noNaN: true }), { maxLength: 40 });
    fc.assert(
      fc.property(deviations, fc.nat(40), (list, length) => {
        const all = runRules(list, nelsonRules);
        expect(
          runRules(
            list.map((each) => -each),
            nelsonRules,
          ),
        ).toEqual(all);
        const start = list.slice(0, length);
        expect(runRules(start, nelsonRules)).toEqual(all.filter(({ index }) => index < start.length));
      }),
    );
  });
});

describe('run lengths', () => {
  test('a Shewhart chart runs as long as the handbook says (NIST/SEMATECH 6.3.2.3.1)', () => {
    const { inputs, expected, tolerance } = cases['cc-arl-shewhart'];
    for (const [at, shift] of inputs.shift.entries()) {
      expect(Math.abs(shewhartArl(shift) - (expected.ARL[at] ?? Number.NaN))).toBeLessThanOrEqual(
        tolerance.abs,
      );
      expect(shewhartArl(-shift)).toBe(shewhartArl(shift));
    }
  });

  test('all four Western Electric rules together run 91.75 points in control (Champ and Woodall 1987)', () => {
    const { expected, tolerance } = cases['cc-weco'];
    const random = seededRandom(19871);
    const runs = 8000;
    let points = 0;
    for (let run = 0; run < runs; run += 1) {
      // Deviations are drawn in stretches: the newest eight of one stretch go before the next.
      let known: number[] = [];
      for (let done = 0; ; done += 32) {
        const before = known.length;
        known = [
          ...known,
          ...Array.from({ length: 32 }, () => normalQuantile((random() * 2 ** 32 + 0.5) / 2 ** 32)),
        ];
        const first = runRules(known).find(({ index }) => index >= before);
        if (first) {
          points += done + first.index - before + 1;
          break;
        }
        known = known.slice(-8);
      }
    }
    // The standard error of the mean of so many runs is some 1 of 92.
    const away = Math.abs(points / runs / expected.ARL_in_control - 1);
    expect(away).toBeLessThan(tolerance.monte_carlo_rel);
  });
});
