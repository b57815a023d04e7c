import type { PlanAsked, PlanQuestions } from '../../domain/plan/plan-study.ts';
import type { StartCosts } from '../../domain/plan/starts/cheapest-start.ts';
import { mostWanted } from '../../domain/plan/starts/most-wanted.ts';
import type { BatchTargets, ByGrade, VariantTarget } from '../../domain/rollup/batch-targets.ts';
import { factsOf, type Registers } from '../../domain/shop/registers.ts';
import { routesIn } from '../../domain/study/study-routes.ts';

/** What counts as a good one: a first alone, or a second too. */
export type Goal = 'firsts' | 'finished';

/** The name of a variant of a batch in questions and answers. */
export const keyOf = ({ batch }: BatchTargets, { variant }: VariantTarget): string => `${batch}/${variant}`;

/** Of two counts by grade, what counts towards a goal. */
export const counted = ({ first, second }: ByGrade, goal: Goal): number =>
  goal === 'firsts' ? first : first + second;

export interface Asking {
  readonly goal: Goal;
  /** The variant of which all is to be told, and what starts cost there. */
  readonly whole?: { readonly key: string; readonly costs: StartCosts | null } | undefined;
}

/** What the log is asked about batches; variants that want nothing or too many, or whose wood or route nobody has said, are left out. */
export function planQuestions(
  registers: Registers,
  { batches, goal, whole }: Asking & { readonly batches: readonly BatchTargets[] },
): PlanQuestions {
  return {
    routes: routesIn(registers),
    holds: factsOf(registers, 'stage').flatMap(({ id, fact }) => (fact.kind === 'hold' ? [id] : [])),
    starts: batches.flatMap((batch) =>
      batch.variants.flatMap((target): PlanAsked[] => {
        const { species, wanted, finished, inFlight } = target;
        if (species === undefined || wanted === 0 || wanted > mostWanted || batch.route.length === 0)
          return [];
        const key = keyOf(batch, target);
        return [
          {
            ...{ key, batch: batch.batch, species, goal, wanted, route: batch.route },
            finished: counted(finished, goal),
            standing: inFlight.map(({ stage, pieces }) => ({ stage, pieces: counted(pieces, goal) })),
            confidence: batch.chance / 100,
            whole: whole?.key === key ? { costs: whole.costs } : null,
          },
        ];
      }),
    ),
  };
}
