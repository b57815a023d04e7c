import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import values from '../../../shared/check-values/sampling.json' with { type: 'json' };
import tables from '../../../shared/sampling-plans.json' with { type: 'json' };
import { qualityLimits } from '../../../src/domain/sampling/quality-limits.ts';
import { chanceOfAcceptance, samplingPlan } from '../../../src/domain/sampling/sampling-plan.ts';
import { binomialCdf } from '../../../src/domain/statistics/special-functions.ts';

const { table, curve } = values;
const printed = table.rows.map((row) => {
  const [lots = '', letter = '', sample = '', ...cells] = row.split(' ');
  const [from = 0, to = 0] = lots.split('-').map(Number);
  return { from, to, letter, sample: Number(sample), cells };
});

/** What a reader of the printed table finds: from an arrow on, in its direction, the first number. */
function readOff(row: number, column: number): { letter: string; sample: number; accept: number } {
  const cell = (at: number) => printed[at]?.cells[column];
  const isNumber = (at: number) => /^\d+$/.test(cell(at) ?? '');
  const rows = printed.map((_, at) => at);
  const below = rows.find((at) => at > row && isNumber(at));
  const above = rows.findLast((at) => at < row && isNumber(at));
  const here = cell(row);
  // A line goes on to the arrowhead of its own stretch: below it where the numbers are below, above it where they are above.
  const leadsUp = here === '/\\' || below === undefined;
  const found = isNumber(row) ? row : leadsUp ? (above ?? below) : below;
  const its = printed[found ?? -1];
  if (!its) throw new Error(`nothing is printed at ${row}, ${column}`);
  return { letter: its.letter, sample: its.sample, accept: Number(its.cells[column]) - 1 };
}

describe('the plans', () => {
  test.each(
    printed.flatMap(({ from, to }, row) =>
      qualityLimits.map((limit, column) => ({ from, to, limit, row, column })),
    ),
  )(
    'of $from to $to pieces at $limit % are those of the printed table',
    ({ from, to, limit, row, column }) => {
      const { letter, sample, accept } = readOff(row, column);
      for (const lot of [from, to]) {
        const plan = samplingPlan(lot, limit);
        if (sample >= lot) expect(plan).toEqual({ kind: 'all' });
        else expect(plan).toEqual({ kind: 'sample', letter, sample, accept });
      }
    },
  );

  test('have the same acceptance number along each diagonal, as the standard was built', () => {
    const byDiagonal = new Map<number, Set<number>>();
    tables.letters.forEach(({ plans }, row) => {
      plans.forEach((plan, column) => {
        if (typeof plan !== 'number') return;
        byDiagonal.set(row + column, (byDiagonal.get(row + column) ?? new Set()).add(plan));
      });
    });
    expect([...byDiagonal.values()].map((each) => each.size)).toEqual(Array(byDiagonal.size).fill(1));
    const inOrder = [...byDiagonal].toSorted(([a], [b]) => a - b).map(([, [accept]]) => accept);
    expect(inOrder).toEqual([0, 1, 2, 3, 5, 7, 10, 14, 21]);
  });

  test('of one piece, and of a lot that is no larger than its sample, are to check all', () => {
    expect(samplingPlan(1, '10')).toEqual({ kind: 'all' });
    expect(samplingPlan(13, '1')).toEqual({ kind: 'all' });
    expect(samplingPlan(14, '1')).toEqual({ kind: 'sample', letter: 'E', sample: 13, accept: 0 });
  });

  test.each([0, -1, 1.5, Number.NaN])('of %d pieces there is none', (lot) => {
    expect(() => samplingPlan(lot, '1')).toThrow(RangeError);
  });

  test('accept a good lot more often than not, at every lot size and limit', () => {
    // Section 4.4 of the standard: at the AQL most lots are accepted; Tables X give 0.81 to 0.99 for these plans (from memory).
    for (const limit of qualityLimits) {
      for (const lot of [50, 150, 500, 3200, 10_000]) {
        const plan = samplingPlan(lot, limit);
        if (plan.kind === 'all') continue;
        const chance = chanceOfAcceptance(plan, Number(limit) / 100);
        expect(chance).toBeGreaterThan(0.8);
        expect(chance).toBeLessThan(0.999);
      }
    }
  });
});

test.each(curve.cases)(
  'at a share of $share bad the plan of the handbook accepts with $chance',
  ({ share, chance }) => {
    expect(chanceOfAcceptance(curve, share)).toBeCloseTo(chance, 4);
  },
);

test('the chance is that of the incomplete beta function, for any sample and share', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 2000 }),
      fc.nat(2000),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (sample, some, bad) => {
        const accept = some % (sample + 1);
        expect(chanceOfAcceptance({ sample, accept }, bad)).toBeCloseTo(binomialCdf(accept, sample, bad), 9);
      },
    ),
  );
  expect(() => chanceOfAcceptance(curve, 1.01)).toThrow(RangeError);
});
