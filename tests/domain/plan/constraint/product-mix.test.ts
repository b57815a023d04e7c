import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cases } from '../../../../shared/check-values/constraint.json' with { type: 'json' };
import { contributionPerHour } from '../../../../src/domain/plan/constraint/contribution-per-hour.ts';
import { type MixVariant, productMix } from '../../../../src/domain/plan/constraint/product-mix.ts';
import { holdPlaces, resourceLoads } from '../../../../src/domain/plan/constraint/resource-load.ts';
import { visitsPerGood } from '../../../../src/domain/plan/constraint/visits-per-good.ts';

describe('P and Q (E. M. Goldratt, The Haystack Syndrome, 1990)', () => {
  const { inputs, expected } = cases['toc-pq'];
  const names = ['A', 'B', 'C', 'D'] as const;
  const products = ['P', 'Q'] as const;
  const resources = names.map((name) => ({ name, available: inputs.available_minutes }));
  const uses = (product: 'P' | 'Q') => new Map(names.map((name) => [name, inputs.minutes[name][product]]));
  const contribution = (product: 'P' | 'Q') => inputs.price[product] - inputs.raw_material[product];
  const variants = products.map((variant) => ({
    variant,
    contribution: contribution(variant),
    most: inputs.demand[variant],
    uses: uses(variant),
  }));

  test('load and constraint', () => {
    const loads = resourceLoads(
      resources,
      products.map((variant) => ({ variant, pieces: inputs.demand[variant], uses: uses(variant) })),
    );
    expect(Object.fromEntries(loads.map(({ resource, wanted }) => [resource, wanted]))).toEqual(
      expected.load_minutes,
    );
    expect(loads[0]).toMatchObject({ resource: expected.constraint, ratio: expected.load_ratio_B });
  });

  test('contribution for a minute of the constraint', () => {
    const ranked = contributionPerHour(
      products.map((variant) => ({
        variant,
        contribution: contribution(variant),
        minutes: inputs.minutes.B[variant],
      })),
    );
    expect(ranked.map(({ variant, perHour = 0 }) => [variant, perHour / 60])).toEqual(
      Object.entries(expected.throughput_per_constraint_minute),
    );
  });

  test('the best mix, its profit and what a minute more of the constraint is worth', () => {
    const mix = productMix(resources, variants);
    if (mix.kind !== 'mix') throw new Error(mix.kind);
    expect(Object.fromEntries(mix.pieces)).toEqual(expected.mix);
    expect(mix.contribution - inputs.operating_expense).toBe(expected.net_profit);
    expect(mix.isProven).toBe(true);
    // A further minute makes a thirtieth of a Q at 60.
    const worth = mix.resources.map(({ resource, worth: each }) => [resource, Number(each.toFixed(6))]);
    expect(Object.fromEntries(worth)).toEqual({ A: 0, B: 2, C: 0, D: 0 });
  });

  test('the profit if the constraint had time enough', () => {
    const more = resources.map(({ name }) => ({ name, available: 1e6 }));
    const mix = productMix(more, variants);
    const { expected: free } = cases['toc-pq-unconstrained'];
    expect(mix.kind === 'mix' && mix.contribution - inputs.operating_expense).toBe(free.net_profit);
  });
});

describe('the product mix', () => {
  const small = fc.integer({ min: 0, max: 9 });
  const problem = fc.record({
    available: fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 1, maxLength: 3 }),
    variants: fc.array(
      fc.record({
        contribution: fc.integer({ min: -5, max: 40 }),
        most: fc.integer({ min: 0, max: 6 }),
        least: fc.integer({ min: 0, max: 2 }),
        each: fc.tuple(small, small, small),
      }),
      { minLength: 1, maxLength: 4 },
    ),
  });

  test('is that of trying every mix of whole pieces', () => {
    fc.assert(
      fc.property(problem, ({ available, variants }) => {
        const resources = available.map((minutes, at) => ({ name: `r${at}`, available: minutes }));
        const mixed = variants.map(
          ({ contribution, most, least, each }, at): MixVariant<string, string> => ({
            variant: `v${at}`,
            contribution,
            most: Math.max(most, least),
            least,
            uses: new Map(each.map((minutes, of) => [`r${of}`, minutes])),
          }),
        );
        const best = byTrying(resources, mixed);
        const mix = productMix(resources, mixed);
        if (mix.kind !== 'mix') {
          expect([mix.kind, best]).toEqual(['not-possible', undefined]);
          return;
        }
        expect(mix.contribution).toBeCloseTo(best ?? Number.NaN, 6);
        expect(mix.atMost).toBeGreaterThanOrEqual(mix.contribution - 1e-6);
        for (const { used, left, worth } of mix.resources) {
          expect(left).toBeGreaterThanOrEqual(-1e-6);
          expect(used).toBeGreaterThanOrEqual(0);
          expect(worth).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 300 },
    );
  });

  const one = (more: Partial<MixVariant<'awl', 'lathe'>>) => [
    { variant: 'awl' as const, contribution: 10, uses: new Map([['lathe' as const, 7]]), ...more },
  ];
  const lathe = [{ name: 'lathe' as const, available: 100 }];

  test('is of whole pieces, unless they can be divided', () => {
    expect(productMix(lathe, one({}))).toMatchObject({ contribution: 140, pieces: new Map([['awl', 14]]) });
    const divisible = productMix(lathe, one({}), { divisible: true });
    expect(divisible.kind === 'mix' && divisible.pieces.get('awl')).toBeCloseTo(100 / 7, 7);
  });

  test('makes what is promised, also at a loss, or says that it does not fit', () => {
    expect(productMix(lathe, one({ contribution: -1, least: 3 }))).toMatchObject({ contribution: -3 });
    expect(productMix(lathe, one({ least: 15 }))).toEqual({ kind: 'not-possible' });
    expect(productMix(lathe, one({ least: 3, most: 2 }))).toEqual({ kind: 'not-possible' });
  });

  test('says where nothing limits a variant, or nothing is to be made', () => {
    expect(productMix(lathe, one({ uses: new Map() }))).toEqual({ kind: 'without-limit' });
    expect(productMix([{ name: 'lathe', available: Number.POSITIVE_INFINITY }], one({}))).toEqual({
      kind: 'without-limit',
    });
    expect(productMix(lathe, [])).toMatchObject({ kind: 'mix', contribution: 0, atMost: 0 });
  });

  test('refuses what is no quantity', () => {
    expect(() => productMix([{ name: 'lathe', available: -1 }], one({}))).toThrow(RangeError);
    expect(() => productMix(lathe, one({ most: Number.NaN }))).toThrow(RangeError);
    expect(() => productMix(lathe, one({ contribution: Number.POSITIVE_INFINITY }))).toThrow(RangeError);
  });

  test('of twenty variants at fifteen stages is found', () => {
    const names = Array.from({ length: 15 }, (_, at) => `stage-${at}`);
    const resources = names.map((name, at) => ({ name, available: 1500 + ((at * 337) % 900) }));
    const variants = Array.from({ length: 20 }, (_, of) => ({
      variant: `v${of}`,
      contribution: 1000 + ((of * 7919) % 1700),
      most: 10 + ((of * 13) % 25),
      uses: new Map(names.map((name, at) => [name, 2 + ((of * 31 + at * 17) % 11) * 0.7])),
    }));
    const mix = productMix(resources, variants);
    if (mix.kind !== 'mix') throw new Error(mix.kind);
    expect(mix.contribution).toBeGreaterThan(0.99 * mix.atMost);
  });
});

