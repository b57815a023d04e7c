import type { SpeciesId, StageId } from '../log/ids.ts';
import type { Tap } from '../statistics/tap-groups.ts';
import { type TapFilter, tapFilter } from './tap-filter.ts';
import type { TapTable } from './tap-table.ts';

export interface StageGaps {
  readonly stage: StageId;
  readonly species: SpeciesId;
  /** `work` at a stage, of whatever kind, and the `loading` of a cure, which is work of the same pieces before it. */
  readonly of: 'work' | 'loading';
  /** In the order of the work. */
  readonly gaps: readonly Tap[];
}

/** The newest gaps of a stage and wood tell how long its pieces take now; with more than these days and hands differ more. */
const usualMost = 1000;

interface GapsQuestion {
  readonly filter?: TapFilter | undefined;
  /** At most so many gaps of each stage and wood; 1000 when left out. */
  readonly most?: number | undefined;
}

/**
 * Gaps between taps by stage × wood, as they were however long: for the robust time per piece. Taps of several stations stand side by side by their stamps, but a gap is only ever of its own spell. The newest
 * ones of each, by stage and wood.
 */
export function stageGaps(
  table: TapTable,
  { filter = {}, most = usualMost }: GapsQuestion = {},
): readonly StageGaps[] {
  const { kind, tray, elapsed, begins } = table.columns;
  const isWanted = tapFilter(table, filter);
  const found = new Map<string, Omit<StageGaps, 'gaps'> & { gaps: Tap[] }>();
  // From the newest on: what is older than enough is not even looked at closely.
  for (let row = table.length - 1; row >= 0; row -= 1) {
    const what = table.kinds[kind[row] ?? -1];
    const of = table.trays[tray[row] ?? -1];
    // The end of a spell is work of no piece.
    if (!what?.pieces || !of || !isWanted(row)) continue;
    const work = what.kind === 'loaded' ? 'loading' : 'work';
    const key = `${what.stage}|${of.species}|${work}`;
    const known = found.get(key) ?? { stage: what.stage, species: of.species, of: work, gaps: [] };
    found.set(key, known);
    if (known.gaps.length === most) continue;
    const ms = elapsed[row] ?? -1;
    known.gaps.push({
      minutes: ms < 0 ? undefined : ms / 60_000,
      pieces: what.pieces,
      begins: begins[row] === 1,
    });
  }
  return [...found]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, each]) => ({ ...each, gaps: each.gaps.reverse() }));
}
