import type { MixFact } from '../set-up/facts.ts';

export type Adhesive = Extract<MixFact, { kind: 'adhesive' }>;
export type Finish = Extract<MixFact, { kind: 'finish' }>;

/** What is mixed for some pieces, in grams. */
export interface Amounts {
  /** What is mixed in all, what stays in the cup among it. */
  readonly mixed: number;
  /** null where the ratio is by volume and no densities are known: it cannot be weighed. */
  readonly weighed: { readonly resin: number; readonly hardener: number } | null;
  /** Millilitres of each where the ratio is by volume and both densities are known. */
  readonly measured: { readonly resin: number; readonly hardener: number } | null;
}

/**
 * Grams of resin and hardener for `pieces`. Of what is mixed a share stays in the cup (w), so net ÷ (1 − w) is mixed; the
 * ratio parts it by weight, or by weight as volume × density gives it.
 */
export function adhesiveFor(
  pieces: number,
  { gramsEach, wastePercent, resin, hardener, by, densities }: Adhesive,
): Amounts {
  const mixed = (pieces * gramsEach) / 100 / (1 - wastePercent / 100);
  if (by === 'volume' && densities === null) return { mixed, weighed: null, measured: null };
  const heavy = by === 'volume' && densities ? densities : { resin: 1, hardener: 1 };
  const parts = { resin: resin * heavy.resin, hardener: hardener * heavy.hardener };
  const sum = parts.resin + parts.hardener;
  const weighed = { resin: (mixed * parts.resin) / sum, hardener: (mixed * parts.hardener) / sum };
  const measured =
    by === 'volume' && densities
      ? {
          resin: (weighed.resin * 100) / densities.resin,
          hardener: (weighed.hardener * 100) / densities.hardener,
        }
      : null;
  return { mixed, weighed, measured };
}

/** A tenth of a gram, as scales of a workshop show it, may be so large a share of the hardener at most. */
const coarsest = 0.05;

/** Whether a scale that shows tenths of a gram is too coarse: one step of it is more than 5 % of the lesser part. */
export function isTooLittle({ weighed }: Amounts): boolean {
  return weighed !== null && 0.1 / Math.min(weighed.resin, weighed.hardener) > coarsest;
}

/** Several mixes for so many pieces each. */
export interface Mixes {
  readonly mixes: number;
  readonly pieces: number;
}

/**
 * The fewest mixes that the pot life (minutes) allows for whole `pieces`, 1 or more, at so many seconds a piece. They are as
 * alike as can be, the larger ones first: a small last mix is hard to weigh. null where not even one piece is done in time.
 */
export function mixesInTime(
  pieces: number,
  { potMinutes, secondsEach }: { readonly potMinutes: number; readonly secondsEach: number },
): readonly Mixes[] | null {
  const most = Math.floor((potMinutes * 60) / secondsEach);
  if (most < 1) return null;
  const all = Math.ceil(pieces / most);
  const fewer = Math.floor(pieces / all);
  const larger = pieces - all * fewer;
  return [
    { mixes: larger, pieces: fewer + 1 },
    { mixes: all - larger, pieces: fewer },
  ].filter(({ mixes }) => mixes > 0);
}

/** Millilitres of finish for a coat of `pieces`, with what stays in cup and brush. */
export function finishFor(pieces: number, { mlEach, wastePercent }: Finish): number {
  return (pieces * mlEach) / 100 / (1 - wastePercent / 100);
}
