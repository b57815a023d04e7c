import type { PartId, StageId } from '../../log/ids.ts';
import type { HoldGroup } from '../../rollup/hold-groups.ts';
import type { PieceMinutes } from '../../study/piece-minutes.ts';
import type { StudyRoutes } from '../../study/study-routes.ts';
import { survivalBySpecies } from '../../study/survival.ts';
import { tapCounts } from '../../study/tap-counts.ts';
import type { TapTable } from '../../study/tap-table.ts';
import { stageBeliefs } from '../starts/stage-beliefs.ts';
import { type HoldAsked, type HoldOffer, holdOffer, type Working } from './hold-offer.ts';
import { type MixVariant, type ProductMix, productMix } from './product-mix.ts';
import { type ResourceLoad, resourceLoads } from './resource-load.ts';
import { contributionOf, type DemandAsked, type VariantDemand, variantDemand } from './variant-demand.ts';

/** All hands together, hands at one stage, or the places of clamps and racks. */
export type LoadName = 'hands' | `hands/${StageId}` | HoldGroup['key'];

/** What a shop has in a stretch of time. */
export interface Stretch {
  /** Minutes of all people together. */
  readonly hands: number;
  /** null where it is not known when they are there: places are then left out. */
  readonly working: Working | null;
  /** Places are had for so many times `working`. */
  readonly times: number;
}

export interface ConstraintQuestion {
  readonly variants: readonly DemandAsked[];
  readonly holds: readonly HoldAsked[];
  readonly unitCosts: readonly { readonly part: PartId; readonly cost: number | null }[];
  /** Until when the work ahead is to be done, and whose: keys of the variants. null where hours or the day are not known. */
  readonly until: { readonly stretch: Stretch | null; readonly keys: readonly string[] };
  /** What a mix is made up for; `most` has the pieces that can be sold of each variant, or null for no limit. */
  readonly mix: { readonly stretch: Stretch; readonly most: ReadonlyMap<string, number> | null } | null;
}

export interface ConstraintStudy {
  readonly demands: readonly VariantDemand[];
  /** The most loaded first; null where there is nothing to hold it against. */
  readonly loads: readonly ResourceLoad<string, LoadName>[] | null;
  readonly offers: readonly HoldOffer[];
  /** Minutes of each resource for one piece that comes out, by key; undefined where a time is not known. */
  readonly uses: readonly { readonly key: string; readonly of: ReadonlyMap<LoadName, number | undefined> }[];
  readonly mix: MixAnswer | null;
}

export interface MixAnswer {
  readonly mix: ProductMix<string, LoadName>;
  /** Variants that are in no mix, since their contribution or what they take is not known. */
  readonly leftOut: readonly string[];
}

/**
 * Load against capacity of hands and of places, what a piece of each variant takes of them and brings in, and the mix that
 * brings in the most in a stretch of time.
 *
 * @throws {RangeError} for quantities below 0 or that are no numbers
 */
export function studyConstraint(
  table: TapTable,
  question: ConstraintQuestion & {
    readonly routes: StudyRoutes;
    readonly minutesOf: PieceMinutes;
    /** Pieces that are to be started, by key. */
    readonly starts: ReadonlyMap<string, number>;
  },
): ConstraintStudy {
  const { variants, holds, until, mix, minutesOf } = question;
  const demands = demandsOf(table, question);
  // The slowest wood: what is promised is then in on time.
  const handsAt = (stage: StageId) => {
    const known = variants.flatMap(({ species }) => minutesOf(stage, species) ?? []);
    return known.length === 0 ? undefined : Math.max(...known);
  };
  const offersIn = (stretch: Stretch | null) =>
    stretch?.working
      ? holds.map((hold) => scaled(holdOffer(hold, stretch.working ?? noTime, handsAt), stretch.times))
      : [];
  const offers = offersIn(until.stretch);
  return {
    demands,
    loads:
      until.stretch &&
      loadsOf(
        demands.filter(({ key }) => until.keys.includes(key)),
        { hands: until.stretch.hands, offers },
      ),
    offers,
    uses: demands.map((demand) => ({ key: demand.key, of: usesOf(demand, offers, 'perOut') })),
    mix: mix && mixOf(demands, { ...mix, offers: offersIn(mix.stretch) }),
  };
}

const noTime: Working = { now: 0, until: 0, shifts: [] };

const scaled = (offer: HoldOffer, times: number): HoldOffer => ({
  ...offer,
  available: offer.available * times,
});

