import type { Chance, Drawn, PieceMinutesBelief, PlanLot, PlanModel, PlanVariant } from './plan-model.ts';

/** @throws {RangeError} for a plan that speaks of what is not there, or whose numbers are none */
export function demandPlan(plan: PlanModel): void {
  demand(Number.isFinite(plan.now), 'A plan has a moment to begin at');
  demandDrawn(plan.pace);
  demand(isQuantity(plan.visitMinutes), 'Not the minutes of a visit');
  for (const { resource } of plan.stages) demandPlace(resource, plan.resources.length, 'resource');
  for (const stage of plan.stages) {
    if (stage.kind === 'hold') demand(isQuantity(stage.cureMinutes), 'A cure takes no less than no time');
  }
  for (const { capacity } of plan.resources)
    demand(capacity === null || isCount(capacity), 'Places are counted');
  for (const { hours } of plan.people) {
    let last = Number.NEGATIVE_INFINITY;
    for (const { from, to } of hours) {
      demand(from >= last && to > from && Number.isFinite(to), 'Hours come in order and end');
      last = to;
    }
  }
  for (const variant of plan.variants) demandVariant(variant, plan.stages.length);
  for (const lot of plan.lots) demandLot(lot, plan.variants);
}

function demandVariant({ wanted, finished, due, steps }: PlanVariant, stages: number): void {
  demand(isCount(wanted) && Number.isSafeInteger(finished), 'Good ones are counted');
  demand(due === null || Number.isFinite(due), 'A due date is a moment');
  steps.forEach(({ stage, minutes, loading, lost, lowered, back, backTo }, at) => {
    demandPlace(stage, stages, 'stage');
    for (const belief of [minutes, loading]) demandMinutes(belief);
    for (const chance of [lost, lowered, back]) demandChance(chance);
    const isNever = back.kind === 'known' && back.chance === 0;
    demand(isNever || backTo.length > 0, 'What is sent back goes somewhere');
    for (const { step, weight } of backTo)
      demand(isCount(step) && step <= at && weight > 0, 'Back is not ahead');
  });
}

function demandLot(
  { variant, step, firsts, seconds, redo, ready }: PlanLot,
  variants: readonly PlanVariant[],
): void {
  demandPlace(variant, variants.length, 'variant');
  const steps = variants[variant]?.steps.length ?? 0;
  demandPlace(step, steps, 'step');
  demandPlace(redo, steps, 'step');
  demand(isCount(firsts) && isCount(seconds) && firsts + seconds > 0, 'A lot has pieces');
  demand(Number.isFinite(ready), 'A lot is ready some time');
}

function demandMinutes({ median, logSd, shared, cv }: PieceMinutesBelief): void {
  demand(
    isQuantity(median) && isQuantity(logSd) && isShare(shared) && isQuantity(cv),
    'Not minutes of a piece',
  );
}

const demandDrawn = ({ median, logSd }: Drawn) => demand(median > 0 && isQuantity(logSd), 'Not a pace');

function demandChance(chance: Chance): void {
  if (chance.kind === 'known') demand(isShare(chance.chance), 'A chance lies between 0 and 1');
  else demand(chance.alpha > 0 && chance.beta > 0 && isShare(chance.shared), 'Shapes of a beta are positive');
}

function demandPlace(at: number | null, length: number, what: string): void {
  demand(at === null || (isCount(at) && at < length), `There is no ${what} ${at}`);
}

const isCount = (value: number) => Number.isSafeInteger(value) && value >= 0;
const isQuantity = (value: number) => value >= 0 && value < Number.POSITIVE_INFINITY;
const isShare = (value: number) => value >= 0 && value <= 1;

function demand(holds: boolean, text: string): void {
  if (!holds) throw new RangeError(text);
}
