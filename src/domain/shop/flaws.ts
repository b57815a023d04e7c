import type { OutcomeKind } from '../log/event.ts';
import type { PersonId, ReasonId, TrayId } from '../log/ids.ts';
import { addTo, type Counter } from './counter.ts';
import type { StageSpecies } from './ledger.ts';
import type { Projection } from './projection.ts';

/**
 * Flawed pieces. A piece with two reasons counts once under each of them in `byReason`, and once in
 * `byOutcome`; so reasons may add up to more than the flawed pieces.
 */
export interface Flaws {
  readonly byReason: Counter<`${StageSpecies}|${ReasonId}|${OutcomeKind}`>;
  readonly byOutcome: Counter<`${StageSpecies}|${OutcomeKind}`>;
  readonly byTray: Counter<`${TrayId}|${ReasonId}`>;
  readonly byPerson: Counter<`${PersonId | ''}|${StageSpecies}|${ReasonId}`>;
}

export const flaws: Projection<Flaws> = {
  empty: () => ({ byReason: new Map(), byOutcome: new Map(), byTray: new Map(), byPerson: new Map() }),
  add(state, { event, times }) {
    if (event.kind !== 'flawed') return;
    const at: StageSpecies = `${event.stage}|${event.of.species}`;
    const by = times * event.pieces;
    addTo(state.byOutcome, { key: `${at}|${event.outcome.kind}`, by });
    for (const reason of new Set(event.reasons)) {
      addTo(state.byReason, { key: `${at}|${reason}|${event.outcome.kind}`, by });
      addTo(state.byTray, { key: `${event.of.tray}|${reason}`, by });
      addTo(state.byPerson, { key: `${event.person ?? ''}|${at}|${reason}`, by });
    }
  },
};
