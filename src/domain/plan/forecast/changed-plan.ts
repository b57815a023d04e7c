import type { PlanLot, PlanModel, PlanPerson } from './plan-model.ts';

/** A change of a plan, to ask what would come of it. Stages, resources and variants are named by their place in the plan. */
export type PlanChange =
  /** Places that a resource then has; null is no limit. */
  | { readonly kind: 'places'; readonly resource: number; readonly capacity: number | null }
  | { readonly kind: 'cure'; readonly stage: number; readonly minutes: number }
  /** Each piece takes so many per cent less time there; below 0 more. */
  | { readonly kind: 'faster'; readonly stage: number; readonly percent: number }
  | { readonly kind: 'helper'; readonly hours: PlanPerson['hours'] }
  /** So many pieces less, and as many fewer wanted: those that are least far. */
  | { readonly kind: 'fewer'; readonly variant: number; readonly pieces: number };

/** A copy of a plan with changes, one after the other; whatever they do not name stays as it is. */
export function changedPlan(plan: PlanModel, changes: readonly PlanChange[]): PlanModel {
  return changes.reduce(withChange, plan);
}

function withChange(plan: PlanModel, change: PlanChange): PlanModel {
  switch (change.kind) {
    case 'places':
      return {
        ...plan,
        resources: plan.resources.map((each, at) =>
          at === change.resource ? { ...each, capacity: change.capacity } : each,
        ),
      };
    case 'cure':
      return {
        ...plan,
        stages: plan.stages.map((stage, at) =>
          at === change.stage && stage.kind === 'hold' ? { ...stage, cureMinutes: change.minutes } : stage,
        ),
      };
    case 'faster':
      return { ...plan, variants: plan.variants.map((variant) => faster(variant, change)) };
    case 'helper':
      return { ...plan, people: [...plan.people, { hours: change.hours }] };
    case 'fewer':
      return {
        ...plan,
        variants: plan.variants.map((variant, at) =>
          at === change.variant
            ? { ...variant, wanted: Math.max(0, variant.wanted - change.pieces) }
            : variant,
        ),
        lots: fewerLots(plan.lots, change),
      };
  }
}

function faster(
  variant: PlanModel['variants'][number],
  { stage, percent }: { readonly stage: number; readonly percent: number },
): PlanModel['variants'][number] {
  const times = Math.max(0, 1 - percent / 100);
  const sped = <Of extends { readonly median: number }>(belief: Of): Of => ({
    ...belief,
    median: belief.median * times,
  });
  return {
    ...variant,
    steps: variant.steps.map((step) =>
      step.stage === stage ? { ...step, minutes: sped(step.minutes), loading: sped(step.loading) } : step,
    ),
  };
}

/** Pieces go from the earliest lots, the last of them first; the order of what is left stays. */
function fewerLots(
  lots: readonly PlanLot[],
  { variant, pieces }: { readonly variant: number; readonly pieces: number },
): readonly PlanLot[] {
  let left = pieces;
  const taken = new Map<PlanLot, number>();
  for (const lot of lots.toReversed().sort((a, b) => a.step - b.step)) {
    if (lot.variant !== variant) continue;
    const here = Math.min(left, lot.firsts + lot.seconds);
    taken.set(lot, here);
    left -= here;
  }
  return lots.flatMap((lot) => {
    const off = taken.get(lot) ?? 0;
    const firsts = Math.max(0, lot.firsts - off);
    const seconds = lot.seconds - Math.max(0, off - lot.firsts);
    return firsts + seconds > 0 ? [{ ...lot, firsts, seconds }] : [];
  });
}