function demandsOf(
  table: TapTable,
  question: Parameters<typeof studyConstraint>[1],
): readonly VariantDemand[] {
  const { variants, unitCosts, routes, minutesOf, starts } = question;
  const woods = survivalBySpecies(table, { routes });
  const costs = new Map(unitCosts.map(({ part, cost }) => [part, cost]));
  const visitsPerTrial = visitsPerTrialIn(table);
  const known = new Map<string, ReturnType<typeof stageBeliefs>>();
  const beliefs = (route: readonly StageId[], goal: 'firsts' | 'finished') => {
    const name = `${goal}|${route.join('|')}`;
    const found = known.get(name) ?? stageBeliefs(woods, { route, goal });
    known.set(name, found);
    return found;
  };
  return variants.map((asked) =>
    variantDemand(asked, {
      firsts: beliefs(asked.route, 'firsts')(asked.species),
      finished: beliefs(asked.route, 'finished')(asked.species),
      starts: starts.get(asked.key) ?? 0,
      visitsPerTrial,
      minutesAt: (stage) => minutesOf(stage, asked.species),
      unitCost: (part) => costs.get(part) ?? null,
    }),
  );
}

/** Visits of a stage ÷ those that were no repeats, of all woods; 1 where none is known. */
function visitsPerTrialIn(table: TapTable): (stage: StageId) => number {
  const sums = new Map<StageId, { visits: number; fresh: number }>();
  for (const { what, taps } of tapCounts(table)) {
    if (what.kind !== 'visit') continue;
    const sum = sums.get(what.stage) ?? { visits: 0, fresh: 0 };
    sums.set(what.stage, sum);
    sum.visits += taps * what.pieces;
    sum.fresh += taps * Math.max(0, what.pieces - what.again);
  }
  return (stage) => {
    const { visits, fresh } = sums.get(stage) ?? { visits: 0, fresh: 0 };
    return fresh > 0 ? visits / fresh : 1;
  };
}

/** Minutes of each resource, for all visits ahead or for one piece that comes out. */
function usesOf(
  { stages }: VariantDemand,
  offers: readonly HoldOffer[],
  of: 'ahead' | 'perOut',
): ReadonlyMap<LoadName, number | undefined> {
  const uses = new Map<LoadName, number | undefined>();
  const add = (name: LoadName, visits: number, minutes: number | undefined) => {
    if (visits === 0) return;
    const sum = uses.has(name) ? uses.get(name) : 0;
    uses.set(name, sum === undefined || minutes === undefined ? undefined : sum + visits * minutes);
  };
  for (const { stage, minutes, ...visits } of stages) {
    add('hands', visits[of], minutes);
    add(`hands/${stage}`, visits[of], minutes);
    for (const { key, stages: held } of offers) {
      const takes = held.find((each) => each.stage === stage)?.takes;
      if (takes !== undefined) add(key, visits[of], takes);
    }
  }
  return uses;
}

interface Offered {
  readonly hands: number;
  readonly offers: readonly HoldOffer[];
}

function loadsOf(demands: readonly VariantDemand[], { hands, offers }: Offered) {
  const stages = new Set(demands.flatMap((demand) => demand.stages.map(({ stage }) => stage)));
  const names: readonly LoadName[] = ['hands', ...[...stages].map((stage) => `hands/${stage}` as const)];
  return resourceLoads<string, LoadName>(
    [
      ...names.map((name) => ({ name, available: hands })),
      ...offers.map(({ key, available }) => ({ name: key, available })),
    ],
    // All of a variant's work ahead as one piece: what is in flight takes less than a piece from the start on.
    demands.map((demand) => ({ variant: demand.key, pieces: 1, uses: usesOf(demand, offers, 'ahead') })),
  );
}

function mixOf(
  demands: readonly VariantDemand[],
  {
    stretch,
    most,
    offers,
  }: NonNullable<ConstraintQuestion['mix']> & { readonly offers: readonly HoldOffer[] },
): MixAnswer {
  const leftOut: string[] = [];
  const variants = demands.flatMap((demand): MixVariant<string, LoadName>[] => {
    const { key, firstShare } = demand;
    const contribution = contributionOf(demand);
    const uses = new Map<LoadName, number>();
    for (const [name, minutes] of usesOf(demand, offers, 'perOut'))
      if (minutes !== undefined) uses.set(name, minutes);
    if (contribution.kind !== 'known' || !uses.has('hands')) {
      leftOut.push(key);
      return [];
    }
    // Whole pieces, of which as many are firsts as can be sold.
    const sold = most?.get(key) ?? 0;
    const limit = most ? { most: Math.ceil(sold / Math.max(firstShare, leastShare)) } : {};
    return [{ variant: key, contribution: contribution.money, uses, ...limit }];
  });
  const resources = [
    { name: 'hands' as const, available: stretch.hands },
    ...offers.map(({ key, available }) => ({ name: key, available })),
  ];
  return { mix: productMix<string, LoadName>(resources, variants), leftOut };
}

/** A wood of which hardly a first comes out still has a limit. */
const leastShare = 0.01;
