import type { Command } from '../../../domain/command/command.ts';
import type { ResourceId, StageId } from '../../../domain/log/ids.ts';
import type { Grade } from '../../../domain/log/place.ts';
import { holdGroups } from '../../../domain/rollup/hold-groups.ts';
import type { HoldLimit } from '../../../domain/rollup/hold-limit.ts';
import { type CureRound, cureRounds } from '../../../domain/rollup/holds.ts';
import { stagesOfTray, traysAtStage } from '../../../domain/rollup/waiting.ts';
import { factOf } from '../../../domain/shop/registers.ts';
import type { Shop } from '../../../domain/shop/shop.ts';

/** Where a cure stands: it still needs its least time; it may come out and is not yet ready; it is ready. */
export type CureState = 'cures' | 'may-come-out' | 'ready';

export interface CureRow {
  readonly key: string;
  readonly round: CureRound;
  readonly state: CureState;
  /** An earlier round of the same tray is still in: a tap takes out what is ready soonest. */
  readonly isBehind: boolean;
}

/** A stage of a group, with what waits to be loaded there. */
interface GroupStage {
  readonly stage: StageId;
  readonly waiting: number;
  readonly mixes: boolean;
}

/** What one set of clamps, or one rack, holds. */
export interface CureGroup {
  readonly key: string;
  /** null where the one stage has places of its own. */
  readonly resource: ResourceId | null;
  readonly limit: HoldLimit;
  readonly stages: readonly GroupStage[];
  readonly rows: readonly CureRow[];
}

/** All that cures by clamps and racks: groups with the soonest ready first, empty ones last; `now` in ms UTC. */
export function curingView(shop: Shop, now: number): readonly CureGroup[] {
  const rounds = cureRounds(shop);
  return holdGroups(shop)
    .map(({ key, limit, stages }) => ({
      key,
      resource: limit.resource,
      limit,
      stages: stages.map((stage) => groupStage(shop, stage)),
      rows: rowsOf(
        rounds.filter(({ stage }) => stages.includes(stage)),
        now,
      ),
    }))
    .sort((a, b) => soonest(a) - soonest(b));
}

const soonest = ({ rows }: CureGroup) => rows[0]?.round.ready ?? Number.MAX_SAFE_INTEGER;

function groupStage(shop: Shop, stage: StageId): GroupStage {
  const fact = factOf(shop.registers, { register: 'stage', id: stage });
  const waiting = traysAtStage(shop, stage).reduce(
    (sum, at) => sum + Math.max(0, at.waiting.first) + Math.max(0, at.waiting.second),
    0,
  );
  return { stage, waiting, mixes: fact?.kind === 'hold' && Boolean(fact.mix) };
}

function rowsOf(rounds: readonly CureRound[], now: number): readonly CureRow[] {
  const seen = new Set<string>();
  return rounds.map((round) => {
    const place = `${round.tray.tray}|${round.stage}`;
    const isBehind = seen.has(place);
    seen.add(place);
    return { key: `${place}|${round.ready}`, round, state: stateOf(round, now), isBehind };
  });
}

export function stateOf({ ready, least }: CureRound, now: number): CureState {
  if (ready <= now) return 'ready';
  return least <= now ? 'may-come-out' : 'cures';
}

const grades: readonly Grade[] = ['first', 'second'];

/** The taps that take a round out, one for each grade. */
export function unloading(shop: Shop, { tray, stage, grades: pieces }: CureRound): readonly Command[] {
  const held = stagesOfTray(shop, tray.tray).find((at) => at.stage === stage)?.held;
  return grades.flatMap((grade): Command[] => {
    const spot = { tray: tray.tray, stage, at: 'held', grade, shown: held?.[grade] ?? 0 } as const;
    return pieces[grade] > 0 ? [{ kind: 'pass', spot, pieces: pieces[grade] }] : [];
  });
}
