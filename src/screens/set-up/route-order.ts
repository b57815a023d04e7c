import type { StageId } from '../../domain/log/ids.ts';
import { workInProcess } from '../../domain/rollup/wip.ts';
import type { Shop } from '../../domain/shop/shop.ts';

/** The order with one stage moved by some places; at an end it stays where it is. */
export function moved(
  stages: readonly StageId[],
  { stage, by }: { stage: StageId; by: number },
): readonly StageId[] {
  const from = stages.indexOf(stage);
  const to = from + by;
  if (from < 0 || to < 0 || to >= stages.length) return stages;
  return stages.toSpliced(from, 1).toSpliced(to, 0, stage);
}

/** Pieces in process at each stage. */
export function piecesByStage(shop: Shop): ReadonlyMap<StageId, number> {
  const sums = new Map<StageId, number>();
  for (const { stage, waiting, held } of workInProcess(shop))
    sums.set(stage, (sums.get(stage) ?? 0) + waiting + held);
  return sums;
}
