import { type Bounds, judgeWholeNumber, readWholeNumber } from '../../domain/command/whole-number.ts';
import type { ReasonId } from '../../domain/log/ids.ts';
import type { StageFact, StageKind } from '../../domain/set-up/facts.ts';
import { tidyText } from '../../domain/set-up/text.ts';

/** A stage as it is typed; numbers are texts until they are saved. */
export interface StageDraft {
  readonly name: string;
  readonly kind: StageKind;
  readonly reasons: readonly ReasonId[];
  readonly bulk: boolean;
  readonly caution: string;
  readonly cureHours: string;
  readonly capacity: string;
  readonly retired: boolean;
}

const usualCureHours = 24;
const minutesInHour = 60;
const cureBounds: Bounds = { least: 1, most: 90 * 24 * minutesInHour };
const capacityBounds: Bounds = { least: 1, most: 9999 };

export function draftOf(stage: StageFact | undefined): StageDraft {
  const hold = stage?.kind === 'hold' ? stage : undefined;
  return {
    name: stage?.name ?? '',
    kind: stage?.kind ?? 'bench',
    reasons: stage?.reasons ?? [],
    bulk: stage?.bulk ?? false,
    caution: stage?.caution ?? '',
    cureHours: String((hold?.cureMinutes ?? usualCureHours * minutesInHour) / minutesInHour),
    capacity: hold?.capacity == null ? '' : String(hold.capacity),
    retired: stage?.retired ?? false,
  };
}

/** Whole minutes of a typed number of hours, or null when it is none within bounds. */
export function readCure(typed: string): number | null {
  const hours = /^\s*\d+([.,]\d+)?\s*$/.test(typed) ? Number(typed.replace(',', '.')) : Number.NaN;
  const minutes = judgeWholeNumber(Math.round(hours * minutesInHour), cureBounds);
  return minutes.ok ? minutes.value : null;
}

/** The capacity that is typed: a number, none (null), or nothing that makes sense. */
export function readCapacity(
  typed: string,
):
  | { readonly ok: true; readonly value: number | null }
  | {
      readonly ok: false;
      readonly problem: Exclude<ReturnType<typeof readWholeNumber>, { ok: true }>['problem'];
    } {
  return typed.trim() === '' ? { ok: true, value: null } : readWholeNumber(typed, capacityBounds);
}

/** The fact that a draft amounts to; null while one of its numbers makes no sense. */
export function stageFactOf(draft: StageDraft): StageFact | null {
  const { kind, reasons, bulk, retired } = draft;
  const common = {
    name: tidyText(draft.name),
    reasons: [...reasons],
    bulk,
    caution: tidyText(draft.caution),
    retired,
  };
  if (kind !== 'hold') return { kind, ...common };
  const cureMinutes = readCure(draft.cureHours);
  const capacity = readCapacity(draft.capacity);
  return cureMinutes !== null && capacity.ok
    ? { kind, ...common, cureMinutes, capacity: capacity.value }
    : null;
}
