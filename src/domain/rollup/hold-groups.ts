import type { ResourceId, StageId } from '../log/ids.ts';
import { liveStages } from '../route/live-stages.ts';
import type { Shop } from '../shop/shop.ts';
import { type HoldLimit, holdLimit } from './hold-limit.ts';
import { holds } from './holds.ts';

/** The holds that share clamps or a rack, or one hold with places of its own. */
export interface HoldGroup {
  readonly key: `resource/${ResourceId}` | `stage/${StageId}`;
  readonly limit: HoldLimit;
  /** In the order of the route; off it only while they hold something. */
  readonly stages: readonly StageId[];
}

/** All holds by what limits them, in the order of their first stage. */
export function holdGroups(shop: Shop): readonly HoldGroup[] {
  const live = liveStages(shop.registers);
  const groups = new Map<HoldGroup['key'], { limit: HoldLimit; stages: StageId[] }>();
  for (const stage of new Set([...live, ...holds(shop).map((hold) => hold.stage)])) {
    const limit = holdLimit(shop, stage);
    if (!limit) continue;
    const key =
      limit.resource === null ? (`stage/${stage}` as const) : (`resource/${limit.resource}` as const);
    const group = groups.get(key) ?? { limit, stages: [] };
    group.stages.push(stage);
    groups.set(key, group);
  }
  return [...groups].map(([key, group]) => ({ key, ...group }));
}
