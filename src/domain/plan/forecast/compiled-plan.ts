import { type WorkCalendar, workCalendar } from './calendar.ts';
import { chanceTables, tableLength } from './chance-tables.ts';
import type { PieceMinutesBelief, PlanModel, PlanStep } from './plan-model.ts';

const minute = 60_000;

/** What a stage has luck of its own in: work, loading, and the three flaws. */
export const kindsOfLuck = 5;

/** Times of a piece as they are drawn: the log of the median in ms, and deviations that are shared and its own. */
export interface TimeColumns {
  readonly logMs: Float64Array;
  readonly sharedSd: Float64Array;
  readonly ownSd: Float64Array;
  /** A third of the coefficient of variation of one piece. */
  readonly third: Float64Array;
}

export interface ChanceColumns {
  /** Tables of all steps, one behind the other. */
  readonly tables: Float32Array;
  /** Weights of what is shared and what is its own, of which the squares sum to 1. */
  readonly shared: Float64Array;
  readonly own: Float64Array;
  /** 1 where it never happens. */
  readonly isNever: Uint8Array;
}

/**
 * A plan in columns of numbers. Steps of all variants stand one behind the other, and are meant where it says _step_.
 */
export interface CompiledPlan {
  readonly now: number;
  readonly countsSeconds: boolean;
  readonly paceLog: number;
  readonly paceSd: number;
  readonly visitMs: number;
  readonly stages: number;
  readonly resources: number;
  readonly people: number;
  readonly variants: number;
  readonly classes: number;
  readonly pieces: number;
  /** Visits of lots after which a replication is given up: pieces that come back for ever. */
  readonly mostVisits: number;
  readonly calendar: WorkCalendar;
  /** Of a stage: ms of its cure, −1 where it is no hold; its resource, or one without limit. */
  readonly cureMs: Float64Array;
  readonly resourceOf: Int32Array;
  /** Of a resource: places, more than there are pieces for no limit. */
  readonly capacity: Int32Array;
  /** Of a step. `isLast` is 1 for the last of a variant. */
  readonly stageOf: Int32Array;
  readonly variantOf: Int32Array;
  readonly isLast: Uint8Array;
  readonly work: TimeColumns;
  readonly loading: TimeColumns;
  readonly lost: ChanceColumns;
  readonly lowered: ChanceColumns;
  readonly back: ChanceColumns;
  /** Targets of a step lie from `backFrom[step]` to `backFrom[step + 1]`, each with the share of it and those before. */
  readonly backFrom: Int32Array;
  readonly backTo: Int32Array;
  readonly backShare: Float64Array;
  /** Of a variant. */
  readonly classOf: Int32Array;
  readonly missing: Int32Array;
  readonly finished: Int32Array;
  readonly begin: BeginningLots;
}

/** Lots as they are at the beginning of every replication. */
interface BeginningLots {
  readonly step: Int32Array;
  readonly firsts: Int32Array;
  readonly pieces: Int32Array;
  readonly redo: Int32Array;
  readonly ready: Float64Array;
  readonly isHeld: Uint8Array;
  /** In the order of their being ready, as given among those that are ready together. */
  readonly order: Int32Array;
  /** Whether the order is another one in each replication. */
  readonly isShuffled: boolean;
}

