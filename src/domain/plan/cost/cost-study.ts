import type { BatchId, PartId, SpeciesId, StageId, VariantId } from '../../log/ids.ts';
import type { VariantFact } from '../../set-up/facts.ts';
import type { PieceMinutes } from '../../study/piece-minutes.ts';
import type { StudyRoutes } from '../../study/study-routes.ts';
import { survivalBySpecies } from '../../study/survival.ts';
import { type TapCount, tapCounts } from '../../study/tap-counts.ts';
import type { Visit } from '../../study/tap-kind.ts';
import type { TapTable } from '../../study/tap-table.ts';
import { stageBeliefs } from '../starts/stage-beliefs.ts';
import { type Loss, type LossTable, lossTable } from './loss-table.ts';
import { lossOfReturn, lossOfScrap, lossOfSecond, type Making } from './losses.ts';
import { type VariantCost, variantCost } from './variant-cost.ts';
import type { PartUse, StageWork } from './work-cost.ts';

/** A variant of the batch, as the shop has it. */
export interface CostedVariant extends Pick<VariantFact, 'bill' | 'firstPrice' | 'secondPrice'> {
  readonly variant: VariantId;
  readonly species: SpeciesId;
  /** Pieces that are finished. */
  readonly firsts: number;
  readonly seconds: number;
}

export interface CostQuestion {
  readonly batch: BatchId;
  readonly route: readonly StageId[];
  readonly variants: readonly CostedVariant[];
  /** Minor units of one part; null while nobody has said. */
  readonly unitCosts: readonly {
    readonly part: PartId;
    readonly cost: number | null;
    readonly consumed: boolean;
  }[];
  /** Minor units; null while nobody has said. */
  readonly hourlyRate: number | null;
}

/** What one variant came to, and what it takes to judge a price and a second. */
export interface CostOfVariant {
  readonly variant: VariantId;
  readonly cost: VariantCost;
  /** Along the route: minutes of a visit (undefined while not known), and the chance to come through as a second at least. */
  readonly stages: readonly {
    readonly stage: StageId;
    readonly minutes: number | undefined;
    readonly chance: number;
  }[];
}

export interface CostStudy {
  readonly batch: BatchId;
  readonly variants: readonly CostOfVariant[];
  readonly losses: LossTable;
}

/**
 * What the good pieces of a batch cost, variant by variant, and where money was lost. A finished piece bears one visit to
 * each stage of its route, all visits of pieces that came again, its bill, and what was scrapped: the work up to there and
 * the parts fitted before, less those saved. Pieces in flight, and what is in them, are in none of it.
 *
 * @throws {RangeError} for counts or costs that are no numbers
 */
export function studyCosts(
  table: TapTable,
  question: CostQuestion & { readonly routes: StudyRoutes; readonly minutesOf: PieceMinutes },
): CostStudy {
  const { batch, route, variants, routes, minutesOf } = question;
  const beliefs = stageBeliefs(survivalBySpecies(table, { routes }), { route, goal: 'finished' });
  const counts = tapCounts(table).filter(({ of }) => of?.batch === batch);
  const its = (variant: VariantId) => visitsOf(counts.filter(({ of }) => of?.variant === variant));
  const losses: Loss[] = [];
  const costs = variants.map((of): CostOfVariant => {
    const visits = its(of.variant);
    const making = makingOf(of, question);
    losses.push(...lossesIn(visits, { making, of }));
    return {
      variant: of.variant,
      cost: variantCost(workOf(visits, { making, of, question }), { hourlyRate: question.hourlyRate }),
      stages: beliefs(of.species).map(({ stage, alpha, beta }) => ({
        ...{ stage, minutes: minutesOf(stage, of.species) },
        chance: alpha / (alpha + beta),
      })),
    };
  });
  return { batch, variants: costs, losses: lossTable(losses) };
}

interface Visits {
  readonly visit: Visit;
  /** Taps that say so. */
  readonly taps: number;
}

function visitsOf(counts: readonly TapCount[]): readonly Visits[] {
  return counts.flatMap(({ what, taps }) => (what.kind === 'visit' ? [{ visit: what, taps }] : []));
}

function makingOf(
  { species, bill }: CostedVariant,
  { route, unitCosts, hourlyRate, minutesOf }: CostQuestion & { readonly minutesOf: PieceMinutes },
): Making {
  const costs = new Map(unitCosts.map(({ part, cost }) => [part, cost]));
  return {
    ...{ route, bill, hourlyRate },
    minutesAt: (stage) => minutesOf(stage, species),
    unitCost: (part) => costs.get(part) ?? null,
  };
}

interface Made {
  readonly making: Making;
  readonly of: CostedVariant;
}

function lossesIn(visits: readonly Visits[], { making, of }: Made): readonly Loss[] {
  return visits.flatMap(({ visit: { stage, flaw, pieces }, taps }): Loss[] => {
    if (!flaw || flaw.outcome === 'mended') return [];
    const each =
      flaw.outcome === 'scrapped'
        ? lossOfScrap(making, { stage, saved: flaw.saved })
        : flaw.outcome === 'second'
          ? lossOfSecond(of)
          : lossOfReturn(making, { stage, to: flaw.to ?? stage });
    return [{ stage, reasons: flaw.reasons, pieces: taps * pieces, each }];
  });
}

function workOf(
  visits: readonly Visits[],
  { making, of, question }: Made & { readonly question: CostQuestion },
) {
  const { route, bill, minutesAt, unitCost } = making;
  const good = of.firsts + of.seconds;
  const consumed = new Set(question.unitCosts.flatMap(({ part, consumed: is }) => (is ? [part] : [])));
  const again = new Map<StageId, number>();
  const lostWork = new Map<StageId, number>();
  const lostParts = new Map<PartId, number>();
  const add = <Key>(sums: Map<Key, number>, key: Key, pieces: number) =>
    sums.set(key, (sums.get(key) ?? 0) + pieces);
  for (const { visit, taps } of visits) {
    add(again, visit.stage, taps * visit.again);
    if (visit.flaw?.outcome !== 'scrapped') continue;
    const { saved } = visit.flaw;
    const at = route.indexOf(visit.stage);
    const pieces = taps * visit.pieces;
    for (const stage of route.slice(0, at + 1)) add(lostWork, stage, pieces);
    const behind = new Set(route.slice(0, Math.max(0, at)));
    for (const { part, each, stage } of bill)
      if (behind.has(stage) && !saved.includes(part)) add(lostParts, part, pieces * each);
  }
  const work = (visitsAt: (stage: StageId) => number): readonly StageWork[] =>
    route.map((stage) => ({ stage, visits: visitsAt(stage), minutes: minutesAt(stage) }));
  const use = (part: PartId, pieces: number): PartUse => ({ part, pieces, unitCost: unitCost(part) });
  const uses = bill.map(({ part, each }) => use(part, good * each));
  return {
    ...{ firsts: of.firsts, seconds: of.seconds, firstPrice: of.firstPrice, secondPrice: of.secondPrice },
    parts: uses.filter(({ part }) => !consumed.has(part)),
    consumables: uses.filter(({ part }) => consumed.has(part)),
    labour: work((stage) => good + (again.get(stage) ?? 0)),
    scrapped: {
      parts: [...lostParts].map(([part, pieces]) => use(part, pieces)),
      labour: work((stage) => lostWork.get(stage) ?? 0),
    },
  };
}
