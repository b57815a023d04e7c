import { hyperposterior } from './beta-hyperposterior.ts';
import { type BetaMixture, betaHyperMixture, mixtureInterval, mixtureMean } from './beta-mixture.ts';
import type { Beta } from './beta-moments.ts';
import { likeliestPopulation } from './beta-population.ts';
import { type Count, demandLevel, demandWorth, type Interval } from './counts.ts';

/** One group after pooling. All are fractions. */
interface PooledGroup {
  /** k ÷ n; absent while n = 0. */
  readonly raw: number | undefined;
  /** Posterior mean of the group's own rate. */
  readonly mean: number;
  /** Equal-tailed posterior interval of the group's own rate. */
  readonly interval: Interval;
}

/** The likeliest population, and each group in the order given. */
export interface EmpiricalBayes extends Beta {
  readonly groups: PooledGroup[];
}

/**
 * Rates of several groups, each helped by the others: a group with few pieces leans on the population, one with many
 * stands for itself. The rates are taken as drawn from one beta population, the counts as binomial.
 *
 * `alpha` and `beta` are the population under which the counts are likeliest (beta-population.ts says what they are
 * without spread). Means and intervals do not take it as known, which would make them too narrow with a handful of
 * groups: they average over the populations that the counts allow (beta-hyperposterior.ts states the prior). For each
 * precision the group's posterior, a mixture over the population's mean, is replaced by the beta of the same mean and
 * variance; the mixture over the precision is kept whole.
 *
 * A group with n = 0 gets the population itself. Counts may be fractions, as survivalPosterior gives them for pieces in
 * flight. Throws RangeError unless 0 ≤ k ≤ n and 0 < level < 1.
 * Source: A. Gelman et al., Bayesian Data Analysis, 3rd ed., sections 5.1 and 5.3.
 */
export function empiricalBayes(groups: readonly Count[], level = 0.9): EmpiricalBayes {
  groups.forEach(demandWorth);
  demandLevel(level);
  const beliefs = hyperposterior(groups.filter(({ n }) => n > 0));
  return {
    ...likeliestPopulation(groups),
    groups: groups.map((group) => pooled(group, betaHyperMixture(group, beliefs), level)),
  };
}

function pooled({ k, n }: Count, mixture: BetaMixture, level: number): PooledGroup {
  return {
    raw: n === 0 ? undefined : k / n,
    mean: mixtureMean(mixture),
    interval: mixtureInterval(mixture, level),
  };
}