/** Of a plan that `demandPlan` has let through. */
export function compiledPlan(plan: PlanModel): CompiledPlan {
  const steps = plan.variants.flatMap((variant) => variant.steps);
  const starts = stepStarts(plan);
  const stepAt = (variant: number, step: number) => (starts[variant] ?? 0) + step;
  const pieces = plan.lots.reduce((sum, { firsts, seconds }) => sum + firsts + seconds, 0);
  const longest = plan.variants.reduce((most, { steps: of }) => Math.max(most, of.length), 0);
  const noLimit = plan.resources.length;
  const tableFor = chanceTables();
  const chances = (of: (step: PlanStep) => PlanStep['lost']) => chanceColumns(steps.map(of), tableFor);
  const dues = [...new Set(plan.variants.map(({ due }) => due ?? Number.POSITIVE_INFINITY))].sort(
    (a, b) => a - b,
  );
  const backTargets = plan.variants.flatMap(({ steps: of }, variant) =>
    of.map(({ backTo }) => backTo.map(({ step, weight }) => ({ step: stepAt(variant, step), weight }))),
  );
  return {
    now: plan.now,
    countsSeconds: plan.goal === 'finished',
    paceLog: Math.log(plan.pace.median),
    paceSd: plan.pace.logSd,
    visitMs: plan.visitMinutes * minute,
    stages: plan.stages.length,
    resources: noLimit + 1,
    people: plan.people.length,
    variants: plan.variants.length,
    classes: Math.max(1, dues.length),
    pieces,
    mostVisits: 10_000 + 60 * pieces * longest,
    calendar: workCalendar(plan.people, plan.now),
    cureMs: Float64Array.from(plan.stages, (stage) =>
      stage.kind === 'hold' ? stage.cureMinutes * minute : -1,
    ),
    resourceOf: Int32Array.from(plan.stages, ({ resource }) => resource ?? noLimit),
    capacity: Int32Array.from([...plan.resources.map(({ capacity }) => capacity), null], (places) =>
      places === null ? 2 ** 30 : Math.min(places, 2 ** 30),
    ),
    stageOf: Int32Array.from(steps, ({ stage }) => stage),
    variantOf: Int32Array.from(plan.variants.flatMap(({ steps: of }, variant) => of.map(() => variant))),
    isLast: Uint8Array.from(
      plan.variants.flatMap(({ steps: of }) => of.map((_, at) => (at === of.length - 1 ? 1 : 0))),
    ),
    work: timeColumns(steps.map(({ minutes }) => minutes)),
    loading: timeColumns(steps.map(({ loading }) => loading)),
    lost: chances(({ lost }) => lost),
    lowered: chances(({ lowered }) => lowered),
    back: chances(({ back }) => back),
    backFrom: Int32Array.from([0, ...backTargets.map((_, at) => backTargets.slice(0, at + 1).flat().length)]),
    backTo: Int32Array.from(backTargets.flat(), ({ step }) => step),
    backShare: Float64Array.from(backTargets.flatMap(sharesUpTo)),
    classOf: Int32Array.from(plan.variants, ({ due }) => dues.indexOf(due ?? Number.POSITIVE_INFINITY)),
    missing: Int32Array.from(plan.variants, ({ wanted, finished }) => Math.max(0, wanted - finished)),
    finished: Int32Array.from(plan.variants, ({ finished }) => finished),
    begin: beginningLots(plan, stepAt),
  };
}

function stepStarts({ variants }: PlanModel): readonly number[] {
  let start = 0;
  return variants.map(({ steps }) => {
    start += steps.length;
    return start - steps.length;
  });
}

function timeColumns(beliefs: readonly PieceMinutesBelief[]): TimeColumns {
  return {
    logMs: Float64Array.from(beliefs, ({ median }) => Math.log(median * minute)),
    sharedSd: Float64Array.from(beliefs, ({ logSd, shared }) => logSd * Math.sqrt(shared)),
    ownSd: Float64Array.from(beliefs, ({ logSd, shared }) => logSd * Math.sqrt(1 - shared)),
    third: Float64Array.from(beliefs, ({ cv }) => cv / 3),
  };
}

function chanceColumns(
  chances: readonly PlanStep['lost'][],
  tableFor: (chance: PlanStep['lost']) => Float32Array,
): ChanceColumns {
  const tables = new Float32Array(chances.length * tableLength);
  chances.forEach((chance, at) => {
    tables.set(tableFor(chance), at * tableLength);
  });
  const shared = Float64Array.from(chances, (chance) =>
    Math.sqrt(chance.kind === 'known' ? 0 : chance.shared),
  );
  const isNever = Uint8Array.from(chances, (chance) =>
    chance.kind === 'known' && chance.chance === 0 ? 1 : 0,
  );
  return { tables, shared, own: shared.map((weight) => Math.sqrt(1 - weight * weight)), isNever };
}

function sharesUpTo(targets: readonly { readonly weight: number }[]): readonly number[] {
  const all = targets.reduce((sum, { weight }) => sum + weight, 0);
  let upTo = 0;
  return targets.map(({ weight }) => {
    upTo += weight;
    return upTo / all;
  });
}

function beginningLots(
  { lots, takes }: PlanModel,
  stepAt: (variant: number, step: number) => number,
): BeginningLots {
  const order = [...lots.keys()].sort((a, b) => (lots[a]?.ready ?? 0) - (lots[b]?.ready ?? 0) || a - b);
  return {
    step: Int32Array.from(lots, ({ variant, step }) => stepAt(variant, step)),
    firsts: Int32Array.from(lots, ({ firsts }) => firsts),
    pieces: Int32Array.from(lots, ({ firsts, seconds }) => firsts + seconds),
    redo: Int32Array.from(lots, ({ variant, redo }) => (redo === null ? -1 : stepAt(variant, redo))),
    ready: Float64Array.from(lots, ({ ready }) => ready),
    isHeld: Uint8Array.from(lots, ({ at }) => (at === 'held' ? 1 : 0)),
    order: Int32Array.from(order),
    isShuffled: takes === 'any',
  };
}
