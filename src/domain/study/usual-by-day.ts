import type { ShopDay, SpeciesId, StageId } from '../log/ids.ts';
import type { StageGaps } from './stage-gaps.ts';
import type { TapTable } from './tap-table.ts';

/** Mean minutes of a piece at a stage, of work or of loading; undefined while that is not known. */
export type UsualMinutes = (stage: StageId, species: SpeciesId, of: StageGaps['of']) => number | undefined;

/**
 * Minutes that the pieces of each shop day usually take: what was done, and not how long it took. Held against the hours
 * of those days it says how much of them ends up in pieces. Days in order.
 */
export function usualByDay(table: TapTable, usual: UsualMinutes): ReadonlyMap<ShopDay, number> {
  const { kind, tray, day } = table.columns;
  const sums = new Map<ShopDay, number>();
  for (let row = 0; row < table.length; row += 1) {
    const what = table.kinds[kind[row] ?? -1];
    const of = table.trays[tray[row] ?? -1];
    const on = table.days[day[row] ?? -1];
    if (!what?.pieces || !of || on === undefined) continue;
    const each = usual(what.stage, of.species, what.kind === 'loaded' ? 'loading' : 'work') ?? 0;
    sums.set(on, (sums.get(on) ?? 0) + what.pieces * each);
  }
  return new Map([...sums].sort(([a], [b]) => (a < b ? -1 : 1)));
}
