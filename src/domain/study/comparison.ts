import type { SpeciesId, StageId } from '../log/ids.ts';
import type { Count } from '../statistics/counts.ts';
import { type TwoProportions, twoProportions } from '../statistics/two-proportions.ts';
import { type StageTrials, trialsOf } from './stage-trials.ts';
import type { TapCount } from './tap-counts.ts';
import { tapCounts } from './tap-counts.ts';
import type { TapFilter } from './tap-filter.ts';
import type { TapTable } from './tap-table.ts';

/** Two lots of pieces to be held against each other: two periods, persons, batches, or before and after a moment. */
export interface Comparison {
  readonly a: TapFilter;
  readonly b: TapFilter;
}

/** A share of both lots; `of.difference` is a minus b. */
export interface ComparedShare {
  readonly a: Count;
  readonly b: Count;
  readonly of: TwoProportions;
}

/** What both lots come to somewhere. Fractions of pieces. */
export interface ComparedCell {
  /** null where it is of all stages, or of all woods. */
  readonly stage: StageId | null;
  readonly species: SpeciesId | null;
  /** First visits that ended in a pass, of those that ended. */
  readonly clean: ComparedShare;
  /** Pieces that were kept, as firsts or seconds, of those that the stage has decided on. */
  readonly kept: ComparedShare;
  /** Pieces that stayed firsts, of those that came as firsts and were decided on. */
  readonly firsts: ComparedShare;
}

/**
 * Holds two lots of visits against each other: all of them, by stage, by wood, and by stage × wood, where either lot has a
 * piece. Intervals are for the difference, at `level` (0.9 when left out).
 *
 * All stages or woods together compare like with like only where both lots have the same share of each: whoever made
 * more of a difficult wood looks worse there, and does not in the cells of each wood. Over all stages a piece counts once
 * with each stage that has judged it, so that its visits are not independent; such an interval is too narrow where
 * pieces that fail once fail more often. A lot that overlaps the other is counted in both.
 *
 * @throws {RangeError} for a level that is not between 0 and 1
 */
export function compare(
  table: TapTable,
  { a, b, level = 0.9 }: Comparison & { readonly level?: number | undefined },
): readonly ComparedCell[] {
  const lots = [lotOf(table, a), lotOf(table, b)] as const;
  const stages = [...new Set(lots.flatMap((lot) => [...lot.stages]))].sort();
  const woods = [...new Set(lots.flatMap((lot) => [...lot.woods]))].sort();
  const cellAt = (stage: StageId | null, species: SpeciesId | null): ComparedCell => {
    const [ofA, ofB] = [lots[0].at(stage, species), lots[1].at(stage, species)];
    const share = (count: (trials: StageTrials) => Count) =>
      shareOf({ a: sum(ofA, count), b: sum(ofB, count), level });
    return {
      ...{ stage, species },
      clean: share(({ firstPass }) => ({ k: firstPass.out, n: firstPass.of })),
      kept: share(({ finished }) => ({ k: finished.atRisk - finished.lost, n: finished.atRisk })),
      firsts: share(({ firsts }) => ({ k: firsts.atRisk - firsts.lost, n: firsts.atRisk })),
    };
  };
  return [
    cellAt(null, null),
    ...stages.map((stage) => cellAt(stage, null)),
    ...woods.map((species) => cellAt(null, species)),
    ...stages.flatMap((stage) => woods.map((species) => cellAt(stage, species))),
  ].filter(({ clean, kept, firsts }) => [clean, kept, firsts].some((each) => each.a.n + each.b.n > 0));
}

function lotOf(table: TapTable, filter: TapFilter) {
  const byWood = new Map<SpeciesId, TapCount[]>();
  const stages = new Set<StageId>();
  for (const count of tapCounts(table, filter)) {
    if (count.what.kind !== 'visit' || !count.of) continue;
    stages.add(count.what.stage);
    for (const trial of count.what.trials) stages.add(trial.stage);
    const ofWood = byWood.get(count.of.species) ?? [];
    byWood.set(count.of.species, ofWood);
    ofWood.push(count);
  }
  const trials = new Map([...byWood].map(([species, counts]) => [species, trialsOf(counts, [...stages])]));
  return {
    stages,
    woods: new Set(byWood.keys()),
    at: (stage: StageId | null, species: SpeciesId | null): readonly StageTrials[] =>
      (species === null ? [...trials.values()].flat() : (trials.get(species) ?? [])).filter(
        (each) => stage === null || each.stage === stage,
      ),
  };
}

function sum(trials: readonly StageTrials[], count: (trials: StageTrials) => Count): Count {
  return trials.map(count).reduce((all, { k, n }) => ({ k: all.k + k, n: all.n + n }), { k: 0, n: 0 });
}

function shareOf({ a, b, level }: { a: Count; b: Count; level: number }): ComparedShare {
  return { a, b, of: twoProportions(a, b, level) };
}
