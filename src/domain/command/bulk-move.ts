import type { StageId, TrayId } from '../log/ids.ts';
import type { Grade } from '../log/place.ts';
import { holdLimit, isFull } from '../rollup/hold-limit.ts';
import { holds } from '../rollup/holds.ts';
import { type AtStage, stagesOfTray } from '../rollup/waiting.ts';
import { routeOfBatch } from '../route/route.ts';
import { factOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';
import type { TrayRecord } from '../shop/trays.ts';
import type { Command, CommandOf } from './command.ts';
import type { Problem } from './problem.ts';

/** What is done with whole trays, several in a row. */
export type BulkMove = 'into-clamps' | 'out-of-clamps' | 'to-shelf';

type BulkProblem =
  | Extract<Problem, { kind: 'no-such-tray' | 'no-such-batch' | 'nothing-there' | 'hold-is-full' }>
  /** Nothing of it is ready yet; the soonest is at `ready`, ms UTC. */
  | { readonly kind: 'still-cures'; readonly ready: number };

/** One tap of a bulk move: pieces of one grade at one stage. */
export interface BulkStep {
  readonly command: CommandOf<'load' | 'pass'>;
  /** The stage after it; null where the pieces are finished. A load stays at its stage. */
  readonly next: StageId | null;
}

/** What a bulk move would do with a tray, or why nothing. */
export type BulkLine =
  | { readonly kind: 'would'; readonly tray: TrayRecord; readonly steps: readonly BulkStep[] }
  | { readonly kind: 'would-not'; readonly tray: TrayId; readonly why: BulkProblem };

const grades: readonly Grade[] = ['first', 'second'];

/** A line for each tray, in their order: clamps that an earlier tray would take are not there for a later one. */
export function bulkLines(
  shop: Shop,
  { move, trays, now }: { move: BulkMove; trays: readonly TrayId[]; now: number },
): readonly BulkLine[] {
  let taken: ReadonlyMap<string, number> = new Map<string, number>();
  return trays.map((id): BulkLine => {
    const line = bulkLine(shop, { move, id, now });
    if (line.kind === 'would-not' || move !== 'into-clamps') return line;
    const before = new Map(taken);
    for (const [stage, pieces] of placesNeeded(line.steps)) {
      const limit = holdLimit(shop, stage);
      if (!limit) continue;
      const places = limit.resource === null ? `stage/${stage}` : `resource/${limit.resource}`;
      const free = Math.max(0, limit.free - (before.get(places) ?? 0));
      if (pieces > free) return { kind: 'would-not', tray: id, why: isFull({ ...limit, free }) };
      before.set(places, (before.get(places) ?? 0) + pieces);
    }
    taken = before;
    return line;
  });
}

/** The taps that do what lines say. */
export function commandsOf({ steps }: Extract<BulkLine, { kind: 'would' }>): readonly Command[] {
  return steps.map(({ command }) => command);
}

function placesNeeded(steps: readonly BulkStep[]): ReadonlyMap<StageId, number> {
  const needs = new Map<StageId, number>();
  for (const { command } of steps) {
    const { stage } = command.spot;
    needs.set(stage, (needs.get(stage) ?? 0) + command.pieces);
  }
  return needs;
}

function bulkLine(shop: Shop, { move, id, now }: { move: BulkMove; id: TrayId; now: number }): BulkLine {
  const tray = shop.trays.get(id);
  if (!tray) return { kind: 'would-not', tray: id, why: { kind: 'no-such-tray' } };
  const route = routeOfBatch(shop.registers, tray.batch);
  if (!route) return { kind: 'would-not', tray: id, why: { kind: 'no-such-batch' } };
  const there = stagesOfTray(shop, id);
  const wanted = stagesOf(shop, { move, route });
  const steps = wanted.flatMap((stage) => {
    const at = there.find((each) => each.stage === stage);
    return at ? stepsAt(shop, { move, at, route, now }) : [];
  });
  if (steps.length > 0) return { kind: 'would', tray, steps };
  const cures =
    move === 'into-clamps'
      ? undefined
      : holds(shop).find((hold) => hold.tray.tray === id && wanted.includes(hold.stage));
  const why = cures
    ? ({ kind: 'still-cures', ready: cures.ready } as const)
    : ({ kind: 'nothing-there' } as const);
  return { kind: 'would-not', tray: id, why };
}

const holdsBack = (shop: Shop, stage: StageId) =>
  factOf(shop.registers, { register: 'stage', id: stage })?.kind === 'hold';

/** The stages of a route at which a move takes pieces up: what is for the shelf stands at the last one. */
function stagesOf(
  shop: Shop,
  { move, route }: { move: BulkMove; route: readonly StageId[] },
): readonly StageId[] {
  return move === 'to-shelf' ? route.slice(-1) : route.filter((stage) => holdsBack(shop, stage));
}

interface StepsAt {
  readonly move: BulkMove;
  readonly at: AtStage;
  readonly route: readonly StageId[];
  readonly now: number;
}

function stepsAt(shop: Shop, { move, at: { tray, stage, waiting, held }, route, now }: StepsAt): BulkStep[] {
  const next = route[route.indexOf(stage) + 1] ?? null;
  const where = { tray: tray.tray, stage };
  if (move === 'into-clamps' || !holdsBack(shop, stage)) {
    const kind = move === 'into-clamps' ? 'load' : 'pass';
    return grades.flatMap((grade) => {
      const pieces = waiting[grade];
      const spot = { ...where, at: 'waiting', grade, shown: pieces } as const;
      return pieces > 0 ? [{ command: { kind, spot, pieces }, next }] : [];
    });
  }
  const ready = holds(shop).filter(
    (hold) => hold.tray.tray === tray.tray && hold.stage === stage && hold.ready <= now,
  );
  return grades.flatMap((grade) => {
    const pieces = ready.filter((hold) => hold.grade === grade).reduce((sum, hold) => sum + hold.pieces, 0);
    const spot = { ...where, at: 'held', grade, shown: held[grade] } as const;
    return pieces > 0 ? [{ command: { kind: 'pass', spot, pieces }, next }] : [];
  });
}
