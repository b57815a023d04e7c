import type { SpeciesId, StageId } from '../../log/ids.ts';
import type { Grade, StagePlace } from '../../log/place.ts';
import type { StageTime } from '../../study/piece-times.ts';
import type { SentBack } from '../../study/sent-back.ts';
import type { WoodTrials } from '../starts/stage-beliefs.ts';
import { chanceBeliefs, type Met, rareAs } from './chance-beliefs.ts';
import { minutesBeliefs } from './minutes-beliefs.ts';
import { paceOf, type WorkedDay } from './pace.ts';
import type { PlanLot, PlanModel, PlanResource, PlanStage, PlanStep, PlanVariant } from './plan-model.ts';
import { hoursOf, type ShiftToPlan } from './shift-hours.ts';

/** A stage in the order of the shop; `resource` is its place in the list of resources. */
export type StageToPlan = PlanStage & { readonly id: StageId };

interface VariantToPlan {
  /** Of any meaning: trays, starts and notes name it. */
  readonly id: string;
  readonly species: SpeciesId;
  readonly route: readonly StageId[];
  readonly wanted: number;
  readonly finished: number;
  /** ms UTC. */
  readonly due: number | null;
}

/** Pieces of one tray at one place. */
export interface StandingToPlan {
  readonly variant: string;
  readonly place: StagePlace;
  readonly pieces: number;
}

/** Pieces that are to be started, in trays of `each`. */
interface StartToPlan {
  readonly variant: string;
  readonly pieces: number;
  readonly each: number;
  readonly at: number;
}

/** What is known of a shop, digested: registers and sums on one hand, studies of the log on the other. */
export interface ShopToPlan {
  readonly now: number;
  readonly goal: PlanModel['goal'];
  readonly stages: readonly StageToPlan[];
  readonly resources: readonly PlanResource[];
  /** Of each person who works, in order. */
  readonly people: readonly (readonly ShiftToPlan[])[];
  readonly variants: readonly VariantToPlan[];
  readonly standings: readonly StandingToPlan[];
  readonly starts: readonly StartToPlan[];
  /** `survivalBySpecies`, `sentBack` and `pieceTimes` of the log, and days that are over. */
  readonly trials: readonly WoodTrials[];
  readonly back: readonly SentBack[];
  readonly times: readonly StageTime[];
  readonly days: readonly WorkedDay[];
}

export type ModelOfShop =
  | { readonly kind: 'model'; readonly plan: PlanModel; readonly notes: readonly PlanNote[] }
  /** No stage has a time: nothing says how long anything takes. */
  | { readonly kind: 'no-history' };

/** What the model does not rest on the shop's own history for, or leaves out; to be said beside the forecast. */
export type PlanNote =
  | { readonly kind: 'stage-without-time'; readonly stage: StageId }
  | { readonly kind: 'pieces-below-zero'; readonly variant: string; readonly stage: StageId }
  | {
      readonly kind: 'not-on-route';
      readonly variant: string;
      readonly stage: StageId;
      readonly pieces: number;
    };

/**
 * The plan of a shop: what stands where with what is believed of its chances and times. Pieces at stages that their route
 * has no more, and counts below zero, are left out and noted.
 */
export function modelOfShop(shop: ShopToPlan): ModelOfShop {
  const stepOf = stepsOf(shop);
  if (!stepOf) return { kind: 'no-history' };
  const variants = shop.variants.map((variant): PlanVariant => {
    const route = routeOf(shop, variant);
    return {
      ...{ wanted: variant.wanted, finished: variant.finished, due: variant.due },
      steps: route.map((stage, at) => stepOf(variant.species, { stage, at, route })),
    };
  });
  const { lots, notes } = lotsOf(shop);
  const timed = new Set(shop.times.map(({ stage }) => stage));
  const met = new Set(shop.variants.flatMap((variant) => routeOf(shop, variant)));
  return {
    kind: 'model',
    plan: {
      ...{ now: shop.now, goal: shop.goal, resources: shop.resources, variants, lots, takes: 'any' },
      stages: shop.stages.map(({ id, ...stage }) => stage),
      people: shop.people.map((shifts) => ({ hours: shifts.flatMap(hoursOf) })),
      pace: paceOf(shop.days, daysAhead(shop, variants, lots)),
      visitMinutes: visitMinutes(shop, variants, lots),
    },
    notes: [
      ...notes,
      ...[...met]
        .filter((stage) => !timed.has(stage))
        .map((stage) => ({ kind: 'stage-without-time' as const, stage })),
    ],
  };
}

