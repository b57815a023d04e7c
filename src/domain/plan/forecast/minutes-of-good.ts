import type { Likely } from '../purchase/payback.ts';
import type { Chance, PlanModel, PlanStep } from './plan-model.ts';

/** Normal quantile of 0.95: nine of ten lie between. */
const z90 = 1.645;

/**
 * Minutes of people's hours for one good piece from its first stage on, work on lost ones in it, pace in it; of all variants
 * by what is wanted of each. What is doubted of each stage and of the pace adds up as independent errors of first order on the
 * log scale. What is sent back takes the stages that it goes through again.
 *
 * @returns undefined while nothing is wanted, or no piece comes through
 */
export function minutesOfGood({ variants, stages, pace, goal }: PlanModel): Likely | undefined {
  let weight = 0;
  let minutes = 0;
  let variance = 0;
  for (const { wanted, steps } of variants) {
    const each = ofOne(steps, { stages, goal });
    if (wanted <= 0 || !each) continue;
    weight += wanted;
    minutes += wanted * each.minutes;
    variance += (wanted * each.error) ** 2;
  }
  if (!(minutes > 0)) return undefined;
  const likely = (minutes / weight) * pace.median;
  const times = Math.exp(z90 * Math.hypot(pace.logSd, Math.sqrt(variance) / minutes));
  return { low: likely / times, likely, high: likely * times };
}

function ofOne(
  steps: readonly PlanStep[],
  { stages, goal }: Pick<PlanModel, 'stages' | 'goal'>,
): { readonly minutes: number; readonly error: number } | undefined {
  const eachAt = (step: PlanStep) =>
    step.minutes.median + (stages[step.stage]?.kind === 'hold' ? step.loading.median : 0);
  let there = 1;
  let firsts = 1;
  let minutes = 0;
  let variance = 0;
  for (const [at, step] of steps.entries()) {
    const weights = step.backTo.reduce((sum, { weight }) => sum + weight, 0);
    const again = step.backTo.reduce(
      (sum, { step: to, weight }) =>
        sum + (weight / weights) * steps.slice(to, at + 1).reduce((of, each) => of + eachAt(each), 0),
      0,
    );
    const back = meanOf(step.back);
    const here = there * (eachAt(step) + (back / Math.max(0.01, 1 - back)) * again);
    minutes += here;
    variance += (here * step.minutes.logSd) ** 2;
    const stays = 1 - meanOf(step.lost);
    there *= stays;
    firsts *= stays * (1 - meanOf(step.lowered));
  }
  const good = goal === 'firsts' ? firsts : there;
  return good > 0 ? { minutes: minutes / good, error: Math.sqrt(variance) / good } : undefined;
}

/** The mean of what is believed of a chance. */
export const meanOf = (chance: Chance): number =>
  chance.kind === 'known' ? chance.chance : chance.alpha / (chance.alpha + chance.beta);
