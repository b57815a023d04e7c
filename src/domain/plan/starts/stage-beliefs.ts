import type { SpeciesId, StageId } from '../../log/ids.ts';
import { hyperposterior } from '../../statistics/beta-hyperposterior.ts';
import { betaHyperMixture, mixtureMean, mixtureVariance } from '../../statistics/beta-mixture.ts';
import { type Beta, betaOfMoments } from '../../statistics/beta-moments.ts';
import type { Count } from '../../statistics/counts.ts';
import type { SurvivalStep } from '../../statistics/product-limit.ts';
import type { StageTrials } from '../../study/stage-trials.ts';

/** What the shop has seen of one wood: a `GroupSurvival` of `survivalBySpecies` is one. */
export interface WoodTrials {
  readonly group: SpeciesId;
  readonly stages: readonly StageTrials[];
}

/** What is believed of the chance that a piece of a wood which a stage tries stays a good one. */
export interface StageBelief extends Beta {
  readonly stage: StageId;
  /** What it rests on: pieces of this wood, of other woods only, or of none: it is then the prior and no more. */
  readonly from: 'own' | 'other-woods' | 'prior';
  /** Pieces of this wood that the stage has tried. */
  readonly tried: number;
}

export interface BeliefQuestion {
  /** The stages of the batch, in order. */
  readonly route: readonly StageId[];
  /** What a good one is: a first alone, or a second too. */
  readonly goal: 'firsts' | 'finished';
}

/**
 * What to believe of each stage of a route for a wood, pooled across the woods stage by stage: a wood with few pieces at a
 * stage leans on the others there, one with many stands for itself. Pieces in flight have counted for the stages behind them.
 *
 * A stage's rates are drawn from one beta population across the woods. Prior of its mean at stage j of J: Beta(1 + (J − j)/J, 1/J);
 * so the route's survival has the mean ½ before anything was seen, however many stages it has, as in `survivalPosterior`;
 * prior of its precision: see `hyperposterior`. The posterior, a mixture of betas, is replaced by the beta of the same mean
 * and variance.
 *
 * @returns the stages in the order of the route, for any wood; one that was never tried has beliefs too
 * @throws {RangeError} unless 0 ≤ lost ≤ tried at each stage
 * @example
 * const beliefs = stageBeliefs(survivalBySpecies(table, { routes }), { route, goal: 'firsts' });
 * const ash = beliefs('ash' as SpeciesId);
 * const stages = ash.map((rate) => ({ rate, standing: 0 })); // for goodByStarts and its kin
 * const isGuess = ash.some(({ from }) => from === 'prior'); // then say so beside the number
 */
export function stageBeliefs(
  woods: readonly WoodTrials[],
  { route, goal }: BeliefQuestion,
): (species: SpeciesId) => readonly StageBelief[] {
  const stages = route.map((stage, at) => {
    const prior = { alpha: 1 + (route.length - at - 1) / route.length, beta: 1 / route.length };
    const counts = new Map(
      woods.map(({ group, stages: tried }) => [
        group,
        countOf(tried.find((each) => each.stage === stage)?.[goal]),
      ]),
    );
    const groups = [...counts.values()].filter(({ n }) => n > 0);
    return { stage, prior, counts, population: hyperposterior(groups, prior), isTried: groups.length > 0 };
  });
  return (species) =>
    stages.map(({ stage, prior, counts, population, isTried }) => {
      const count = counts.get(species) ?? { k: 0, n: 0 };
      const from = count.n > 0 ? 'own' : isTried ? 'other-woods' : 'prior';
      const mixture = betaHyperMixture(count, population);
      const mean = mixtureMean(mixture);
      const belief = betaOfMoments(mean, mixtureVariance(mixture, mean)) ?? alone(count, prior);
      return { ...belief, stage, from, tried: count.n };
    });
}

function countOf(step: SurvivalStep | undefined): Count {
  if (step === undefined) return { k: 0, n: 0 };
  const { atRisk, lost } = step;
  if (!(lost >= 0 && lost <= atRisk)) throw new RangeError(`Not a stage's losses: ${lost} of ${atRisk}`);
  return { k: atRisk - lost, n: atRisk };
}

/** What the wood's own pieces and the prior say, where the mixture has no spread that a number can hold. */
const alone = ({ k, n }: Count, prior: Beta): Beta => ({
  alpha: prior.alpha + k,
  beta: prior.beta + n - k,
});