/** Stages that the shop has no more cannot be planned. */
function routeOf({ stages }: ShopToPlan, { route }: VariantToPlan): readonly StageId[] {
  return route.filter((stage) => stages.some(({ id }) => id === stage));
}

/** What pieces met at a stage, wood by wood. */
interface MetAt {
  readonly lost: readonly Met[];
  readonly lowered: readonly Met[];
  readonly back: readonly Met[];
}

interface OnRoute {
  readonly stage: StageId;
  readonly at: number;
  readonly route: readonly StageId[];
}

function stepsOf(shop: ShopToPlan): ((species: SpeciesId, on: OnRoute) => PlanStep) | undefined {
  const minutes = minutesBeliefs(shop.times);
  if (!minutes) return undefined;
  const known = new Map<string, ReturnType<typeof beliefsAt>>();
  return (species, { stage, at, route }) => {
    const key = `${stage}|${at}|${route.length}`;
    const beliefs = known.get(key) ?? beliefsAt(shop, { stage, at, route });
    known.set(key, beliefs);
    const backTo = backTargets(shop.back, { stage, at, route });
    return {
      stage: shop.stages.findIndex(({ id }) => id === stage),
      minutes: minutes(stage, species, 'work'),
      loading: minutes(stage, species, 'loading'),
      lost: beliefs.lost(species),
      lowered: beliefs.lowered(species),
      back: backTo.length === 0 ? { kind: 'known', chance: 0 } : beliefs.back(species),
      backTo,
    };
  };
}

function beliefsAt(shop: ShopToPlan, { stage, route }: OnRoute) {
  const { lost, lowered, back } = metAt(shop, stage);
  const all = route.map((each) => metAt(shop, each));
  // A first that is lost, and one that is lowered, are both lost to firsts: the two share a piece.
  const share = shop.goal === 'firsts' ? 1 / 2 : 1;
  const rare = (of: readonly Met[]) => rareAs(of, { stages: route.length, share });
  return {
    lost: chanceBeliefs(lost, rare(all.flatMap((each) => each.lost))),
    lowered: chanceBeliefs(lowered, rare(all.flatMap((each) => each.lowered))),
    back: chanceBeliefs(back, rare(all.flatMap((each) => each.back))),
  };
}

function metAt({ trials, back }: ShopToPlan, stage: StageId): MetAt {
  const tried = trials.flatMap(({ group, stages }) => {
    const here = stages.find((each) => each.stage === stage);
    return here ? [{ species: group, ...here }] : [];
  });
  return {
    lost: tried.map(({ species, finished }) => ({ species, met: finished.lost, of: finished.atRisk })),
    lowered: tried.map(({ species, finished, firsts }) => {
      // Firsts that were lost were scrapped, as often as other pieces, or lowered.
      const share = finished.atRisk > 0 ? finished.lost / finished.atRisk : 0;
      const through = firsts.atRisk * (1 - share);
      return { species, met: Math.max(0, firsts.lost - firsts.atRisk * share), of: through };
    }),
    back: back
      .filter((each) => each.stage === stage)
      .map(({ species, visits, to }) => ({ species, met: sumOf(to.values()), of: visits })),
  };
}

