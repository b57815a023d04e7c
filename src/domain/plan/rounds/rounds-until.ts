import { loadedFrom, type RoundStage } from './load-round.ts';
import type { Shift } from './shifts.ts';

export interface RoundsUntil {
  readonly rounds: number;
  /** Pieces in them: rounds × places, less where a shift is too short to load all places. */
  readonly pieces: number;
}

/**
 * How many pieces some places can cure for one stage by a moment, one round after the other: each is loaded while somebody is
 * there, and the next when somebody has emptied the places. A round that is not cured by then does not count.
 *
 * @param stage cure of 1 ms or more, and minutes of hands for a piece, in ms
 * @param question.capacity places, 1 or more
 * @param question.shifts in order and apart, none beyond `until`; ms UTC
 */
export function roundsUntil<Name>(
  stage: Omit<RoundStage<Name>, 'waiting'>,
  {
    capacity,
    shifts,
    now,
    until,
  }: {
    readonly capacity: number;
    readonly shifts: readonly Shift[];
    readonly now: number;
    readonly until: number;
  },
): RoundsUntil {
  let [rounds, pieces, from] = [0, 0, now];
  for (let left = shifts; ; ) {
    const at = left.findIndex(({ to }) => to > from);
    left = at < 0 ? [] : at === 0 ? left : left.slice(at);
    const round = loadedFrom({ ...stage, waiting: capacity }, { pieces: capacity, from, shifts: left });
    if (!round || round.ready > until) return { rounds, pieces };
    rounds += 1;
    pieces += round.pieces;
    from = round.free;
  }
}
