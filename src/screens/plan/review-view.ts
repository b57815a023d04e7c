import { readWholeNumber } from '../../domain/command/whole-number.ts';
import type { BatchId, StageId } from '../../domain/log/ids.ts';
import type { VariantDemand } from '../../domain/plan/constraint/variant-demand.ts';
import type { CostStudy } from '../../domain/plan/cost/cost-study.ts';
import type { PlanQuestions, PlanStudy } from '../../domain/plan/plan-study.ts';
import { batchThatFits } from '../../domain/plan/purchase/batch-that-fits.ts';
import type { Likely } from '../../domain/plan/purchase/payback.ts';
import type { LossCount } from '../../domain/plan/review/loss-counts.ts';
import type { BatchReview } from '../../domain/plan/review/review-study.ts';
import type { BatchTargets } from '../../domain/rollup/batch-targets.ts';
import type { Shop } from '../../domain/shop/shop.ts';
import type { StageTime } from '../../domain/study/piece-times.ts';
import { demandsIn } from './constraint-view.ts';
import { costQuestion } from './cost-view.ts';
import { keyOf, planQuestions } from './plan-question.ts';
import { sumsOf, type TargetSums } from './targets-view.ts';

/** So many batches are looked back at: each is read out of the whole log. */
export const mostReviewed = 24;

/** The latest due first; those without a due day before all others. */
export const latestFirst = (batches: readonly BatchTargets[]): readonly BatchTargets[] =>
  batches.toReversed().slice(0, mostReviewed);

/** What the log is asked about batches, and about starting the chosen one anew. */
export function reviewQuestions(
  shop: Shop,
  {
    batches,
    chosen,
  }: { readonly batches: readonly BatchTargets[]; readonly chosen: BatchTargets | undefined },
): PlanQuestions {
  const anew = chosen ? [asNothingIsThere(chosen)] : [];
  const base = planQuestions(shop.registers, { batches: anew, goal: 'firsts' });
  const asked = new Set(base.starts.map(({ key }) => key));
  const costs = batches.map((batch) => costQuestion(shop, batch));
  const [first] = costs;
  const demands = anew.flatMap((batch) => demandsIn(shop, batch).filter(({ key }) => asked.has(key)));
  const unitCosts = first?.unitCosts ?? [];
  return {
    ...base,
    times: true,
    reviews: { batches: costs, unitCosts, hourlyRate: first?.hourlyRate ?? null },
    constraint: {
      ...{ variants: demands, holds: [], unitCosts, mix: null },
      until: { stretch: null, keys: [] },
    },
  };
}

/** A batch of which no piece has been made up yet. */
const asNothingIsThere = (batch: BatchTargets): BatchTargets => ({
  ...batch,
  variants: batch.variants.map((target) => ({
    ...target,
    ...{ finished: { first: 0, second: 0 }, scrapped: 0, inFlight: [] },
  })),
});

/** What a batch came to, added up over its variants. */
export interface Outcome {
  readonly target: BatchTargets;
  readonly review: BatchReview;
  readonly sums: TargetSums;
  readonly made: number;
  readonly out: number;
  readonly flying: number;
  /** null while nothing has come out or was scrapped. */
  readonly yield: number | null;
  readonly cost: BatchCost;
}

interface BatchCost {
  /** Minor units. */
  readonly money: number;
  /** Something is missing: it was at least that. */
  readonly isPart: boolean;
}

export function outcomesOf(
  batches: readonly BatchTargets[],
  reviews: readonly BatchReview[],
): readonly Outcome[] {
  return batches.flatMap((target): Outcome[] => {
    const review = reviews.find(({ batch }) => batch === target.batch);
    if (!review) return [];
    const sums = sumsOf(target.variants);
    const out = sums.firsts + sums.seconds;
    const flying = sums.flying.first + sums.flying.second;
    const ended = out + sums.scrapped;
    return [
      {
        ...{ target, review, sums, out, flying, made: ended + flying },
        yield: ended > 0 ? out / ended : null,
        cost: costOfBatch(review.costs),
      },
    ];
  });
}

function costOfBatch({ variants }: CostStudy): BatchCost {
  return variants.reduce<BatchCost>(
    ({ money, isPart }, { cost }) =>
      cost.kind === 'not-known'
        ? { money: money + cost.atLeast, isPart: true }
        : { money: money + cost.all.whole, isPart },
    { money: 0, isPart: false },
  );
}

