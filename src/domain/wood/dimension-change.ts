/** Per cent of its oven-dry weight above which wood neither shrinks nor swells: the Wood Handbook's fibre saturation point. */
const fibreSaturation = 30;

/** Moisture contents beyond this (per cent) are met in no green wood that a handle is made of. Common sense, no source. */
const mostMoisture = 200;

/** What a wood loses from green to oven-dry, in per cent of its green size. */
export interface Shrinkage {
  /** Across the rings; null where the table has no value. */
  readonly radial: number | null;
  /** Along the rings; null where the table has no value. */
  readonly tangential: number | null;
}

type MoistureProblem = { readonly kind: 'out-of-range'; readonly which: 'from' | 'to' };

export type DimensionChange =
  | { readonly kind: 'known' /** In the unit of the size; below 0 it shrinks. */; readonly change: number }
  | { readonly kind: 'not-known' }
  | MoistureProblem;

interface MoistureChange {
  /** Moisture contents before and after, per cent of the oven-dry weight. */
  readonly from: number;
  readonly to: number;
}

/**
 * How much a size of wood across the grain changes when its moisture does. `total` is the shrinkage in that direction from
 * green to oven-dry, per cent; null gives `not-known`. Above fibre saturation nothing moves.
 *
 * Linear in moisture: Wood Handbook (FPL-GTR-190, 2010), chapter 13, change of dimension from total shrinkage:
 * ΔD = D (M₂ − M₁) ÷ (30·100 ÷ S − 30 + M₁), where D is the size at M₁. It is the same as shrinkage
 * S·(30 − M) ÷ 30 of chapter 4, taken of the green size.
 */
export function dimensionChange({
  size,
  total,
  from,
  to,
}: MoistureChange & {
  /** Of any unit. */
  readonly size: number;
  readonly total: number | null;
}): DimensionChange {
  const problem = moistureProblem({ from, to });
  if (problem) return problem;
  if (total === null) return { kind: 'not-known' };
  const [before, after] = [Math.min(from, fibreSaturation), Math.min(to, fibreSaturation)];
  const moved = (after - before) / (fibreSaturation * (100 / total) - fibreSaturation + before);
  // Nothing moves, rather than minus nothing.
  return { kind: 'known', change: size * moved + 0 };
}

export type FittedChange =
  | {
      readonly kind: 'known';
      /** Change of the diameter along the rings and across them, in the unit of the diameter; below 0 it shrinks. */
      readonly tangential: number;
      readonly radial: number;
    }
  | { readonly kind: 'not-known' }
  | MoistureProblem;

/**
 * How a round fitted diameter changes: it goes oval, because wood moves more along its rings than across them. `not-known`
 * when the table lacks either value. Errors as of `dimensionChange`.
 */
export function fittedDiameterChange({
  diameter,
  shrinkage,
  from,
  to,
}: MoistureChange & {
  /** Of any unit. */
  readonly diameter: number;
  readonly shrinkage: Shrinkage;
}): FittedChange {
  const along = dimensionChange({ size: diameter, total: shrinkage.tangential, from, to });
  const across = dimensionChange({ size: diameter, total: shrinkage.radial, from, to });
  if (along.kind !== 'known') return along;
  if (across.kind !== 'known') return across;
  return { kind: 'known', tangential: along.change, radial: across.change };
}

function moistureProblem({ from, to }: MoistureChange): MoistureProblem | undefined {
  if (!isMoisture(from)) return { kind: 'out-of-range', which: 'from' };
  if (!isMoisture(to)) return { kind: 'out-of-range', which: 'to' };
  return undefined;
}

function isMoisture(percent: number): boolean {
  return percent >= 0 && percent <= mostMoisture;
}
