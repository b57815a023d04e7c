import type { SpeciesId, StageId, TrayId } from '../log/ids.ts';
import { type TapFilter, tapFilter } from './tap-filter.ts';
import type { TapTable } from './tap-table.ts';

/** Flawed pieces of one wood at one stage. */
export interface HeatCell {
  readonly stage: StageId;
  readonly species: SpeciesId;
  /** Visits that ended, those of pieces that came again among them: judged = passed + flawed. */
  readonly judged: number;
  readonly flawed: number;
  /** flawed ÷ judged */
  readonly share: number;
  readonly scrapped: number;
  /** The trays behind it, the one with the most flawed pieces first; of two that are alike the later one. */
  readonly trays: readonly HeatTray[];
  /** Further trays that are not among them. */
  readonly furtherTrays: number;
}

interface HeatTray {
  readonly tray: TrayId;
  readonly code: string;
  readonly judged: number;
  readonly flawed: number;
  /** When a piece of it was last flawed there, ms UTC. */
  readonly last: number;
}

/** More trays than this are on no screen. */
const usualMost = 40;

/** Every stage × wood that has judged a piece, by stage and wood, each with at most `most` (40) trays. */
export function flawHeat(
  table: TapTable,
  {
    filter = {},
    most = usualMost,
  }: { readonly filter?: TapFilter | undefined; readonly most?: number | undefined } = {},
): readonly HeatCell[] {
  const isWanted = tapFilter(table, filter);
  const cells = new Map<string, Cell>();
  for (let row = 0; row < table.length; row += 1) {
    const what = table.kinds[table.columns.kind[row] ?? -1];
    const of = table.trays[table.columns.tray[row] ?? -1];
    if (what?.kind !== 'visit' || !of || !isWanted(row)) continue;
    const key = `${what.stage}|${of.species}`;
    const cell = cells.get(key) ?? { stage: what.stage, species: of.species, scrapped: 0, trays: new Map() };
    cells.set(key, cell);
    const tray = cell.trays.get(of.tray) ?? { tray: of.tray, code: of.code, judged: 0, flawed: 0, last: 0 };
    cell.trays.set(of.tray, tray);
    tray.judged += what.pieces;
    if (!what.flaw) continue;
    tray.flawed += what.pieces;
    tray.last = table.columns.wall[row] ?? 0;
    if (what.flaw.outcome === 'scrapped') cell.scrapped += what.pieces;
  }
  return [...cells].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, cell]) => heatOf(cell, most));
}

interface Cell extends Pick<HeatCell, 'stage' | 'species'> {
  scrapped: number;
  readonly trays: Map<TrayId, { -readonly [Field in keyof HeatTray]: HeatTray[Field] }>;
}

function heatOf({ stage, species, scrapped, trays }: Cell, most: number): HeatCell {
  let judged = 0;
  let flawed = 0;
  for (const tray of trays.values()) {
    judged += tray.judged;
    flawed += tray.flawed;
  }
  const behind = [...trays.values()]
    .filter((tray) => tray.flawed > 0)
    .sort((a, b) => b.flawed - a.flawed || b.last - a.last || (a.tray < b.tray ? -1 : 1));
  return {
    ...{ stage, species, judged, flawed, scrapped, share: flawed / judged },
    trays: behind.slice(0, most),
    furtherTrays: Math.max(0, behind.length - most),
  };
}
