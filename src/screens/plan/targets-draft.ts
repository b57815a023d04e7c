import { readDay } from '../../domain/command/calendar-day.ts';
import { readWholeNumber } from '../../domain/command/whole-number.ts';
import type { VariantId } from '../../domain/log/ids.ts';
import { chanceBounds, goodBounds } from '../../domain/plan/targets/target-bounds.ts';
import type { BatchFact } from '../../domain/set-up/batch-facts.ts';
import { type Entry, factsOf, type Registers } from '../../domain/shop/registers.ts';
import { batchChanceWords } from '../../words/people-words.ts';
import { numberProblemWords } from '../../words/problem-words.ts';
import { setUpWords } from '../../words/set-up-words.ts';
import { type Reading, readingOf } from '../parts/form/reading.ts';

/** The targets of a batch as they are typed. */
export interface TargetsDraft {
  readonly due: string;
  readonly chance: string;
  readonly wanted: ReadonlyMap<VariantId, string>;
}

export function targetsDraftOf({ due, chance, wanted }: BatchFact): TargetsDraft {
  return {
    due: due ?? '',
    chance: chance === undefined ? '' : String(chance),
    wanted: new Map(wanted.map(({ variant, good }) => [variant, String(good)])),
  };
}

/** Variants in use, and those put away of which the batch wants some. */
export function variantsOffered(registers: Registers, { wanted }: TargetsDraft): readonly Entry<'variant'>[] {
  return factsOf(registers, 'variant').filter(({ id, fact }) => !fact.retired || wanted.has(id));
}

const readGood = (typed: string) => readWholeNumber(typed.trim() || '0', goodBounds);

/** What is wrong with the number typed for a variant, or nothing; an empty field wants none. */
export function goodProblem(typed: string): string | undefined {
  const read = readGood(typed);
  return read.ok ? undefined : numberProblemWords(read.problem);
}

type Targets = Pick<BatchFact, 'wanted' | 'due' | 'chance'>;

export function readTargets(draft: TargetsDraft): Reading<Targets, TargetsDraft> {
  const due = readDay(draft.due);
  const chance = draft.chance.trim() === '' ? null : readWholeNumber(draft.chance, chanceBounds);
  const problems = {
    due: due === undefined ? setUpWords.badDue : undefined,
    chance: chance?.ok === false ? batchChanceWords.badChance : undefined,
    wanted: [...draft.wanted.values()].map(goodProblem).find(Boolean),
  };
  return readingOf(problems, () => ({
    due: due ?? null,
    ...(chance?.ok && { chance: chance.value }),
    wanted: [...draft.wanted].flatMap(([variant, typed]) => {
      const read = readGood(typed);
      return read.ok && read.value > 0 ? [{ variant, good: read.value }] : [];
    }),
  }));
}

/** A batch with new targets: a chance that is said no more is the usual one again. */
export function withTargets({ chance: _before, ...batch }: BatchFact, targets: Targets): BatchFact {
  return { ...batch, ...targets };
}
