import { bestOrder, type Lane } from './best-order.ts';
import type { Round, RoundStage } from './load-round.ts';
import { openings, type Shift, without } from './shifts.ts';

/** Clamps or a rack. */
interface RoundPlaces {
  /** Pieces that they take at once; null where nothing limits them. */
  readonly capacity: number | null;
  /** What they hold now, and until when; ms UTC. */
  readonly held: readonly { readonly pieces: number; readonly until: number }[];
}

export interface RoundsTimetable<Name> {
  /** By the time at which they are loaded. */
  readonly rounds: readonly Round<Name>[];
  /** Pieces for which the shifts leave no round. */
  readonly left: number;
}

export interface RoundsQuestion<Name> {
  readonly stages: readonly RoundStage<Name>[];
  readonly places: RoundPlaces;
  /** In order and apart. */
  readonly shifts: readonly Shift[];
  /** ms UTC. */
  readonly now: number;
}

/**
 * When to load what, so that all that waits for some clamps or a rack has cured soonest. Places that come free at different
 * times are loaded by themselves until they are free together; each such round is the first of the best order of
 * the rest (`bestOrder`), as if no other places came to its help. One pair of hands loads; what they do elsewhere, and
 * what comes to wait later, is not in it.
 *
 * @throws {RangeError} for counts or times below 0
 * @example
 * const stages = [{ stage: 'glue', waiting: 30, cure: 4 * hour, load: 0, unload: 0 }];
 * roundsTimetable({ stages, places: { capacity: 24, held: [] }, shifts: [{ from: 0, to: 8 * hour }], now: 0 })
 * // rounds: 24 at 0, 6 at 4 hours; left: 0
 */
export function roundsTimetable<Name>(question: RoundsQuestion<Name>): RoundsTimetable<Name> {
  demandQuantities(question);
  let { stages, shifts } = question;
  let lanes = lanesOf(question);
  const rounds: Round<Name>[] = [];
  while (lanes.length > 0) {
    const { lane, others } = nextLane(lanes, shifts);
    const [round] = bestOrder(stages, { lane, shifts });
    lanes = others;
    if (!round) continue;
    rounds.push(round);
    shifts = without(without(shifts, { from: round.from, to: round.loaded }), {
      from: round.ready,
      to: round.free,
    });
    stages = stages.map((each) =>
      each.stage === round.stage ? { ...each, waiting: each.waiting - round.pieces } : each,
    );
    const rest = lane.capacity - round.pieces;
    if (rest > 0) lanes = [...lanes, { capacity: rest, from: round.loaded }];
    lanes = [...lanes, { capacity: Math.min(lane.capacity, round.pieces), from: round.free }];
  }
  return {
    rounds: rounds.sort((a, b) => a.from - b.from),
    left: stages.reduce((sum, { waiting }) => sum + waiting, 0),
  };
}

function demandQuantities<Name>({ stages, places }: RoundsQuestion<Name>): void {
  const quantities = stages.flatMap(({ waiting, cure, load, unload }) => [waiting, cure, load, unload]);
  const wrong = [...quantities, places.capacity ?? 0].find((quantity) => !(quantity >= 0));
  if (wrong !== undefined) throw new RangeError(`Not a quantity: ${wrong}`);
}

/** Free places, and those that are held by when they come free. Of more than there are, the last to go free a place. */
function lanesOf<Name>({ places: { capacity, held }, now }: RoundsQuestion<Name>): Lane[] {
  const all = capacity ?? Number.POSITIVE_INFINITY;
  const lanes: Lane[] = [];
  let named = 0;
  for (const { pieces, until } of [...held].sort((a, b) => b.until - a.until)) {
    const taken = Math.min(pieces, all - named);
    if (taken > 0 && Number.isFinite(all)) lanes.push({ capacity: taken, from: Math.max(now, until) });
    named += taken;
  }
  if (all > named || !Number.isFinite(all)) lanes.push({ capacity: all - named, from: now });
  return lanes;
}

/** The places that can be loaded first, together with those that are free by then. */
function nextLane(
  lanes: readonly Lane[],
  shifts: readonly Shift[],
): { readonly lane: Lane; readonly others: Lane[] } {
  const soonest = Math.min(...lanes.map(({ from }) => from));
  const [opening] = openings(shifts, soonest);
  const from = opening?.from ?? soonest;
  const free = lanes.filter((lane) => lane.from <= from);
  return {
    lane: { capacity: free.reduce((sum, { capacity }) => sum + capacity, 0), from },
    others: lanes.filter((lane) => lane.from > from),
  };
}
