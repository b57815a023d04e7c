import type { OutcomeKind } from '../log/event.ts';
import type { PartId, ReasonId, ShopDay, SpeciesId, StageId } from '../log/ids.ts';
import type { Grade } from '../log/place.ts';
import type { Verdict } from '../log/stores-facts.ts';
import { addTo, type Counter } from './counter.ts';
import type { Projection } from './projection.ts';

/**
 * A pause longer than this (15 min in ms) between two taps is a break and not work. Common practice, no
 * source: no stage of a handle keeps a hand from the tablet so long.
 */
export const longestStretch = 15 * 60_000;

/** What was done on one shop day, or on several. */
export interface DaySheet {
  readonly passed: Counter<StageId>;
  readonly flawed: Counter<`${StageId}|${SpeciesId}|${ReasonId}|${OutcomeKind}`>;
  readonly outcomes: Counter<`${StageId}|${OutcomeKind}`>;
  readonly finished: Counter<Grade>;
  readonly made: Counter<SpeciesId>;
  /** Milliseconds of work inside spells. */
  readonly worked: Counter<StageId>;
  /** Deliveries of which a sample was checked. */
  readonly sampled: Counter<`${PartId}|${Verdict}`>;
  /** Taps that were made while the tablet's clock was in doubt: they may belong to another day. */
  readonly doubtful: Counter<'taps'>;
}

export type Days = Map<ShopDay, DaySheet>;

export const days: Projection<Days> = {
  empty: () => new Map(),
  add(state, { event, times }) {
    const known = state.get(event.day);
    const sheet = known ?? blankSheet();
    enter(sheet, { event, times });
    if (isBlank(sheet)) state.delete(event.day);
    else if (!known) state.set(event.day, sheet);
  },
};

/** What was done on all days together: what an average day is need not be asked of every day of ten years. */
export const allDays: Projection<DaySheet> = { empty: blankSheet, add: enter };

function enter(sheet: DaySheet, { event, times }: Parameters<Projection<DaySheet>['add']>[1]): void {
  if ('elapsed' in event && event.elapsed !== null && event.elapsed <= longestStretch) {
    addTo(sheet.worked, { key: event.stage, by: times * event.elapsed });
  }
  if (event.clock === 'doubtful' && 'of' in event) addTo(sheet.doubtful, { key: 'taps', by: times });
  if (event.kind === 'parts-sampled')
    addTo(sheet.sampled, { key: `${event.part}|${event.verdict}`, by: times });
  if (event.kind === 'passed') addTo(sheet.passed, { key: event.stage, by: times * event.pieces });
  if (event.kind === 'tray-made') {
    for (const { pieces } of event.moves) addTo(sheet.made, { key: event.of.species, by: times * pieces });
  }
  if (event.kind === 'flawed') {
    const by = times * event.pieces;
    addTo(sheet.outcomes, { key: `${event.stage}|${event.outcome.kind}`, by });
    for (const reason of new Set(event.reasons)) {
      addTo(sheet.flawed, { key: `${event.stage}|${event.of.species}|${reason}|${event.outcome.kind}`, by });
    }
  }
  if (event.kind === 'passed' || event.kind === 'flawed') {
    for (const { to, pieces } of event.moves) {
      if (to?.at === 'finished') addTo(sheet.finished, { key: to.grade, by: times * pieces });
    }
  }
}

/** Whether nothing was done. */
export function isBlank(sheet: DaySheet): boolean {
  for (const name in sheet) if (sheet[name as keyof DaySheet].size > 0) return false;
  return true;
}

export function blankSheet(): DaySheet {
  return {
    passed: new Map(),
    flawed: new Map(),
    outcomes: new Map(),
    finished: new Map(),
    made: new Map(),
    worked: new Map(),
    sampled: new Map(),
    doubtful: new Map(),
  };
}
