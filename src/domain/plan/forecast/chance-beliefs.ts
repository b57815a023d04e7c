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

/** Pieces that the prior of a stage is worth. */
const priorPieces = 1.5;

/**
 * Prior of something that goes wrong at one of `stages` stages: a stage of which little is known is like the others. The mean
 * is what all of them have seen, with a piece and a half more at each; among all of those together `share` of a piece met
 * it. So before anything was seen a piece comes through the route as `stageBeliefs` has it, about, and a shop in which
 * little goes wrong is soon believed.
 */
export function rareAs(atAll: readonly Met[], { stages, share }: { stages: number; share: number }): Beta {
  const met = atAll.reduce((sum, each) => sum + each.met, share);
  const of = atAll.reduce((sum, each) => sum + each.of, priorPieces * stages);
  const mean = Math.min(met / of, 1 / 2);
  return { alpha: priorPieces * mean, beta: priorPieces * (1 - mean) };
}
