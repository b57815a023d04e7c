import { type Adhesive, type Amounts, adhesiveFor, mixesInTime } from '../../../domain/hold/mix.ts';
import { holdRounds, type Rounds } from '../../../domain/hold/rounds.ts';
import type { StageId } from '../../../domain/log/ids.ts';
import { holdLimit } from '../../../domain/rollup/hold-limit.ts';
import { traysAtStage } from '../../../domain/rollup/waiting.ts';
import type { HoldFact } from '../../../domain/set-up/facts.ts';
import { factOf } from '../../../domain/shop/registers.ts';
import type { Shop } from '../../../domain/shop/shop.ts';

/** What a round of a hold begins with. */
export interface MixView {
  readonly stage: HoldFact;
  readonly waiting: number;
  /** Infinity without a limit. */
  readonly free: number;
  /** Pieces that can go in now: what waits, as far as there is room; while nothing waits, what there is room for. */
  readonly pieces: number;
  /** How many rounds what waits will need in all. */
  readonly rounds: Rounds;
}

/** undefined where the stage holds nothing. */
export function mixView(shop: Shop, stage: StageId): MixView | undefined {
  const fact = factOf(shop.registers, { register: 'stage', id: stage });
  const limit = holdLimit(shop, stage);
  if (fact?.kind !== 'hold' || !limit) return undefined;
  const waiting = traysAtStage(shop, stage).reduce(
    (sum, at) => sum + Math.max(0, at.waiting.first) + Math.max(0, at.waiting.second),
    0,
  );
  const room = Number.isFinite(limit.free) ? limit.free : 0;
  const pieces = waiting > 0 ? Math.min(waiting, limit.free) : room;
  return { stage: fact, waiting, free: limit.free, pieces, rounds: holdRounds(waiting, limit.limit) };
}

/** Mixes for so many pieces each, the first of which has this number among those of a round. */
export interface MixLine {
  readonly first: number;
  readonly mixes: number;
  readonly pieces: number;
  readonly amounts: Amounts;
}

/** What is mixed for a round, mix by mix; `too-slow` where a piece takes longer than the pot life. */
export type MixPlan =
  | { readonly kind: 'lines'; readonly mixes: number; readonly lines: readonly MixLine[] }
  | { readonly kind: 'too-slow' };

/** Without a time per piece all goes into one mix. */
export function mixPlan(
  mix: Adhesive,
  { pieces, secondsEach }: { readonly pieces: number; readonly secondsEach: number | null },
): MixPlan {
  const parts =
    secondsEach === null
      ? [{ mixes: 1, pieces }]
      : mixesInTime(pieces, { potMinutes: mix.potMinutes, secondsEach });
  if (parts === null) return { kind: 'too-slow' };
  const lines: MixLine[] = [];
  let before = 0;
  for (const part of parts) {
    lines.push({ first: before + 1, ...part, amounts: adhesiveFor(part.pieces, mix) });
    before += part.mixes;
  }
  return { kind: 'lines', mixes: before, lines };
}
