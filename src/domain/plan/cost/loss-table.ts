import type { ReasonId, StageId } from '../../log/ids.ts';
import { type Amount, type Missing, missingOf } from './amount.ts';
import { roundTogether } from './round-together.ts';

/** Pieces that lost money at a stage for the same reasons; see losses.ts for the money of one of them. */
export interface Loss {
  readonly stage: StageId;
  /** None where none was given. */
  readonly reasons: readonly ReasonId[];
  readonly pieces: number;
  /** Of each of them, in minor units. */
  readonly each: Amount;
}

interface LossCell {
  readonly stage: StageId;
  /** null: none was given. */
  readonly reason: ReasonId | null;
  /** Pieces that had this reason; one with two reasons stands under both. */
  readonly pieces: number;
  /** Whole minor units; what a piece with two reasons lost is halved between them, so that all cells add up. */
  readonly money: number;
}

export interface LossTable {
  /** The dearest first. */
  readonly cells: readonly LossCell[];
  /** Sums of the cells, the dearest first. */
  readonly byStage: ReadonlyMap<StageId, number>;
  readonly byReason: ReadonlyMap<ReasonId | null, number>;
  readonly whole: number;
  /** Pieces whose money is not known and in no sum, and what is missing to know it. */
  readonly unknown: { readonly pieces: number; readonly missing: readonly Missing[] };
}

/**
 * Money lost, by stage and reason. Cells are whole minor units; rows, columns and the whole are their sums.
 *
 * @throws {RangeError} for amounts that are no numbers
 * @example
 * lossTable([{ stage: turn, reasons: [tearOut, catch_], pieces: 3, each: { kind: 'known', money: 101 } }])
 * // two cells of 3 pieces: 152 and 151; whole 303
 */
export function lossTable(losses: readonly Loss[]): LossTable {
  const cells = new Map<string, { stage: StageId; reason: ReasonId | null; pieces: number; money: number }>();
  const unknown = losses.filter(({ each, pieces }) => each.kind === 'not-known' && pieces > 0);
  for (const { stage, reasons, pieces, each } of losses) {
    if (each.kind === 'not-known' || pieces === 0) continue;
    const named: readonly (ReasonId | null)[] = reasons.length > 0 ? [...new Set(reasons)] : [null];
    for (const reason of named) {
      const key = `${stage}|${reason ?? ''}`;
      const cell = cells.get(key) ?? { stage, reason, pieces: 0, money: 0 };
      cell.pieces += pieces;
      cell.money += (pieces * each.money) / named.length;
      cells.set(key, cell);
    }
  }
  const exact = [...cells.values()];
  const { whole, parts } = roundTogether(exact.map(({ money }) => money));
  const rounded = exact
    .map((cell, at) => ({ ...cell, money: parts[at] ?? 0 }))
    .sort((a, b) => b.money - a.money || b.pieces - a.pieces);
  return {
    cells: rounded,
    byStage: sumsBy(rounded, ({ stage }) => stage),
    byReason: sumsBy(rounded, ({ reason }) => reason),
    whole,
    unknown: {
      pieces: unknown.reduce((sum, { pieces }) => sum + pieces, 0),
      missing: missingOf(unknown.map(({ each }) => each)),
    },
  };
}

function sumsBy<Key>(cells: readonly LossCell[], keyOf: (cell: LossCell) => Key): ReadonlyMap<Key, number> {
  const sums = new Map<Key, number>();
  for (const cell of cells) sums.set(keyOf(cell), (sums.get(keyOf(cell)) ?? 0) + cell.money);
  return new Map([...sums].sort(([, a], [, b]) => b - a));
}
