import type { SpeciesId } from '../../log/ids.ts';
import { hyperposterior } from '../../statistics/beta-hyperposterior.ts';
import { betaHyperMixture, mixtureMean, mixtureVariance } from '../../statistics/beta-mixture.ts';
import { type Beta, betaOfMoments } from '../../statistics/beta-moments.ts';
import type { Count } from '../../statistics/counts.ts';
import type { Chance } from './plan-model.ts';

/** Pieces of a wood that met something, and those that might have; fractions are allowed. */
export interface Met {
  readonly species: SpeciesId;
  readonly met: number;
  readonly of: number;
}

/**
 * What to believe of the chance of something at a stage, wood by wood, pooled across the woods as in `stageBeliefs`: the
 * posterior, a mixture, is replaced by the beta of the same mean and variance. What is not known of all woods alike is
 * `shared`: the doubt about the mean of the population that they are drawn from, as far as a wood leans on it.
 *
 * @param prior of the population's mean of the chance
 * @returns the belief for any wood, also for one that never was there
 */
export function chanceBeliefs(found: readonly Met[], prior: Beta): (species: SpeciesId) => Chance {
  const counts = new Map(found.map(({ species, met, of }) => [species, countOf(met, of)]));
  const population = hyperposterior(
    [...counts.values()].filter(({ n }) => n > 0),
    prior,
  );
  return (species) => {
    const count = counts.get(species) ?? { k: 0, n: 0 };
    const mixture = betaHyperMixture(count, population);
    const mean = mixtureMean(mixture);
    const variance = mixtureVariance(mixture, mean);
    const belief = betaOfMoments(mean, variance);
    if (!belief)
      return { kind: 'beta', alpha: prior.alpha + count.k, beta: prior.beta + count.n - count.k, shared: 0 };
    const common = population.reduce((sum, { precision, weight, variance: of }) => {
      const share = precision / (count.n + precision);
      return sum + weight * share ** 2 * of;
    }, 0);
    return { kind: 'beta', ...belief, shared: Math.min(1, common / variance) };
  };
}

const countOf = (met: number, of: number): Count => {
  const n = Math.max(0, of);
  return { k: Math.min(Math.max(0, met), n), n };
};

/**
 * Prior of something that goes wrong at one of `stages` stages: so rare at each that a piece comes through all of them
 * with even chances, as in `stageBeliefs`. Where several things can go wrong each takes a part of that: `share`.
 */
export const rareAt = (at: number, stages: number, share = 1): Beta => ({
  alpha: share / stages,
  beta: 1 + (stages - at - share) / stages,
});