/** Where the stage has sent pieces of any wood, as far as it lies before it on this route. */
function backTargets(back: readonly SentBack[], { stage, at, route }: OnRoute): PlanStep['backTo'] {
  const weights = new Map<number, number>();
  for (const each of back)
    if (each.stage === stage)
      for (const [to, pieces] of each.to) {
        const step = route.indexOf(to);
        if (step >= 0 && step <= at) weights.set(step, pieces + (weights.get(step) ?? 0));
      }
  return [...weights].map(([step, weight]) => ({ step, weight }));
}

function lotsOf(shop: ShopToPlan): {
  readonly lots: readonly PlanLot[];
  readonly notes: readonly PlanNote[];
} {
  const notes: PlanNote[] = [];
  const lots: PlanLot[] = [];
  const at = new Map(shop.variants.map(({ id }, variant) => [id, variant]));
  for (const { variant: id, place, pieces } of shop.standings) {
    const variant = at.get(id);
    const of = shop.variants[variant ?? -1];
    if (variant === undefined || !of || pieces === 0) continue;
    const step = routeOf(shop, of).indexOf(place.stage);
    if (pieces < 0) notes.push({ kind: 'pieces-below-zero', variant: id, stage: place.stage });
    else if (step < 0) notes.push({ kind: 'not-on-route', variant: id, stage: place.stage, pieces });
    else lots.push({ variant, step, ...graded(place.grade, pieces), ...waitOf(shop, of, place, step) });
  }
  for (const { variant: id, pieces, each, at: ready } of shop.starts) {
    const variant = at.get(id);
    if (variant === undefined || !(each >= 1)) continue;
    for (let left = pieces; left > 0; left -= each)
      lots.push({
        variant,
        step: 0,
        ...graded('first', Math.min(each, left)),
        redo: null,
        at: 'waiting',
        ready,
      });
  }
  return { lots, notes };
}

const graded = (grade: Grade, pieces: number) =>
  grade === 'first' ? { firsts: pieces, seconds: 0 } : { firsts: 0, seconds: pieces };

function waitOf(
  shop: ShopToPlan,
  of: VariantToPlan,
  place: StagePlace,
  step: number,
): Pick<PlanLot, 'redo' | 'at' | 'ready'> {
  const redo = place.redo === null ? -1 : routeOf(shop, of).indexOf(place.redo);
  return {
    redo: redo >= step ? redo : null,
    at: place.at,
    ready: place.at === 'held' ? place.ready : shop.now,
  };
}

/** Days of work that lie ahead, about: what all pieces still take, over what people have in a day. */
function daysAhead(shop: ShopToPlan, variants: readonly PlanVariant[], lots: readonly PlanLot[]): number {
  const minutes = sumOf(visitsAhead(shop, variants, lots));
  const worked = shop.days.filter(({ usual }) => usual > 0);
  if (worked.length === 0) return 1;
  return minutes / (sumOf(worked.map(({ usual }) => usual)) / worked.length);
}

/** Of a visit of a lot to a stage, on average, those that lie ahead; 0 where none do. */
function visitMinutes(shop: ShopToPlan, variants: readonly PlanVariant[], lots: readonly PlanLot[]): number {
  const visits = visitsAhead(shop, variants, lots);
  return visits.length === 0 ? 0 : sumOf(visits) / visits.length;
}

/** Minutes of each visit of each lot on its way, if nothing fails; a hold is visited to load it and to unload it. */
function visitsAhead(
  shop: ShopToPlan,
  variants: readonly PlanVariant[],
  lots: readonly PlanLot[],
): readonly number[] {
  return lots.flatMap(({ variant, step, firsts, seconds }) =>
    (variants[variant]?.steps.slice(step) ?? []).flatMap((next) => {
      const each = [next.minutes.median, ...loadingOf(shop, next)];
      return each.map((minutes) => minutes * (firsts + seconds));
    }),
  );
}

const loadingOf = ({ stages }: ShopToPlan, { stage, loading }: PlanStep) =>
  stages[stage]?.kind === 'hold' ? [loading.median] : [];

function sumOf(values: Iterable<number>): number {
  let sum = 0;
  for (const value of values) sum += value;
  return sum;
}
