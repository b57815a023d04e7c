import type { SpeciesId, StageId } from '../../log/ids.ts';
import type { StudyRoutes } from '../../study/study-routes.ts';
import { type GroupSurvival, survivalBySpecies } from '../../study/survival.ts';
import type { TapTable } from '../../study/tap-table.ts';
import { type CheapestStart, cheapestStart, type StartCosts } from './cheapest-start.ts';
import { goodByStarts, type StageAhead, type StartsPoint, type StartsQuestion } from './good-by-starts.ts';
import { mostWanted } from './most-wanted.ts';
import { mostStarts, type SmallestStart, smallestStart } from './smallest-start.ts';
import { type StageBelief, stageBeliefs } from './stage-beliefs.ts';
import { startsCurve } from './starts-curve.ts';

/** What is asked of one variant of a batch. */
export interface StartAsked {
  /** Of any meaning: the answer has it too. */
  readonly key: string;
  readonly species: SpeciesId;
  readonly route: readonly StageId[];
  readonly goal: 'firsts' | 'finished';
  /** At most `mostWanted`. */
  readonly wanted: number;
  /** Good ones that are finished, by the goal. */
  readonly finished: number;
  /** Pieces of the goal that a stage has yet to try, by stage; see `StageAhead`. */
  readonly standing: readonly { readonly stage: StageId; readonly pieces: number }[];
  /** A fraction. */
  readonly confidence: number;
  /** Also the curve; and the cheapest start where costs are given. */
  readonly whole: { readonly costs: StartCosts | null } | null;
}

/** What a stage's belief rests on. */
export interface BeliefBehind extends StageBelief {
  /** Pieces of this wood that stayed good ones, of those tried. */
  readonly through: number;
}

/** What is answered of one variant. */
export interface StartAnswer {
  readonly key: string;
  readonly smallest: SmallestStart;
  /** What comes of starting none further: of what is in flight alone. */
  readonly none: StartsPoint;
  readonly beliefs: readonly BeliefBehind[];
  /** null where it was not asked for. */
  readonly whole: { readonly curve: readonly StartsPoint[]; readonly cheapest: CheapestStart | null } | null;
}

/** Beyond so many starts nothing is looked at, but for targets that are nearly as large: those are looked at up to twice themselves. */
const mostLookedAt = 30_000;

export const lookedUpTo = (wanted: number): number =>
  Math.min(mostStarts(wanted), Math.max(mostLookedAt, 2 * wanted));

/**
 * Answers all questions on starts from the taps of a log, by `stageBeliefs` pooled across the woods.
 *
 * @throws {RangeError} for a confidence outside 0 to 1, counts that are not whole or too large, or costs that are no numbers
 */
export function studyStarts(
  table: TapTable,
  { routes, asked }: { readonly routes: StudyRoutes; readonly asked: readonly StartAsked[] },
): readonly StartAnswer[] {
  if (asked.length === 0) return [];
  const woods = survivalBySpecies(table, { routes });
  const known = new Map<string, ReturnType<typeof stageBeliefs>>();
  return asked.map((question) => {
    const { route, goal, species } = question;
    const name = `${goal}|${route.join('|')}`;
    const beliefs = known.get(name) ?? stageBeliefs(woods, { route, goal });
    known.set(name, beliefs);
    return answerOf(question, behind(beliefs(species), { woods, species, goal }));
  });
}

function answerOf(asked: StartAsked, beliefs: readonly BeliefBehind[]): StartAnswer {
  const { key, wanted, finished, confidence, whole } = asked;
  if (wanted > mostWanted) throw new RangeError(`More than ${mostWanted} good ones: ${wanted}`);
  const standing = new Map(asked.standing.map(({ stage, pieces }) => [stage, pieces]));
  const stages = beliefs.map(
    ({ stage, alpha, beta }): StageAhead => ({
      rate: { alpha, beta },
      standing: standing.get(stage) ?? 0,
    }),
  );
  const question: StartsQuestion = { wanted, finished, stages };
  const most = lookedUpTo(wanted);
  const smallest = smallestStart(question, { confidence, most });
  const none = goodByStarts(question)(0);
  return {
    ...{ key, smallest, none, beliefs },
    whole: whole && {
      curve: curveAround(question, smallest),
      cheapest: whole.costs && cheapestStart(question, whole.costs, { most }),
    },
  };
}

/** From none to half as many again as are to be started, so that both ends of the chance are seen. */
function curveAround(question: StartsQuestion, smallest: SmallestStart): readonly StartsPoint[] {
  const start = smallest.kind === 'never-certain' ? question.wanted : smallest.point.starts;
  return startsCurve(question, { from: 0, to: Math.max(10, Math.ceil(1.5 * start)), points: 120 });
}

interface Seen {
  readonly woods: readonly GroupSurvival<SpeciesId>[];
  readonly species: SpeciesId;
  readonly goal: 'firsts' | 'finished';
}

function behind(beliefs: readonly StageBelief[], { woods, species, goal }: Seen): readonly BeliefBehind[] {
  const trials = woods.find(({ group }) => group === species)?.stages ?? [];
  return beliefs.map((belief) => {
    const step = trials.find(({ stage }) => stage === belief.stage)?.[goal];
    return { ...belief, through: step ? step.atRisk - step.lost : 0 };
  });
}
