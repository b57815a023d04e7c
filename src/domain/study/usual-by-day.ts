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

/**
 * A tap that comes later than usual by more than this (ms) ends an absence or a wait, and its pieces count as usual. Common
 * practice, no source: nobody takes half an hour to change over.
 */
const longestPause = 30 * 60_000;

/** Minutes that hands were busy on each shop day: from tap to tap of a station, with what lies between two trays. */
export function busyByDay(table: TapTable, usual: UsualMinutes): ReadonlyMap<ShopDay, number> {
  const { kind, tray, day, station, wall } = table.columns;
  const sums = new Map<ShopDay, number>();
  const last = new Map<number, { readonly on: ShopDay; readonly at: number }>();
  for (let row = 0; row < table.length; row += 1) {
    const what = table.kinds[kind[row] ?? -1];
    const of = table.trays[tray[row] ?? -1];
    const on = table.days[day[row] ?? -1];
    if (!what?.pieces || !of || on === undefined) continue;
    const each = usual(what.stage, of.species, what.kind === 'loaded' ? 'loading' : 'work') ?? 0;
    const at = wall[row] ?? 0;
    const before = last.get(station[row] ?? -1);
    last.set(station[row] ?? -1, { on, at });
    const gap = before?.on === on ? at - before.at : Number.POSITIVE_INFINITY;
    const isWork = gap <= what.pieces * each * 60_000 + longestPause;
    sums.set(on, (sums.get(on) ?? 0) + (isWork ? gap / 60_000 : what.pieces * each));
  }
  return new Map([...sums].sort(([a], [b]) => (a < b ? -1 : 1)));
}
