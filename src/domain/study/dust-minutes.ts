import type { PersonId, ShopDay, SpeciesId, StageId } from '../log/ids.ts';
import { longestStretch } from '../shop/days.ts';
import { tapFilter } from './tap-filter.ts';
import type { TapTable } from './tap-table.ts';

export interface DustQuestion {
  /** The stages that make wood dust. */
  readonly stages: readonly StageId[];
  /** Taps of one person, null for those of nobody in particular; left out for everyone's. */
  readonly person?: PersonId | null | undefined;
}

/** Minutes of work at dust-making stages on one wood, on one shop day. */
export interface DustMinutes {
  readonly day: ShopDay;
  readonly species: SpeciesId;
  readonly minutes: number;
}

/**
 * Minutes of dust-making work by shop day and wood, in their order: the time between taps inside spells, breaks left out as on
 * the day's sheet. What is left of a spell after its last tap was work on the wood of that tap. It says how long somebody
 * stood there, not how much dust there was.
 */
export function dustMinutes(table: TapTable, { stages, person }: DustQuestion): readonly DustMinutes[] {
  const { kind, tray, day, station, elapsed } = table.columns;
  const isWanted = tapFilter(table, person === undefined ? {} : { person });
  const makesDust = table.kinds.map(({ stage }) => stages.includes(stage));
  const lastTray = new Int32Array(table.stations.length).fill(-1);
  const sums = new Map<string, number>();
  for (let row = 0; row < table.length; row += 1) {
    const at = station[row] ?? 0;
    const own = tray[row] ?? -1;
    const of = table.trays[own >= 0 ? own : (lastTray[at] ?? -1)];
    lastTray[at] = own;
    const ms = elapsed[row] ?? -1;
    const on = table.days[day[row] ?? -1];
    if (!makesDust[kind[row] ?? -1] || ms <= 0 || ms > longestStretch || !isWanted(row)) continue;
    if (!of || on === undefined) continue;
    const key = `${on}|${of.species}`;
    sums.set(key, (sums.get(key) ?? 0) + ms);
  }
  return [...sums]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, ms]) => {
      const [on, species] = key.split('|') as [ShopDay, SpeciesId];
      return { day: on, species, minutes: ms / 60_000 };
    });
}
