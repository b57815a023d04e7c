import type { BatchId, ShopDay, SpeciesId, StageId, VariantId } from '../log/ids.ts';
import { atStage, type Grade } from '../log/place.ts';
import { routeOfBatch } from '../route/route.ts';
import { usualChance } from '../set-up/batch-facts.ts';
import { byName, factOf, factsOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';

export type ByGrade = Readonly<Record<Grade, number>>;

/** What is wanted of one variant of a batch, and what there is of it. All counts are pieces. */
export interface VariantTarget {
  readonly variant: VariantId;
  /** Undefined for a variant that the set-up does not know. */
  readonly species: SpeciesId | undefined;
  /** Good ones wanted; 0 of one that has pieces and is not asked for. */
  readonly wanted: number;
  readonly finished: ByGrade;
  readonly scrapped: number;
  /**
   * What has yet to be tried, by the stage that tries it next; what was sent back stands at the stage that sent it, since
   * that one has not done with it. Counts may be below zero where taps crossed.
   */
  readonly inFlight: readonly StageStanding[];
}

interface StageStanding {
  readonly stage: StageId;
  readonly pieces: ByGrade;
  /** Of both grades: sent back by the stage, and on their way to it again. */
  readonly sentBack: number;
}

/** A batch with its variants. */
export interface BatchTargets {
  readonly batch: BatchId;
  readonly name: string;
  readonly due: ShopDay | null;
  /** Whole per cent. */
  readonly chance: number;
  /** In order; empty where the batch has no route yet. */
  readonly route: readonly StageId[];
  readonly variants: readonly VariantTarget[];
}

/** The targets of every batch, of those put away only if asked for, the earliest due first; variants by name. */
export function batchTargets(
  shop: Shop,
  { retired = false }: { readonly retired?: boolean } = {},
): readonly BatchTargets[] {
  const { registers } = shop;
  const open = factsOf(registers, 'batch').filter(({ fact }) => retired || !fact.retired);
  const tallies = talliesOf(shop, new Set(open.map(({ id }) => id)));
  return open
    .map(({ id, fact }) => {
      const wanted = new Map(fact.wanted.map(({ variant, good }) => [variant, good]));
      const its = tallies.get(id) ?? new Map<VariantId, Tally>();
      const route = routeOfBatch(registers, id) ?? [];
      const variants = [...new Set([...wanted.keys(), ...its.keys()])].map((variant) =>
        targetOf({ variant, wanted: wanted.get(variant) ?? 0, tally: its.get(variant) ?? noTally(), route }),
      );
      return {
        ...{ batch: id, name: fact.name, due: fact.due, chance: fact.chance ?? usualChance, route },
        variants: inOrder(shop, variants),
      };
    })
    .sort((a, b) => ((a.due ?? '9999') < (b.due ?? '9999') ? -1 : a.due === b.due ? 0 : 1));
}

interface Tally {
  readonly finished: Record<Grade, number>;
  scrapped: number;
  readonly stages: Map<StageId, { readonly pieces: Record<Grade, number>; sentBack: number }>;
}

const noTally = (): Tally => ({ finished: { first: 0, second: 0 }, scrapped: 0, stages: new Map() });

/** Where the pieces of some batches are, by batch and variant. */
function talliesOf(
  { trays, positions: { working, settled } }: Shop,
  batches: ReadonlySet<BatchId>,
): ReadonlyMap<BatchId, Map<VariantId, Tally>> {
  const tallies = new Map<BatchId, Map<VariantId, Tally>>();
  for (const record of trays.values()) {
    if (!batches.has(record.batch)) continue;
    const its = tallies.get(record.batch) ?? new Map<VariantId, Tally>();
    tallies.set(record.batch, its);
    const tally = its.get(record.variant) ?? noTally();
    its.set(record.variant, tally);
    const places = working.get(record.tray) ?? settled.get(record.tray);
    for (const { place, pieces } of places?.values() ?? []) {
      if (place.at === 'scrapped') tally.scrapped += pieces;
      else if (place.at === 'finished') tally.finished[place.grade] += pieces;
      else if (atStage(place)) {
        const stage = place.redo ?? place.stage;
        const here = tally.stages.get(stage) ?? { pieces: { first: 0, second: 0 }, sentBack: 0 };
        tally.stages.set(stage, here);
        here.pieces[place.grade] += pieces;
        if (place.redo !== null) here.sentBack += pieces;
      }
    }
  }
  return tallies;
}

interface Counted {
  readonly variant: VariantId;
  readonly wanted: number;
  readonly tally: Tally;
  readonly route: readonly StageId[];
}

function targetOf({ variant, wanted, tally, route }: Counted): Omit<VariantTarget, 'species'> {
  const { finished, scrapped, stages } = tally;
  const onRoute = [...stages].sort(([a], [b]) => route.indexOf(a) - route.indexOf(b));
  return {
    ...{ variant, wanted, finished, scrapped },
    inFlight: onRoute
      .filter(([, { pieces }]) => pieces.first !== 0 || pieces.second !== 0)
      .map(([stage, { pieces, sentBack }]) => ({ stage, pieces, sentBack })),
  };
}

function inOrder(
  { registers }: Shop,
  variants: readonly Omit<VariantTarget, 'species'>[],
): readonly VariantTarget[] {
  return variants
    .map((target) => ({ target, fact: factOf(registers, { register: 'variant', id: target.variant }) }))
    .sort((a, b) => (a.fact && b.fact ? byName(a.fact, b.fact) : a.fact ? -1 : 1))
    .map(({ target, fact }) => ({ ...target, species: fact?.species }));
}

/** Pieces of a variant that are still on their way, by grade. */
export function flyingOf({ inFlight }: Pick<VariantTarget, 'inFlight'>): ByGrade {
  return inFlight.reduce(
    (sum, { pieces }) => ({ first: sum.first + pieces.first, second: sum.second + pieces.second }),
    { first: 0, second: 0 },
  );
}
