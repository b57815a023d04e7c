import type { BatchId, SpeciesId, StageId, VariantId } from '../log/ids.ts';
import type { Interval } from '../statistics/counts.ts';
import { empiricalBayes } from '../statistics/empirical-bayes.ts';
import { productLimit } from '../statistics/product-limit.ts';
import { survivalPosterior } from '../statistics/survival-posterior.ts';
import { type RolledYield, rolledYield } from './rolled-yield.ts';
import { type StageTrials, trialsOf } from './stage-trials.ts';
import { type StudyRoutes, stagesOf } from './study-routes.ts';
import { type TapCount, tapCounts } from './tap-counts.ts';
import type { TapFilter } from './tap-filter.ts';
import type { TapTable } from './tap-table.ts';

export interface SurvivalQuestion {
  readonly routes: StudyRoutes;
  readonly filter?: TapFilter | undefined;
  /** Of all intervals; 0.9 when left out. */
  readonly level?: number | undefined;
}

/** The share of pieces that come through the route. All shares are fractions. */
export interface RouteSurvival {
  /** Product-limit estimate to the end of the route; undefined until a piece has been tried by its last stage. */
  readonly raw: number | undefined;
  readonly rawInterval: Interval | undefined;
  /** How far `so` has come: up to the last stage before one that nothing has tried; undefined before the first. */
  readonly soFar:
    | { readonly stage: StageId; readonly survival: number; readonly interval: Interval | undefined }
    | undefined;
  /** What the other groups and this one together say of this one: never unknown. */
  readonly pooled: number;
  readonly pooledInterval: Interval;
  /** As many pieces of the whole route would tell as much as what was seen of this group alone. */
  readonly worth: { readonly k: number; readonly n: number };
}

/** How the pieces of one wood, or of one variant, fare. */
export interface GroupSurvival<Group extends SpeciesId | VariantId> {
  readonly group: Group;
  /** Along the route. */
  readonly stages: readonly StageTrials[];
  /** Survival to finished, as a first or as a second. */
  readonly finished: RouteSurvival;
  /** Survival to a first: a piece that is lowered to a second is lost. */
  readonly firsts: RouteSurvival;
  readonly rolled: RolledYield;
}

/**
 * Survival of each wood along its route, by name of the wood. Pieces in flight count for what they have survived; each
 * stage tries a piece once (see `Trial`), so that what was sent back is neither lost nor counted twice.
 *
 * The period of a filter is that in which pieces were judged: the survival is then that of a piece which would meet each
 * stage as it was in that period.
 *
 * @throws {RangeError} for a level that is not between 0 and 1
 */
export function survivalBySpecies(
  table: TapTable,
  question: SurvivalQuestion,
): readonly GroupSurvival<SpeciesId>[] {
  return survivalBy(table, { ...question, groupOf: ({ species }) => species });
}

/** The same for each variant. */
export function survivalByVariant(
  table: TapTable,
  question: SurvivalQuestion,
): readonly GroupSurvival<VariantId>[] {
  return survivalBy(table, { ...question, groupOf: ({ variant }) => variant });
}

interface Grouped<Group> extends SurvivalQuestion {
  readonly groupOf: (of: NonNullable<TapCount['of']>) => Group;
}

function survivalBy<Group extends SpeciesId | VariantId>(
  table: TapTable,
  { routes, filter, level = 0.9, groupOf }: Grouped<Group>,
): readonly GroupSurvival<Group>[] {
  const byGroup = new Map<Group, { counts: TapCount[]; batches: Set<BatchId> }>();
  for (const count of tapCounts(table, filter)) {
    if (!count.of || count.what.kind !== 'visit') continue;
    const group = groupOf(count.of);
    const known = byGroup.get(group) ?? { counts: [], batches: new Set() };
    byGroup.set(group, known);
    known.counts.push(count);
    known.batches.add(count.of.batch);
  }
  const groups = [...byGroup]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([group, { counts, batches }]) => ({ group, stages: trialsOf(counts, stagesOf(routes, batches)) }));
  const finished = pooledSurvival(groups, { level, to: 'finished' });
  const firsts = pooledSurvival(groups, { level, to: 'firsts' });
  return groups.flatMap(({ group, stages }, at) => {
    const [toFinished, toFirsts] = [finished[at], firsts[at]];
    return toFinished && toFirsts
      ? [{ group, stages, finished: toFinished, firsts: toFirsts, rolled: rolledYield(stages) }]
      : [];
  });
}

function pooledSurvival(
  groups: readonly { readonly stages: readonly StageTrials[] }[],
  { level, to }: { readonly level: number; readonly to: 'finished' | 'firsts' },
): readonly RouteSurvival[] {
  const worths = groups.map(
    ({ stages }) =>
      survivalPosterior(
        stages.map((each) => each[to]),
        level,
      ).worth,
  );
  const pooled = empiricalBayes(worths, level);
  return groups.map(({ stages }, at) => {
    const steps = productLimit(
      stages.map((each) => each[to]),
      level,
    );
    const last = steps.at(-1);
    const known = steps.findLastIndex(({ survival }) => survival !== undefined);
    const [so, stage] = [steps[known], stages[known]?.stage];
    const { mean = 0, interval = [0, 1] as const } = pooled.groups[at] ?? {};
    return {
      raw: last?.survival,
      rawInterval: last?.interval,
      soFar:
        so?.survival === undefined || stage === undefined
          ? undefined
          : { stage, survival: so.survival, interval: so.interval },
      pooled: mean,
      pooledInterval: interval,
      worth: worths[at] ?? { k: 0, n: 0 },
    };
  });
}
