import type { StartCosts } from '../../domain/plan/starts/cheapest-start.ts';
import { mostWanted } from '../../domain/plan/starts/most-wanted.ts';
import type { StartAnswer } from '../../domain/plan/starts/start-study.ts';
import { type BatchTargets, flyingOf, type VariantTarget } from '../../domain/rollup/batch-targets.ts';
import { startsWords as words } from '../../words/starts-words.ts';
import { readPrice } from '../parts/money.ts';
import { counted, type Goal, keyOf } from './plan-question.ts';

/** A variant with what was answered of it, for one line of the table. */
export interface StartRow {
  readonly target: VariantTarget;
  readonly key: string;
  readonly good: number;
  readonly flying: number;
  readonly answer: StartAnswer | undefined;
  /** What stands in the place of a number; undefined where there is one. */
  readonly instead: string | undefined;
  /** Pieces to start now; undefined where that is not known. */
  readonly start: number | undefined;
}

export function startRows(
  batch: BatchTargets,
  { goal, answers }: { readonly goal: Goal; readonly answers: readonly StartAnswer[] },
): readonly StartRow[] {
  return batch.variants.map((target) => {
    const key = keyOf(batch, target);
    const answer = answers.find((each) => each.key === key);
    const good = counted(target.finished, goal);
    const instead = insteadOf({ batch, target, good, answer });
    const start = answer?.smallest.kind === 'starts' && !instead ? answer.smallest.point.starts : undefined;
    return { target, key, good, flying: counted(flyingOf(target), goal), answer, instead, start };
  });
}

function insteadOf({
  batch,
  target,
  good,
  answer,
}: {
  readonly batch: BatchTargets;
  readonly target: VariantTarget;
  readonly good: number;
  readonly answer: StartAnswer | undefined;
}): string | undefined {
  if (target.wanted === 0) return words.noneWanted;
  if (good >= target.wanted) return words.done;
  if (target.wanted > mostWanted) return words.tooMany(mostWanted);
  if (target.species === undefined) return words.noWood;
  if (batch.route.length === 0) return words.noRoute;
  if (!answer) return words.counting;
  if (answer.smallest.kind !== 'starts') return words.outOfReach;
  return answer.smallest.point.starts === 0 ? words.enough : undefined;
}

/** The answer in a sentence. */
export function answerWords({ target, good, answer }: StartRow): string | undefined {
  const { wanted, inFlight, scrapped } = target;
  if (good >= wanted) return words.isDone(wanted);
  if (!answer) return undefined;
  const { smallest } = answer;
  if (smallest.kind === 'never-certain') return words.never;
  const { starts } = smallest.point;
  const chance = words.chance(smallest.point.chance);
  if (smallest.kind === 'out-of-reach') return words.beyond(starts, chance, wanted);
  if (starts === 0) return words.none({ wanted, chance });
  const isBegun = inFlight.length > 0 || good > 0 || scrapped > 0;
  return isBegun ? words.more(starts, { wanted, chance }) : words.first(starts, { wanted, chance });
}

/** What is known of the stages: whether nothing at all is, or at which stages nothing is. */
export function guessIn({ beliefs }: StartAnswer): 'all' | readonly StartAnswer['beliefs'][number][] {
  const guessed = beliefs.filter(({ from }) => from === 'prior');
  return guessed.length === beliefs.length ? 'all' : guessed;
}

/** Costs as they are typed. */
export interface CostsDraft {
  readonly perStart: string;
  readonly perShort: string;
  readonly perOver: string;
}
export const noCosts: CostsDraft = { perStart: '', perShort: '', perOver: '' };

export const costProblem = (typed: string): string | undefined =>
  readPrice(typed) === undefined ? words.badCost : undefined;

/** Costs to reckon with, in minor units; null while one short or one over is not said, or one is no number. */
export function costsOf({ perStart, perShort, perOver }: CostsDraft): StartCosts | null {
  const [start, short, over] = [perStart, perShort, perOver].map(readPrice);
  if (start === undefined || short == null || over == null) return null;
  return { perStart: start ?? 0, perShort: short, perOver: over };
}
