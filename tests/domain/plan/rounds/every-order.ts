import type { Lane } from '../../../../src/domain/plan/rounds/best-order.ts';
import type { RoundStage } from '../../../../src/domain/plan/rounds/load-round.ts';
import type { Shift } from '../../../../src/domain/plan/rounds/shifts.ts';

/**
 * When all can have cured at the soonest, found by trying every order of rounds, each with all that places and pieces
 * allow, or with as many as the next stretch of work has time for.
 */
export function soonestByTrying<Name>(
  stages: readonly RoundStage<Name>[],
  { lane, shifts }: { readonly lane: Lane; readonly shifts: readonly Shift[] },
): number {
  const known = new Map<string, number>();
  const from = (waiting: readonly number[], free: number): number => {
    if (waiting.every((pieces) => pieces === 0)) return 0;
    const key = `${waiting.join()}@${free}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    let soonest = Number.POSITIVE_INFINITY;
    for (const [at, { cure, load, unload }] of stages.entries()) {
      const most = Math.min(waiting[at] ?? 0, lane.capacity);
      const there = shifts.find(({ from: begin, to }) => to > free && Math.max(begin, free) + load <= to);
      for (let pieces = 1; pieces <= most; pieces += 1) {
        const isMost = there && Math.max(there.from, free) + (pieces + 1) * load > there.to;
        if (pieces < most && !isMost) continue;
        const shift = shifts.find(
          ({ from: begin, to }) => Math.max(begin, free) + pieces * load <= to && to > free,
        );
        if (!shift) continue;
        const ready = Math.max(shift.from, free) + pieces * load + cure;
        const rest = from(
          waiting.with(at, (waiting[at] ?? 0) - pieces),
          emptied({ ready, work: pieces * unload, shifts }),
        );
        soonest = Math.min(soonest, Math.max(ready, rest));
      }
    }
    known.set(key, soonest);
    return soonest;
  };
  return from(
    stages.map(({ waiting }) => waiting),
    lane.from,
  );
}

/** Minute by minute, as a person would count on a clock. */
function emptied({ ready, work, shifts }: { ready: number; work: number; shifts: readonly Shift[] }): number {
  const minute = 60_000;
  let [now, left] = [ready, work];
  for (; ; now += minute) {
    const isThere = shifts.some(({ from, to }) => from <= now && now < to);
    if (isThere && left <= 0) return now;
    if (isThere) left -= minute;
    if (now > (shifts.at(-1)?.to ?? 0)) return Number.POSITIVE_INFINITY;
  }
}
