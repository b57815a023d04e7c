import type { SpeciesId, StageId } from '../log/ids.ts';
import { longestStretch } from '../shop/days.ts';
import { type TapFilter, tapFilter } from './tap-filter.ts';
import type { TapTable } from './tap-table.ts';

/** Some pieces of one wood, and how long they took at one stage, in the order of the work. */
export interface Gap {
  /** Since the tap before, or since the stage was entered; undefined when that is not known. */
  readonly minutes: number | undefined;
  readonly pieces: number;
  /** The first tap of a spell. */
  readonly begins: boolean;
}

export interface StageGaps {
  readonly stage: StageId;
  readonly species: SpeciesId;
  /** `work` at a stage, of whatever kind, and the `loading` of a cure, which is work of the same pieces before it. */
  readonly of: 'work' | 'loading';
  readonly gaps: readonly Gap[];
}

/** The newest gaps of a stage and wood tell how long its pieces take now. */
const usualMost = 5000;

export interface GapsQuestion {
  readonly filter?: TapFilter | undefined;
  /** At most so many gaps of each stage and wood; 5000 when left out. */
  readonly most?: number | undefined;
}

/**
 * Gaps between taps by stage × wood, as they were however long: for the robust time per piece, and in their order for
 * learning. Taps of several stations stand side by side by their stamps, but a gap is only ever of its own spell. The newest
 * ones of each, by stage and wood.
 */
export function stageGaps(
  table: TapTable,
  { filter = {}, most = usualMost }: GapsQuestion = {},
): readonly StageGaps[] {
  const { kind, tray, elapsed, begins } = table.columns;
  const isWanted = tapFilter(table, filter);
  const found = new Map<string, Omit<StageGaps, 'gaps'> & { gaps: Gap[] }>();
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

/** Minutes that a piece of a wood takes at a stage, or undefined while that is not known. */
export type PieceMinutes = (stage: StageId, species: SpeciesId) => number | undefined;

/** Nobody makes a piece and taps it within this (2 s, in minutes): such taps count what was made together. */
const handSpeed = 2 / 60;

/**
 * The median minutes per piece of each stage × wood: half of the pieces took less. Breaks (see `longestStretch`) are left
 * out, taps within two seconds of each other are put together, and loading is added to the stage that cures. A wood
 * without a time at a stage takes the median over all woods there.
 */
export function medianMinutes(gaps: readonly StageGaps[]): PieceMinutes {
  const byCell = new Map<string, number>();
  for (const { stage, species, of, gaps: each } of gaps) {
    const median = weightedMedian(together(each));
    if (median === undefined) continue;
    byCell.set(`${stage}|${species}|${of}`, median);
  }
  const byStage = new Map<string, number>();
  for (const name of new Set(gaps.map(({ stage, of }) => `${stage}|${of}`))) {
    const all = gaps
      .filter(({ stage, of }) => `${stage}|${of}` === name)
      .flatMap((each) => together(each.gaps));
    const median = weightedMedian(all);
    if (median !== undefined) byStage.set(name, median);
  }
  const at = (stage: StageId, species: SpeciesId, of: StageGaps['of']) =>
    byCell.get(`${stage}|${species}|${of}`) ?? byStage.get(`${stage}|${of}`);
  return (stage, species) => {
    const [work, loading] = [at(stage, species, 'work'), at(stage, species, 'loading')];
    return work === undefined ? loading : work + (loading ?? 0);
  };
}

/** Pieces that were made together; undefined where nobody knows in how long, or where there was a break. */
interface Together {
  readonly minutes: number | undefined;
  readonly pieces: number;
}

/** What was tapped at once is what was made together: the minutes stand with the first of such taps. */
function together(gaps: readonly Gap[]): readonly Together[] {
  const groups: { minutes: number | undefined; pieces: number }[] = [];
  for (const { minutes, pieces, begins } of gaps) {
    const open = groups.at(-1);
    if (open && !begins && minutes !== undefined && minutes <= handSpeed) open.pieces += pieces;
    else groups.push({ minutes: isWork(minutes) ? minutes : undefined, pieces });
  }
  return groups;
}

function isWork(minutes: number | undefined): boolean {
  return minutes !== undefined && minutes > handSpeed && minutes <= longestStretch / 60_000;
}

/**
 * Minutes of piece after piece in the order of the work, for a learning curve: pieces that were made together share their
 * time evenly; undefined where there was a break, or no known time. They begin with the oldest gap that is given.
 */
export function unitTimes(gaps: readonly Gap[]): readonly (number | undefined)[] {
  return together(gaps).flatMap(({ minutes, pieces }) =>
    Array<number | undefined>(pieces).fill(minutes === undefined ? undefined : minutes / pieces),
  );
}

/** The minutes per piece below and above which half of the pieces lie. */
function weightedMedian(groups: readonly Together[]): number | undefined {
  const sorted = groups
    .flatMap(({ minutes, pieces }) => (minutes === undefined ? [] : [{ each: minutes / pieces, pieces }]))
    .sort((a, b) => a.each - b.each);
  const half = sorted.reduce((sum, { pieces }) => sum + pieces, 0) / 2;
  let below = 0;
  for (const [at, { each, pieces }] of sorted.entries()) {
    below += pieces;
    if (below > half) return each;
    if (below === half) return (each + (sorted[at + 1]?.each ?? each)) / 2;
  }
  return undefined;
}
