import type { BatchId, StageId } from '../../log/ids.ts';
import { holds } from '../../rollup/holds.ts';
import { type AtStage, traysAtStage } from '../../rollup/waiting.ts';
import { liveStages } from '../../route/live-stages.ts';
import { factOf } from '../../shop/registers.ts';
import type { Shop } from '../../shop/shop.ts';
import type { StageTime } from '../../study/piece-times.ts';
import type { RoundsOfGroup } from '../rounds/rounds-of-shop.ts';
import type { RoundsAdvice } from '../rounds/todays-advice.ts';
import type { BenchWork, HoldWork, NextQuestion } from './what-next.ts';

export interface AdvisedGroup extends RoundsOfGroup {
  readonly advice: RoundsAdvice<StageId>;
}

export interface NextFacts {
  /** ms UTC. */
  readonly now: number;
  readonly times: readonly StageTime[];
  readonly groups: readonly AdvisedGroup[];
  /** Days that a batch has to spare; null without a due day. */
  readonly spareOf: (batch: BatchId) => number | null;
  /** Minutes of work ahead of each stage. */
  readonly ahead: readonly { readonly stage: StageId; readonly minutes: number }[];
}

/** What there is to do in the shop as it is now, for `whatNext` to put in order. */
export function nextOfShop(shop: Shop, facts: NextFacts): NextQuestion<StageId, BatchId> {
  const live = liveStages(shop.registers);
  const benches = live.filter((stage) => kindOf(shop, stage) !== 'hold');
  const loads = facts.ahead.filter(({ stage, minutes }) => minutes > 0 && benches.includes(stage));
  return {
    benches: benches.map((stage) => benchWork(shop, { ...facts, stage, position: live.indexOf(stage) })),
    holds: facts.groups.flatMap((group) =>
      group.stages.map((stage) => holdWork(shop, { ...facts, group, stage, position: live.indexOf(stage) })),
    ),
    bottleneck: loads.toSorted((a, b) => b.minutes - a.minutes)[0]?.stage ?? null,
  };
}

const kindOf = ({ registers }: Shop, id: StageId) => factOf(registers, { register: 'stage', id })?.kind;

const waitingOf = ({ waiting }: AtStage) => Math.max(0, waiting.first) + Math.max(0, waiting.second);

interface AtPosition {
  readonly stage: StageId;
  readonly position: number;
}

function benchWork(
  shop: Shop,
  { stage, position, times, spareOf }: NextFacts & AtPosition,
): BenchWork<StageId, BatchId> {
  const trays = traysAtStage(shop, stage).filter((at) => waitingOf(at) > 0);
  const spares = trays.flatMap(({ tray: { batch } }) => {
    const daysToSpare = spareOf(batch);
    return daysToSpare === null ? [] : [{ batch, daysToSpare }];
  });
  return {
    ...{ stage, position, pieces: trays.reduce((sum, at) => sum + waitingOf(at), 0) },
    minutesEach: meanMinutes(times, stage),
    tightest: spares.toSorted((a, b) => a.daysToSpare - b.daysToSpare)[0] ?? null,
  };
}

/** Of all woods that have a time there. */
function meanMinutes(times: readonly StageTime[], stage: StageId): number | undefined {
  const known = times.filter((each) => each.stage === stage && each.of === 'work');
  if (known.length === 0) return undefined;
  return known.reduce((sum, { time }) => sum + time.median, 0) / known.length;
}

function holdWork(
  shop: Shop,
  { stage, position, now, group }: NextFacts & AtPosition & { readonly group: AdvisedGroup },
): HoldWork<StageId> {
  const { advice, limit, question } = group;
  const cured = holds(shop).filter((hold) => hold.stage === stage && hold.ready <= now);
  const waiting = question.stages.reduce((sum, each) => sum + each.waiting, 0);
  const isNext = advice.kind === 'load' && advice.round.stage === stage;
  return {
    ...{ stage, position, cured: cured.reduce((sum, { pieces }) => sum + pieces, 0) },
    placesWanted: waiting > limit.free,
    load: isNext ? { pieces: advice.round.pieces, by: advice.by, more: advice.more } : null,
  };
}