export interface LargestLosses {
  readonly by: 'money' | 'pieces';
  /** Three at most; `money` in minor units, null where they stand by pieces. */
  readonly rows: readonly (LossCount & { readonly money: number | null })[];
  /** Pieces that are in no row of money, since theirs is not known. */
  readonly unknown: number;
}

/** The three largest causes of loss: by money where any is known, else by pieces. */
export function largestLosses({ costs: { losses }, losses: counts }: BatchReview): LargestLosses {
  return losses.cells.length > 0
    ? { by: 'money', rows: losses.cells.slice(0, 3), unknown: losses.unknown.pieces }
    : { by: 'pieces', rows: counts.slice(0, 3).map((each) => ({ ...each, money: null })), unknown: 0 };
}

/** What is believed of a variant now. */
export interface NextRow {
  readonly demand: VariantDemand;
  readonly wanted: number;
  /** Share of pieces started that come out. */
  readonly comesOut: number;
  /** Of hands for one that comes out; undefined while not known. */
  readonly minutes: number | undefined;
  readonly start: PlanStudy['starts'][number]['smallest'] | undefined;
}

export function nextRows(
  chosen: BatchTargets,
  { starts, constraint }: Pick<PlanStudy, 'starts' | 'constraint'>,
): readonly NextRow[] {
  return (constraint?.demands ?? []).map((demand) => ({
    demand,
    wanted: chosen.variants.find((target) => keyOf(chosen, target) === demand.key)?.wanted ?? 0,
    comesOut: demand.comesOut,
    minutes: constraint?.uses.find(({ key }) => key === demand.key)?.of.get('hands'),
    start: starts.find(({ key }) => key === demand.key)?.smallest,
  }));
}

/** A whole number of hours or weeks as it is typed; undefined for what is none. */
export function readSpan(typed: string): number | undefined {
  const read = readWholeNumber(typed, { least: 1, most: 1000 });
  return read.ok ? read.value : undefined;
}

export type Fits =
  | { readonly kind: 'fits'; readonly pieces: Likely }
  /** Stages that nobody has timed. */
  | { readonly kind: 'untimed'; readonly stages: readonly StageId[] }
  | { readonly kind: 'nothing' };

/** How large a batch of the same variants in the same shares may be. */
export function fitsOf(
  rows: readonly NextRow[],
  {
    chosen,
    times,
    hoursAWeek,
    weeks,
  }: {
    readonly chosen: BatchTargets;
    readonly times: readonly StageTime[];
    readonly hoursAWeek: number;
    readonly weeks: number;
  },
): Fits {
  const untimed = rows.flatMap(({ demand }) =>
    demand.stages.flatMap(({ stage, minutes }) => (minutes === undefined ? [stage] : [])),
  );
  if (untimed.length > 0) return { kind: 'untimed', stages: [...new Set(untimed)] };
  const wanted = rows.reduce((sum, row) => sum + row.wanted, 0);
  const mean = (end: 'low' | 'likely' | 'high') =>
    rows.reduce((sum, row) => {
      const species = chosen.variants.find(({ variant }) => variant === row.demand.variant)?.species;
      const each = row.demand.stages.reduce((minutes, { stage, perOut, minutes: visit = 0 }) => {
        const its = times.filter((time) => time.stage === stage && time.species === species);
        return minutes + perOut * visit * rangeOf(its, end);
      }, 0);
      return sum + (each * row.wanted) / wanted;
    }, 0);
  const minutesEach = { low: mean('low'), likely: mean('likely'), high: mean('high') };
  if (!(minutesEach.low > 0)) return { kind: 'nothing' };
  return { kind: 'fits', pieces: batchThatFits({ minutesEach, hoursAWeek, weeks }) };
}

/** An end of the interval of a mean time, as a share of the mean; 1 where no interval is known. */
function rangeOf(times: readonly StageTime[], end: 'low' | 'likely' | 'high'): number {
  if (end === 'likely' || times.length === 0) return 1;
  const at = end === 'low' ? 0 : 1;
  const sum = times.reduce((so, { time }) => so + (time.meanInterval?.[at] ?? time.mean), 0);
  return sum / times.reduce((so, { time }) => so + time.mean, 0);
}

/** The chosen batch, or the first of which there are pieces. */
export const chosenOf = (
  batches: readonly BatchTargets[],
  id: BatchId | undefined,
): BatchTargets | undefined =>
  batches.find(({ batch }) => batch === id) ?? batches.find(hasPieces) ?? batches[0];

const hasPieces = ({ variants }: BatchTargets): boolean =>
  variants.some(
    ({ finished, scrapped, inFlight }) =>
      finished.first + finished.second + scrapped > 0 || inFlight.length > 0,
  );
