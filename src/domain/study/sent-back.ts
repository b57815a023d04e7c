import type { SpeciesId, StageId } from '../log/ids.ts';
import { tapCounts } from './tap-counts.ts';
import type { TapFilter } from './tap-filter.ts';
import type { TapTable } from './tap-table.ts';

/** How often a stage sends pieces of a wood back. */
export interface SentBack {
  readonly stage: StageId;
  readonly species: SpeciesId;
  /** Visits that ended, those of pieces that came again among them. */
  readonly visits: number;
  /** Pieces that were sent back, by where to. */
  readonly to: ReadonlyMap<StageId, number>;
}

/** Visits and what was sent back, by stage × wood. */
export function sentBack(table: TapTable, filter: TapFilter = {}): readonly SentBack[] {
  const found = new Map<
    string,
    Omit<SentBack, 'visits' | 'to'> & { visits: number; to: Map<StageId, number> }
  >();
  for (const { what, of, taps } of tapCounts(table, filter)) {
    if (what.kind !== 'visit' || !of) continue;
    const { stage, flaw } = what;
    const key = `${stage}|${of.species}`;
    const cell = found.get(key) ?? { stage, species: of.species, visits: 0, to: new Map<StageId, number>() };
    found.set(key, cell);
    const pieces = taps * what.pieces;
    cell.visits += pieces;
    if (flaw?.to) cell.to.set(flaw.to, pieces + (cell.to.get(flaw.to) ?? 0));
  }
  return [...found].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, cell]) => cell);
}
