import type { SpeciesId, StageId } from '../log/ids.ts';
import type { Shop } from '../shop/shop.ts';

/** Pieces in process of one wood at one stage. */
export interface WipCell {
  readonly stage: StageId;
  readonly species: SpeciesId;
  readonly waiting: number;
  readonly held: number;
  readonly seconds: number;
}

/** Work in process by stage and wood; cells without a piece are left out. `seconds` are among waiting and held. */
export function workInProcess({ ledger }: Shop): readonly WipCell[] {
  const cells = new Map<string, WipCell>();
  for (const [key, pieces] of ledger.wip) {
    const [stage, species, grade, at] = key.split('|') as [StageId, SpeciesId, string, string];
    const cell = cells.get(`${stage}|${species}`) ?? { stage, species, waiting: 0, held: 0, seconds: 0 };
    cells.set(`${stage}|${species}`, {
      ...cell,
      waiting: cell.waiting + (at === 'waiting' ? pieces : 0),
      held: cell.held + (at === 'held' ? pieces : 0),
      seconds: cell.seconds + (grade === 'second' ? pieces : 0),
    });
  }
  return [...cells.values()].filter(({ waiting, held }) => waiting !== 0 || held !== 0);
}

/** Stages that hold pieces though no current route has them (two tablets changed the route at once). */
export function strandedStages(shop: Shop, onRoutes: ReadonlySet<StageId>): readonly StageId[] {
  return [...new Set(workInProcess(shop).map(({ stage }) => stage))].filter((stage) => !onRoutes.has(stage));
}
