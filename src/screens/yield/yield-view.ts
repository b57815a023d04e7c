import type { ReasonId, SpeciesId, StageId } from '../../domain/log/ids.ts';
import { shareValue } from '../../domain/rollup/first-pass-yield.ts';
import { type FlawCell, flawTable } from '../../domain/rollup/flaw-table.ts';
import { type SpeciesYield, type StageYield, yieldBySpecies } from '../../domain/rollup/species-yield.ts';
import { traysAtStage } from '../../domain/rollup/waiting.ts';
import { strandedStages, type WipCell, workInProcess } from '../../domain/rollup/wip.ts';
import { liveStages } from '../../domain/route/live-stages.ts';
import type { Shop } from '../../domain/shop/shop.ts';
import type { TrayRecord } from '../../domain/shop/trays.ts';

/** One stage of the flow: what stands there, wood by wood. */
export interface StageFlow {
  readonly stage: StageId;
  readonly total: number;
  readonly held: number;
  readonly stranded: boolean;
  readonly cells: readonly WipCell[];
}

/** Work in process along the routes; stages that no route has any more come last. */
export function flowAlongRoute(shop: Shop): readonly StageFlow[] {
  const onRoute = liveStages(shop.registers);
  const stranded = strandedStages(shop, new Set(onRoute));
  const cells = workInProcess(shop);
  return [...onRoute, ...stranded].map((stage) => {
    const here = cells
      .filter((cell) => cell.stage === stage)
      .toSorted(
        (a, b) => b.waiting + b.held - (a.waiting + a.held) || a.species.localeCompare(b.species, 'en'),
      );
    return {
      stage,
      total: here.reduce((sum, { waiting, held }) => sum + waiting + held, 0),
      held: here.reduce((sum, { held }) => sum + held, 0),
      stranded: stranded.includes(stage),
      cells: here,
    };
  });
}

/** The trays of one wood that have something at a stage, with how much. */
export function traysBehind(
  shop: Shop,
  { stage, species }: { stage: StageId; species: SpeciesId },
): readonly { readonly tray: TrayRecord; readonly pieces: number }[] {
  return traysAtStage(shop, stage)
    .filter(({ tray }) => tray.species === species)
    .map(({ tray, waiting, held }) => ({
      tray,
      pieces: waiting.first + waiting.second + held.first + held.second,
    }));
}

/** Every wood with its stages worst first: the lowest first-pass yield, then the most pieces. */
export function woodsWorstFirst(shop: Shop): readonly SpeciesYield[] {
  return yieldBySpecies(shop, allStages(shop)).map((wood) => ({
    ...wood,
    stages: wood.stages.toSorted(worseFirst),
  }));
}

function worseFirst(a: StageYield, b: StageYield): number {
  return (shareValue(a.share) ?? 1) - (shareValue(b.share) ?? 1) || b.share.of - a.share.of;
}

/** Stages on a route first, then those that have only history. */
function allStages(shop: Shop): readonly StageId[] {
  const judged = [...shop.visits.first.keys()].map((key) => key.slice(0, key.indexOf('|')) as StageId);
  return [...new Set([...liveStages(shop.registers), ...judged])];
}

/** One reason with its pieces by wood, and where they come from. */
export interface ReasonRow {
  readonly reason: ReasonId;
  readonly bySpecies: ReadonlyMap<SpeciesId, number>;
  readonly total: number;
  readonly cells: readonly FlawCell[];
}

/** Flaws by reason and wood, the most frequent reason first. */
export function flawsByReason(shop: Shop): readonly ReasonRow[] {
  const rows = new Map<ReasonId, FlawCell[]>();
  for (const cell of flawTable(shop)) rows.set(cell.reason, [...(rows.get(cell.reason) ?? []), cell]);
  return [...rows]
    .map(([reason, cells]) => {
      const bySpecies = new Map<SpeciesId, number>();
      for (const { species, pieces } of cells) bySpecies.set(species, (bySpecies.get(species) ?? 0) + pieces);
      const total = cells.reduce((sum, { pieces }) => sum + pieces, 0);
      return { reason, bySpecies, total, cells: cells.toSorted((a, b) => b.pieces - a.pieces) };
    })
    .toSorted((a, b) => b.total - a.total);
}
