import type { QualityLimit } from '../../domain/sampling/quality-limits.ts';
import { chanceOfAcceptance, type SamplingPlan, samplingPlan } from '../../domain/sampling/sampling-plan.ts';

/** What a plan lets through: of deliveries with `percent` bad the share (0 to 1) that is accepted. */
interface LetThrough {
  readonly percent: number;
  readonly share: number;
}

/** How bad deliveries are of which the chance is said, in limits: at the limit, and well beyond it. */
const beyond = [1, 2, 4, 8];
const worst = 50;

export interface ToCheck {
  readonly plan: SamplingPlan;
  /** Empty where all are checked. */
  readonly lets: readonly LetThrough[];
}

export function toCheck(lot: number, limit: QualityLimit): ToCheck {
  const plan = samplingPlan(lot, limit);
  if (plan.kind === 'all') return { plan, lets: [] };
  const lets = beyond
    .map((times) => times * Number(limit))
    .filter((percent) => percent <= worst)
    .map((percent) => ({ percent, share: chanceOfAcceptance(plan, percent / 100) }));
  return { plan, lets };
}
