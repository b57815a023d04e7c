import { type Bounds, readWholeNumber, type WholeNumber } from '../../domain/command/whole-number.ts';
import type { ReasonId, RouteId, StageId } from '../../domain/log/ids.ts';
import { longestCure, type StageDoing, type StageFact, type StageKind } from '../../domain/set-up/facts.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { factsOf, type Registers } from '../../domain/shop/registers.ts';
import { numberProblemWords } from '../../words/problem-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { nameProblem, noteProblem, type Reading, readingOf } from '../parts/form/reading.ts';
import { type HoldDraft, holdDraftOf, readHold } from './hold-draft.ts';
import { readHours } from './typed-hours.ts';

/** Where a stage goes on a route: nowhere, at its start, or after another stage. */
export type Placing =
  | { readonly kind: 'nowhere' }
  | { readonly kind: 'start'; readonly route: RouteId }
  | { readonly kind: 'after'; readonly route: RouteId; readonly stage: StageId };

/** A stage as it is typed; numbers are texts until they are saved. */
export interface StageDraft extends HoldDraft {
  readonly name: string;
  readonly kind: StageKind;
  readonly hours: string;
  readonly minutes: string;
  readonly capacity: string;
  readonly bulk: boolean;
  readonly reasons: readonly ReasonId[];
  readonly caution: string;
  /** null while nobody has said. */
  readonly does: readonly StageDoing[] | null;
  /** Asked for while the stage is on no route. */
  readonly placing: Placing;
}

export const mostFlawButtons = 6;
const usualCureMinutes = 24 * 60;
const capacityBounds: Bounds = { least: 1, most: 9999 };
const cureBounds: Bounds = { least: 1, most: longestCure };
const minuteBounds: Bounds = { least: 0, most: cureBounds.most };

export function stageDraftOf(stage: StageFact | undefined, placing: Placing): StageDraft {
  const hold = stage?.kind === 'hold' ? stage : undefined;
  const cure = hold?.cureMinutes ?? usualCureMinutes;
  return {
    name: stage?.name ?? '',
    kind: stage?.kind ?? 'bench',
    hours: String(Math.floor(cure / 60)),
    minutes: String(cure % 60),
    capacity: hold?.capacity == null ? '' : String(hold.capacity),
    bulk: stage?.bulk ?? false,
    reasons: stage?.reasons ?? [],
    caution: stage?.caution ?? '',
    does: stage?.does ?? null,
    placing,
    ...holdDraftOf(hold),
  };
}

/** Where a new stage goes until the maker says otherwise: at the end of the first route. */
export function usualPlacing(registers: Registers): Placing {
  const [first] = factsOf(registers, 'route');
  if (!first) return { kind: 'nowhere' };
  const last = first.fact.stages.at(-1);
  return last ? { kind: 'after', route: first.id, stage: last } : { kind: 'start', route: first.id };
}

/**
 * Reads a stage; `curing` is how many pieces cure there now, which a stage that is no hold could not show. Fields of
 * a cure count only while the stage is a hold.
 */
export function readStage(draft: StageDraft, { curing }: { curing: number }): Reading<StageFact, StageDraft> {
  const { kind, bulk } = draft;
  const common = {
    name: tidyText(draft.name),
    reasons: [...draft.reasons],
    bulk,
    caution: tidyText(draft.caution),
    retired: false,
    ...(draft.does && { does: [...draft.does] }),
  };
  const shared = { name: nameProblem(draft.name), caution: noteProblem(draft.caution) };
  if (kind !== 'hold') {
    const stillCure = curing === 0 ? undefined : words.stillCure(curing);
    return readingOf({ ...shared, kind: stillCure }, () => ({ kind, ...common }));
  }
  const cure = readCure(draft);
  const capacity = readCapacity(draft.capacity);
  const extras = readHold(draft, { cureMinutes: cure.minutes });
  const problems = { ...shared, ...cure.problems, capacity: capacity.problem, ...extras.problems };
  return readingOf(problems, () => ({
    kind,
    ...common,
    cureMinutes: cure.minutes,
    capacity: capacity.value,
    ...extras.value,
  }));
}

interface Cure {
  readonly minutes: number;
  readonly problems: { readonly hours?: string | undefined; readonly minutes?: string | undefined };
}

/** Whole minutes of a typed cure; an empty part of it is nought. */
function readCure({ hours, minutes }: Pick<StageDraft, 'hours' | 'minutes'>): Cure {
  const typedHours = readHours(hours);
  const typedMinutes = readWholeNumber(minutes.trim() || '0', minuteBounds);
  if (typedHours === null) return { minutes: 0, problems: { hours: words.badHours } };
  if (!typedMinutes.ok) return { minutes: 0, problems: { minutes: words.badMinutes } };
  const sum = Math.round(typedHours * 60) + typedMinutes.value;
  const fits = sum >= cureBounds.least && sum <= cureBounds.most;
  return { minutes: sum, problems: fits ? {} : { hours: words.badCure } };
}

/** Places of clamps or rack; an empty field is no limit. */
function readCapacity(typed: string): { readonly value: number | null; readonly problem?: string } {
  if (typed.trim() === '') return { value: null };
  const read: WholeNumber = readWholeNumber(typed, capacityBounds);
  return read.ok ? { value: read.value } : { value: null, problem: numberProblemWords(read.problem) };
}

/** The stages of a route with a further one placed among them. */
export function withStage(
  stages: readonly StageId[],
  { stage, placing }: { stage: StageId; placing: Exclude<Placing, { kind: 'nowhere' }> },
): readonly StageId[] {
  const others = stages.filter((each) => each !== stage);
  const at = placing.kind === 'start' ? 0 : others.indexOf(placing.stage) + 1;
  return others.toSpliced(at === 0 && placing.kind === 'after' ? others.length : at, 0, stage);
}
