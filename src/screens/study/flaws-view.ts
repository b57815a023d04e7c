import type { ReasonId, SpeciesId, StageId } from '../../domain/log/ids.ts';
import type { HeatCell } from '../../domain/study/flaw-heat.ts';
import type { FlawPareto, ParetoRow } from '../../domain/study/flaw-pareto.ts';
import type { ParetoRow as ShownRow } from '../../ui/chart/pareto-bars.tsx';
import type { PictureBody } from '../../ui/picture/picture.ts';

export type ParetoBy = 'pieces' | 'minutes';

export interface ParetoBar {
  readonly reason: ReasonId;
  readonly value: number;
  /** This reason's and all larger ones' share of what the reasons add up to. */
  readonly running: number;
  readonly row: ParetoRow;
}

export const minutesOf = ({ scrapped, again }: ParetoRow['minutes']): number => scrapped + again;

/** Reasons by pieces or by minutes, the largest first; those that have none are left out. */
export function paretoBars({ reasons }: FlawPareto, by: ParetoBy): readonly ParetoBar[] {
  const costOf = ({ pieces, minutes }: ParetoRow) => (by === 'pieces' ? pieces : minutesOf(minutes));
  const rows = reasons.filter((row) => costOf(row) > 0).toSorted((a, b) => costOf(b) - costOf(a));
  const all = rows.reduce((sum, row) => sum + costOf(row), 0);
  let sum = 0;
  return rows.map((row) => {
    sum += costOf(row);
    return { reason: row.reason, value: costOf(row), running: sum / all, row };
  });
}

/** The bars as a picture: the longest one fills the width, as on the screen. */
export const paretoPicture = (rows: readonly ShownRow[]): PictureBody => ({
  kind: 'bars',
  most: rows[0]?.value ?? 0,
  ofWhole: false,
  bars: rows.map(({ label, detail, value, shown, running, runningShown }) => ({
    ...{ label, detail, value, shown, tone: 'flaw' },
    running: { share: running, shown: runningShown },
  })),
});

export interface HeatGrid {
  readonly stages: readonly StageId[];
  readonly woods: readonly SpeciesId[];
  readonly cellAt: (stage: string, species: string) => HeatCell | undefined;
  /** The largest share of any field. */
  readonly most: number;
}

/** Cells as a table: stages in the order of the route, those on no route after them; woods with the most flaws first. */
export function heatGrid(cells: readonly HeatCell[], route: readonly StageId[]): HeatGrid {
  const judged = new Set(cells.map(({ stage }) => stage));
  const onRoute = route.filter((stage) => judged.has(stage));
  const flawedOf = new Map<SpeciesId, number>();
  for (const { species, flawed } of cells) flawedOf.set(species, (flawedOf.get(species) ?? 0) + flawed);
  const byKey = new Map(cells.map((cell) => [`${cell.stage}|${cell.species}`, cell]));
  return {
    stages: [...new Set([...onRoute, ...judged])],
    woods: [...flawedOf].sort(([a, x], [b, y]) => y - x || (a < b ? -1 : 1)).map(([species]) => species),
    cellAt: (stage, species) => byKey.get(`${stage}|${species}`),
    most: cells.reduce((most, { share }) => Math.max(most, share), 0),
  };
}
