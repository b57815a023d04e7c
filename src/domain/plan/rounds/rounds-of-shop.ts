import { celsiusOf, cureTime } from '../../hold/cure-time.ts';
import type { StageId } from '../../log/ids.ts';
import { type HoldGroup, holdGroups } from '../../rollup/hold-groups.ts';
import { holds } from '../../rollup/holds.ts';
import { traysAtStage } from '../../rollup/waiting.ts';
import { factOf } from '../../shop/registers.ts';
import type { Shop } from '../../shop/shop.ts';
import type { RoundStage } from './load-round.ts';
import type { RoundsQuestion } from './rounds-timetable.ts';
import type { Shift } from './shifts.ts';

export interface RoundsOfGroup extends HoldGroup {
  readonly question: RoundsQuestion<StageId>;
}

/** Minutes of hands for a piece, into the clamps and out of them; undefined while that is not known, and then reckoned as none. */
export type HandsAt = (stage: StageId) => {
  readonly load: number | undefined;
  readonly unload: number | undefined;
};

/** What the rounds of all clamps and racks are reckoned from, as the shop is now (ms UTC): times of cures by its warmth. */
export function roundsOfShop(
  shop: Shop,
  {
    now,
    shifts,
    handsAt,
  }: { readonly now: number; readonly shifts: readonly Shift[]; readonly handsAt: HandsAt },
): readonly RoundsOfGroup[] {
  const held = holds(shop);
  return holdGroups(shop).map((group) => ({
    ...group,
    question: {
      stages: group.stages.flatMap((stage) => roundStage(shop, { stage, handsAt })),
      places: {
        capacity: group.limit.limit,
        held: held
          .filter(({ stage }) => group.stages.includes(stage))
          .map(({ pieces, ready }) => ({ pieces, until: ready })),
      },
      shifts,
      now,
    },
  }));
}

const minute = 60_000;

function roundStage(
  shop: Shop,
  { stage, handsAt }: { readonly stage: StageId; readonly handsAt: HandsAt },
): readonly RoundStage<StageId>[] {
  const fact = factOf(shop.registers, { register: 'stage', id: stage });
  if (fact?.kind !== 'hold') return [];
  const waiting = traysAtStage(shop, stage).reduce(
    (sum, at) => sum + Math.max(0, at.waiting.first) + Math.max(0, at.waiting.second),
    0,
  );
  const { load, unload } = handsAt(stage);
  return [
    {
      ...{ stage, waiting },
      cure: cureTime(fact, celsiusOf(shop.registers)).recommended * minute,
      load: (load ?? 0) * minute,
      unload: (unload ?? 0) * minute,
    },
  ];
}
