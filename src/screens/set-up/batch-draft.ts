import { readDay } from '../../domain/command/calendar-day.ts';
import { readWholeNumber } from '../../domain/command/whole-number.ts';
import type { BatchId, RouteId, StageId, VariantId } from '../../domain/log/ids.ts';
import { chanceBounds, goodBounds } from '../../domain/plan/targets/target-bounds.ts';
import type { BatchFact } from '../../domain/set-up/batch-facts.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { type Entry, factOf, factsOf, type Registers } from '../../domain/shop/registers.ts';
import type { Shop } from '../../domain/shop/shop.ts';
import { nameOf } from '../../words/names.ts';
import { batchChanceWords } from '../../words/people-words.ts';
import { numberProblemWords } from '../../words/problem-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';

import { nameProblem, type Reading, readingOf } from '../parts/form/reading.ts';
import { piecesOfBatch } from './set-up-view.ts';

/** A batch as it is typed; the day and the numbers are texts until they are saved. */
export interface BatchDraft {
  readonly name: string;
  readonly route: RouteId | undefined;
  readonly due: string;
  /** Whole per cent; empty for the usual one. */
  readonly chance: string;
  readonly wanted: ReadonlyMap<VariantId, string>;
}

export function batchDraftOf(batch: BatchFact | undefined, registers: Registers): BatchDraft {
  return {
    name: batch?.name ?? '',
    route: batch?.route ?? factsOf(registers, 'route')[0]?.id,
    due: batch?.due ?? '',
    chance: batch?.chance === undefined ? '' : String(batch.chance),
    wanted: new Map(batch?.wanted.map(({ variant, good }) => [variant, String(good)])),
  };
}

/** The variants that a batch can want: those in use, and those put away of which it wants some already. */
export function variantsToWant(registers: Registers, { wanted }: BatchDraft): readonly Entry<'variant'>[] {
  return factsOf(registers, 'variant').filter(({ id, fact }) => !fact.retired || wanted.has(id));
}

/** What is wrong with the number typed for a variant, or nothing; an empty field wants none. */
export function wantedProblem(typed: string): string | undefined {
  const read = readWanted(typed);
  return read.ok ? undefined : numberProblemWords(read.problem);
}

function readWanted(typed: string) {
  return readWholeNumber(typed.trim() || '0', goodBounds);
}

export function readBatch(
  shop: Shop,
  { id, draft }: { id: BatchId; draft: BatchDraft },
): Reading<Omit<BatchFact, 'retired' | 'plan'>, BatchDraft> {
  const { route } = draft;
  const wanted = [...draft.wanted].map(([variant, typed]) => ({ variant, read: readWanted(typed) }));
  const due = readDay(draft.due);
  const chance = draft.chance.trim() === '' ? null : readWholeNumber(draft.chance, chanceBounds);
  const problems = {
    name: nameProblem(draft.name),
    route: route ? routeProblem(shop, { id, route }) : words.chooseRoute,
    due: due === undefined ? words.badDue : undefined,
    chance: chance?.ok === false ? batchChanceWords.badChance : undefined,
    wanted: [...draft.wanted.values()].map(wantedProblem).find(Boolean),
  };
  if (!route) return { ok: false, problems };
  return readingOf(problems, () => ({
    name: tidyText(draft.name),
    route,
    wanted: wanted.flatMap(({ variant, read }) =>
      read.ok && read.value > 0 ? [{ variant, good: read.value }] : [],
    ),
    due: due ?? null,
    ...(chance?.ok && { chance: chance.value }),
  }));
}

/** Pieces of the batch must not be left at stages that its next route does not have. */
function routeProblem(shop: Shop, { id, route }: { id: BatchId; route: RouteId }): string | undefined {
  const now = factOf(shop.registers, { register: 'batch', id });
  if (!now || now.route === route) return undefined;
  const stages = factOf(shop.registers, { register: 'route', id: route })?.stages ?? [];
  const left = [...piecesOfBatch(shop, id)].filter(
    ([stage, pieces]) => pieces !== 0 && !stages.includes(stage),
  );
  if (left.length === 0) return undefined;
  const stageName = (stage: StageId) => nameOf(shop.registers, { register: 'stage', id: stage });
  return words.batchOffRoute(left.map(([stage]) => stageName(stage)).join(', '));
}

/** Pieces of a batch that are in work, over all stages. */
export function inWork(shop: Shop, id: BatchId): number {
  return [...piecesOfBatch(shop, id).values()].reduce((sum, pieces) => sum + Math.abs(pieces), 0);
}
