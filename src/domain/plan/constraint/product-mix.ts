import { type Model, type Solution, solve } from 'yalps';
import type { Resource } from './resource-load.ts';

/** A variant that can be made in a stretch of time. */
export interface MixVariant<Variant extends string, Name extends string> {
  readonly variant: Variant;
  /** Of a good piece, in minor units: its price less what it alone costs. Below 0 it is made only as promised. */
  readonly contribution: number;
  /** Good pieces that can be sold, and that are promised; no limit, and 0, when left out. */
  readonly most?: number;
  readonly least?: number;
  /** Of each resource for a good piece; one left out takes none. */
  readonly uses: ReadonlyMap<Name, number>;
}

interface ResourceUse<Name extends string> {
  readonly resource: Name;
  readonly used: number;
  readonly left: number;
  /**
   * What one more of it (a minute, a place) would add to the contribution, were pieces divisible: its shadow price. 0 where
   * there is enough.
   */
  readonly worth: number;
}

export type ProductMix<Variant extends string, Name extends string> =
  | {
      readonly kind: 'mix';
      /** Good pieces of each variant, also those of which none is made. */
      readonly pieces: ReadonlyMap<Variant, number>;
      readonly contribution: number;
      /** No mix brings in more: the contribution were pieces divisible. */
      readonly atMost: number;
      /** Whether no other mix of whole pieces is better. Otherwise the search ended early, and this is the best it found. */
      readonly isProven: boolean;
      readonly resources: readonly ResourceUse<Name>[];
    }
  /** What is promised does not fit into what is available. */
  | { readonly kind: 'not-possible' }
  /** Nothing limits how many of some variant are made. */
  | { readonly kind: 'without-limit' }
  /** The search found no mix of whole pieces before it ended. */
  | { readonly kind: 'not-found' };

/** The solver rounds its results to 1e-8: a difference of two that is less than this is none. */
const ROUNDING = 1e-6;
/** Branches of the search for whole pieces: a shop's twenty variants want some hundreds. No clock, so that it is the same anywhere. */
const MOST_BRANCHES = 20_000;

/**
 * The product mix that brings in the most in a stretch of time: how many of each variant to make, by linear programming,
 * with whole pieces unless `divisible`.
 *
 * @throws {RangeError} for quantities below 0 or that are no numbers
 * @example
 * productMix(
 *   [{ name: 'B', available: 2400 }],
 *   [{ variant: 'P', contribution: 45, most: 100, uses: new Map([['B', 15]]) },
 *    { variant: 'Q', contribution: 60, most: 50, uses: new Map([['B', 30]]) }],
 * ) // pieces P 100, Q 30; contribution 6300; one more minute of B is worth 2
 */
export function productMix<Variant extends string, Name extends string>(
  resources: readonly Resource<Name>[],
  variants: readonly MixVariant<Variant, Name>[],
  { divisible = false }: { readonly divisible?: boolean } = {},
): ProductMix<Variant, Name> {
  demandQuantities(resources, variants);
  const model = modelOf(resources, variants);
  const relaxed = solve(model);
  const whole = divisible ? relaxed : solve({ ...model, integers: true }, { maxIterations: MOST_BRANCHES });
  if (whole.status === 'infeasible') return { kind: 'not-possible' };
  if (whole.status === 'unbounded') return { kind: 'without-limit' };
  if (!Number.isFinite(whole.result)) return { kind: 'not-found' };
  const pieces = piecesOf(variants, { solution: whole, divisible });
  return {
    kind: 'mix',
    pieces,
    contribution: variants.reduce(
      (sum, each) => sum + each.contribution * (pieces.get(each.variant) ?? 0),
      0,
    ),
    atMost: relaxed.result + 0,
    isProven: whole.status === 'optimal',
    resources: resources.map(({ name, available }) => {
      const used = variants.reduce(
        (sum, { variant, uses }) => sum + (uses.get(name) ?? 0) * (pieces.get(variant) ?? 0),
        0,
      );
      const more = resources.map((each) =>
        each.name === name ? { ...each, available: each.available + 1 } : each,
      );
      const gain = solve(modelOf(more, variants)).result - relaxed.result;
      return { resource: name, used, left: available - used, worth: gain > ROUNDING ? gain : 0 };
    }),
  };
}

type MixModel = Model<number, string>;

/** Variants by their place in the list; limits by the kind and name of what they limit. */
function modelOf<Variant extends string, Name extends string>(
  resources: readonly Resource<Name>[],
  variants: readonly MixVariant<Variant, Name>[],
): MixModel {
  const limited = resources.filter(({ available }) => available < Number.POSITIVE_INFINITY);
  return {
    direction: 'maximize',
    objective: 'contribution',
    constraints: [
      ...limited.map(({ name, available }) => [`of ${name}`, { max: available }] as const),
      ...variants.map(({ most, least = 0 }, at) => [`made ${at}`, limits(most, least)] as const),
    ],
    variables: variants.map(({ contribution, uses }, at) => [
      at,
      [
        ['contribution', contribution] as const,
        [`made ${at}`, 1] as const,
        ...limited.map(({ name }) => [`of ${name}`, uses.get(name) ?? 0] as const),
      ],
    ]),
  };
}

const limits = (most: number | undefined, least: number) =>
  most === undefined || most === Number.POSITIVE_INFINITY ? { min: least } : { min: least, max: most };

function piecesOf<Variant extends string>(
  variants: readonly { readonly variant: Variant }[],
  { solution, divisible }: { readonly solution: Solution<number>; readonly divisible: boolean },
): ReadonlyMap<Variant, number> {
  const found = new Map(solution.variables);
  return new Map(
    variants.map(({ variant }, at) => {
      const pieces = found.get(at) ?? 0;
      return [variant, divisible ? pieces : Math.round(pieces)];
    }),
  );
}

function demandQuantities<Variant extends string, Name extends string>(
  resources: readonly Resource<Name>[],
  variants: readonly MixVariant<Variant, Name>[],
): void {
  const quantities = [
    ...resources.map(({ available }) => available),
    ...variants.flatMap(({ most = 0, least = 0, uses }) => [most, least, ...uses.values()]),
  ];
  const strange = quantities.find((quantity) => !(quantity >= 0));
  if (strange !== undefined) throw new RangeError(`Not a quantity: ${strange}`);
  const contribution = variants.find((each) => !Number.isFinite(each.contribution))?.contribution;
  if (contribution !== undefined) throw new RangeError(`Not a contribution: ${contribution}`);
}