/** The most that any mix of whole pieces brings in; undefined where none fits. */
function byTrying(
  resources: readonly { readonly name: string; readonly available: number }[],
  variants: readonly MixVariant<string, string>[],
): number | undefined {
  const [variant, ...others] = variants;
  if (!variant) return resources.every(({ available }) => available >= 0) ? 0 : undefined;
  let best: number | undefined;
  for (let pieces = variant.least ?? 0; pieces <= (variant.most ?? 0); pieces += 1) {
    const left = resources.map(({ name, available }) => ({
      name,
      available: available - pieces * (variant.uses.get(name) ?? 0),
    }));
    const rest = byTrying(left, others);
    if (rest !== undefined)
      best = Math.max(best ?? Number.NEGATIVE_INFINITY, rest + pieces * variant.contribution);
  }
  return best;
}

describe('loads', () => {
  test('of hold rounds are places', () => {
    expect([holdPlaces(8, 3), holdPlaces(null, 3), holdPlaces(8, 0)]).toEqual([
      24,
      Number.POSITIVE_INFINITY,
      0,
    ]);
  });

  test('leave out what is not known, and say of which variant', () => {
    const loads = resourceLoads(
      [
        { name: 'rack', available: Number.POSITIVE_INFINITY },
        { name: 'bench', available: 0 },
        { name: 'lathe', available: 600 },
      ],
      [
        {
          variant: 'awl',
          pieces: 10,
          uses: new Map([
            ['lathe', 30],
            ['rack', 1],
          ]),
        },
        { variant: 'fid', pieces: 5, uses: new Map([['lathe', undefined]]) },
        { variant: 'none', pieces: 0, uses: new Map([['lathe', undefined]]) },
      ],
    );
    expect(loads).toEqual([
      { resource: 'lathe', available: 600, wanted: 300, ratio: 0.5, unknown: ['fid'] },
      { resource: 'rack', available: Number.POSITIVE_INFINITY, wanted: 10, ratio: 0, unknown: [] },
      { resource: 'bench', available: 0, wanted: 0, ratio: 0, unknown: [] },
    ]);
  });

  test('of a stage without time for what is wanted are beyond all others', () => {
    const wanted = [
      {
        variant: 'awl',
        pieces: 1,
        uses: new Map([
          ['a', 1],
          ['b', 5],
        ]),
      },
    ];
    const loads = resourceLoads(
      [
        { name: 'b', available: 1 },
        { name: 'a', available: 0 },
      ],
      wanted,
    );
    expect(loads.map(({ resource, ratio }) => [resource, ratio])).toEqual([
      ['a', Number.POSITIVE_INFINITY],
      ['b', 5],
    ]);
    expect(() => resourceLoads([{ name: 'a', available: Number.NaN }], wanted)).toThrow(RangeError);
  });

  test('count work on pieces that are lost later', () => {
    expect(
      visitsPerGood([
        { alpha: 1, beta: 1 },
        { alpha: 4, beta: 1 },
      ]),
    ).toEqual([2.5, 1.25]);
    expect(visitsPerGood([])).toEqual([]);
  });

  test('a variant that needs nothing of the constraint comes first', () => {
    const ranked = contributionPerHour([
      { variant: 'slow', contribution: 100, minutes: 60 },
      { variant: 'free', contribution: 1, minutes: 0 },
    ]);
    expect(ranked.map(({ variant, perHour }) => [variant, perHour])).toEqual([
      ['free', undefined],
      ['slow', 100],
    ]);
    expect(() => contributionPerHour([{ variant: 'x', contribution: 1, minutes: -1 }])).toThrow(RangeError);
  });
});
