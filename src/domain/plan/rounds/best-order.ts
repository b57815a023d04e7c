import { loadedFrom, type Round, type RoundStage, wholeLoadFrom } from './load-round.ts';
import type { Shift } from './shifts.ts';

/** Places that are loaded and unloaded together. */
export interface Lane {
  /** Pieces; Infinity where nothing limits them. */
  readonly capacity: number;
  /** When they are free, ms UTC. */
  readonly from: number;
}

/** Rounds made so far: what then waits of each stage, and when the places are free again. */
interface Reached<Name> {
  readonly waiting: readonly number[];
  readonly free: number;
  readonly last: Round<Name> | undefined;
  readonly before: Reached<Name> | undefined;
}

/** So many ways are followed after as many rounds; the order is the best of all while there are no more. */
const mostWays = 400;

/**
 * The order of rounds after which all that waits has cured soonest: what cures long goes over night, where that helps. A round
 * is as full as places, pieces and, where it does not wait for the next shift, the time left allow. Places that are free sooner are never worse, so of all ways to leave the same pieces waiting only the one that is free first is
 * followed (dynamic programming). Shifts that end too early leave some waiting: then as few as can be.
 *
 * @returns the rounds one after the other
 */
export function bestOrder<Name>(
  stages: readonly RoundStage<Name>[],
  { lane, shifts }: { readonly lane: Lane; readonly shifts: readonly Shift[] },
): readonly Round<Name>[] {
  const start: Reached<Name> = {
    waiting: stages.map(({ waiting }) => waiting),
    free: lane.from,
    last: undefined,
    before: undefined,
  };
  const freest = new Map<string, Reached<Name>>();
  let best = start;
  let ways = [start];
  while (ways.length > 0) {
    const next = new Map<string, Reached<Name>>();
    for (const way of ways) {
      for (const reached of goOn(way, { stages, lane, shifts })) {
        if (isBetter(reached, best)) best = reached;
        const key = reached.waiting.join();
        const known = freest.get(key);
        if (known && known.free <= reached.free) continue;
        freest.set(key, reached);
        next.set(key, reached);
      }
    }
    ways = [...next.values()];
    if (ways.length > mostWays) {
      ways = ways
        .sort((a, b) => promise(a, { stages, lane }) - promise(b, { stages, lane }))
        .slice(0, mostWays);
    }
  }
  return roundsOf(best);
}

interface Scene<Name> {
  readonly stages: readonly RoundStage<Name>[];
  readonly lane: Lane;
  readonly shifts: readonly Shift[];
}

/** The next round of each stage: at once with what the shift has time for, or later with all that the places take. */
function* goOn<Name>(way: Reached<Name>, { stages, lane, shifts }: Scene<Name>): Generator<Reached<Name>> {
  for (const [at, stage] of stages.entries()) {
    const pieces = Math.min(way.waiting[at] ?? 0, lane.capacity);
    if (pieces === 0) continue;
    const now = loadedFrom(stage, { pieces, from: way.free, shifts });
    const whole =
      now && now.pieces < pieces ? wholeLoadFrom(stage, { pieces, from: way.free, shifts }) : undefined;
    for (const round of [now, whole]) {
      if (!round) continue;
      const waiting = way.waiting.with(at, (way.waiting[at] ?? 0) - round.pieces);
      yield { waiting, free: round.free, last: round, before: way };
    }
  }
}

/** Fewer left waiting is better; then cured sooner; then more of it sooner. */
function isBetter<Name>(a: Reached<Name>, b: Reached<Name>): boolean {
  const [leftOfA, leftOfB] = [sum(a.waiting), sum(b.waiting)];
  return leftOfA === leftOfB ? (a.last?.ready ?? 0) < (b.last?.ready ?? 0) : leftOfA < leftOfB;
}

/** When a way can have cured all at best, as if nobody slept. */
function promise<Name>(way: Reached<Name>, { stages, lane }: Pick<Scene<Name>, 'stages' | 'lane'>): number {
  const cures = stages.map(({ cure }, at) => Math.ceil((way.waiting[at] ?? 0) / lane.capacity) * cure);
  return way.free + sum(cures);
}

function roundsOf<Name>(last: Reached<Name>): readonly Round<Name>[] {
  const rounds: Round<Name>[] = [];
  for (let at: Reached<Name> | undefined = last; at?.last; at = at.before) rounds.push(at.last);
  return rounds.reverse();
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((whole, each) => whole + each, 0);
}
