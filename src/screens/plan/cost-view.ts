import { readWholeNumber } from '../../domain/command/whole-number.ts';
import type { PartId, StageId } from '../../domain/log/ids.ts';
import type { Missing } from '../../domain/plan/cost/amount.ts';
import { known, missingOf } from '../../domain/plan/cost/amount.ts';
import type {
  CostedVariant,
  CostOfVariant,
  CostQuestion,
  CostStudy,
} from '../../domain/plan/cost/cost-study.ts';
import { finishSecond, type SecondVerdict } from '../../domain/plan/cost/finish-second.ts';
import { type PriceCheck, priceCheck } from '../../domain/plan/cost/price-check.ts';
import type { BatchTargets } from '../../domain/rollup/batch-targets.ts';
import { partCost } from '../../domain/rollup/part-cost.ts';
import { factOf, factsOf } from '../../domain/shop/registers.ts';
import type { Shop } from '../../domain/shop/shop.ts';
import { readPrice } from '../parts/money.ts';

/** What the log is asked about the costs of a batch, with all that the shop knows of prices. */
export function costQuestion(shop: Shop, { batch, route, variants }: BatchTargets): CostQuestion {
  return {
    batch,
    route,
    hourlyRate: factOf(shop.registers, { register: 'shop', id: 'shop' })?.hourCost ?? null,
    unitCosts: factsOf(shop.registers, 'part').map(({ id, fact }) => ({
      part: id,
      cost: partCost(shop, id),
      consumed: fact.sort === 'consumable',
    })),
    variants: variants.flatMap(({ variant, species, finished }): CostedVariant[] => {
      const fact = factOf(shop.registers, { register: 'variant', id: variant });
      if (!fact || species === undefined) return [];
      const { bill, firstPrice, secondPrice } = fact;
      return [
        { variant, species, bill, firstPrice, secondPrice, firsts: finished.first, seconds: finished.second },
      ];
    }),
  };
}

/** A margin as it is typed, as a fraction; undefined for what is none. */
export function readMargin(typed: string): number | undefined {
  const read = readWholeNumber(typed, { least: 0, most: 99 });
  return read.ok ? read.value / 100 : undefined;
}

/** The price of a first held against what one cost; undefined where either is not known. */
export function checkOf(
  { cost }: CostOfVariant,
  { price, margin }: { readonly price: number | null; readonly margin: number | undefined },
): PriceCheck | undefined {
  if (cost.kind !== 'known' || price === null || margin === undefined) return undefined;
  // What seconds bring in more than firsts would be a cost below nothing: no price is held against that.
  return cost.perGood.whole < 0 ? undefined : priceCheck({ price, cost: cost.perGood.whole, margin });
}

export interface MissingFacts {
  readonly parts: readonly PartId[];
  readonly stages: readonly StageId[];
  readonly rate: boolean;
  readonly prices: boolean;
}

/** All that has to be said before everything is known; each once. */
export function missingIn({ variants, losses }: CostStudy): MissingFacts {
  const all: readonly Missing[] = missingOf([
    ...variants.flatMap(({ cost }) =>
      cost.kind === 'not-known' ? [{ kind: 'not-known' as const, missing: cost.missing }] : [],
    ),
    { kind: 'not-known', missing: losses.unknown.missing },
  ]);
  return missingFacts(all);
}

/** What is missing, by where it is said. */
export function missingFacts(all: readonly Missing[]): MissingFacts {
  return {
    parts: all.flatMap((each) => (each.what === 'unit-cost' ? [each.part] : [])),
    stages: all.flatMap((each) => (each.what === 'minutes' ? [each.stage] : [])),
    rate: all.some(({ what }) => what === 'hourly-rate'),
    prices: all.some(({ what }) => what === 'price'),
  };
}

export interface SecondAsked {
  readonly stage: StageId;
  /** What scrapping now saves, as it is typed; empty is nothing. */
  readonly saves: string;
}

/** Whether a blemished piece of a variant at a stage is worth finishing; undefined while a sum is no number. */
export function secondOf(
  question: CostQuestion,
  { stages, variant }: CostOfVariant,
  { stage, saves }: SecondAsked,
): SecondVerdict | undefined {
  const of = question.variants.find((each) => each.variant === variant);
  const saved = readPrice(saves);
  const from = stages.findIndex((each) => each.stage === stage);
  if (!of || saved === undefined || from < 0) return undefined;
  const costs = new Map(question.unitCosts.map(({ part, cost }) => [part, cost]));
  return finishSecond({
    ahead: stages.slice(from).map((each) => ({
      ...each,
      parts: of.bill
        .filter((line) => line.stage === each.stage)
        .map(({ part, each: count }) => ({ part, pieces: count, unitCost: costs.get(part) ?? null })),
    })),
    hourlyRate: question.hourlyRate,
    secondPrice: of.secondPrice,
    saved: known(saved ?? 0),
  });
}
