import type { ShopEvent } from '../../domain/log/event.ts';
import type { PartId } from '../../domain/log/ids.ts';
import type { QualityLimit } from '../../domain/sampling/quality-limits.ts';
import { chanceOfAcceptance, type SamplingPlan, samplingPlan } from '../../domain/sampling/sampling-plan.ts';
import { isVoided, type Voids } from '../../domain/shop/voids.ts';

export type SampledEvent = Extract<ShopEvent, { kind: 'parts-sampled' }>;

/** How many pieces of a part its last delivery in force brought; undefined where there is none. */
export function lastDelivery(
  events: readonly ShopEvent[],
  { part, voids }: { readonly part: PartId; readonly voids: Voids },
): number | undefined {
  const last = events.findLast((event) => event.kind === 'parts-received' && !isVoided(voids, event));
  if (last?.kind !== 'parts-received') return undefined;
  return last.parts.filter((line) => line.part === part).reduce((sum, { pieces }) => sum + pieces, 0);
}

/** What is on hand once a refused delivery is counted out; of one that was checked whole only its bad ones go. */
export function whatIsLeft({ letter, lot, bad }: SampledEvent, onHand: number): number {
  return Math.max(0, onHand - (letter === null ? bad : lot));
}

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

/** How many of a delivery are to be checked. */
export function howMany(lot: number, limit: QualityLimit): number {
  const plan = samplingPlan(lot, limit);
  return plan.kind === 'all' ? lot : plan.sample;
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
