import type { StageId, TrayId } from '../log/ids.ts';
import { type Grade, leastOf } from '../log/place.ts';
import { holdLimit, isFull } from '../rollup/hold-limit.ts';
import { type Hold, holds } from '../rollup/holds.ts';
import { mayComeOut, piecesOf } from '../rollup/may-come-out.ts';
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
  /** Nothing of it may come out yet without being asked for; the soonest is ready at `ready`, ms UTC. */
  | { readonly kind: 'still-cures'; readonly ready: number };

/** One tap of a bulk move: pieces of one grade at one stage. */
export interface BulkStep {
  readonly command: CommandOf<'load' | 'pass'>;
  /** The stage after it; null where the pieces are finished. A load stays at its stage. */
  readonly next: StageId | null;
}

/** Pieces that come out only when that is asked for, and when all of them have had their least time, ms UTC. */
interface EarlyPieces {
  readonly pieces: number;
  readonly least: number;
}

/** What a bulk move would do with a tray, or why nothing; what is early is in the steps where it was asked for. */
export type BulkLine =
  | {
      readonly kind: 'would';
      readonly tray: TrayRecord;
      readonly steps: readonly BulkStep[];
      readonly early: EarlyPieces | null;
    }
  | {
      readonly kind: 'would-not';
      readonly tray: TrayId;
      readonly why: BulkProblem;
      readonly early: EarlyPieces | null;
    };

const grades: readonly Grade[] = ['first', 'second'];

export interface BulkAsked {
  readonly move: BulkMove;
  readonly trays: readonly TrayId[];
  /** Those of which pieces come out before their least time too. */
  readonly early: ReadonlySet<TrayId>;
  /** ms UTC. */
  readonly now: number;
}

/** A line for each tray, in their order: clamps that an earlier tray would take are not there for a later one. */
export function bulkLines(shop: Shop, { move, trays, early, now }: BulkAsked): readonly BulkLine[] {
  let taken: ReadonlyMap<string, number> = new Map<string, number>();
  return trays.map((id): BulkLine => {
    const line = bulkLine(shop, { move, id, early: early.has(id), now });
    if (line.kind === 'would-not' || move !== 'into-clamps') return line;
    const before = new Map(taken);
    for (const [stage, pieces] of placesNeeded(line.steps)) {
      const limit = holdLimit(shop, stage);
      if (!limit) continue;
      const places = limit.resource === null ? `stage/${stage}` : `resource/${limit.resource}`;
      const free = Math.max(0, limit.free - (before.get(places) ?? 0));
      if (pieces > free) return wouldNot(id, isFull({ ...limit, free }));
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

function wouldNot(tray: TrayId, why: BulkProblem, early: EarlyPieces | null = null): BulkLine {
  return { kind: 'would-not', tray, why, early };
}

interface OneAsked {
  readonly move: BulkMove;
  readonly id: TrayId;
  readonly early: boolean;
  readonly now: number;
}

function bulkLine(shop: Shop, { move, id, early: isEarly, now }: OneAsked): BulkLine {
  const tray = shop.trays.get(id);
  if (!tray) return wouldNot(id, { kind: 'no-such-tray' });
  const route = routeOfBatch(shop.registers, tray.batch);
  if (!route) return wouldNot(id, { kind: 'no-such-batch' });
  const there = stagesOfTray(shop, id);
  const wanted = stagesOf(shop, { move, route });
  const cures =
    move === 'into-clamps'
      ? []
      : holds(shop).filter((hold) => hold.tray.tray === id && wanted.includes(hold.stage));
  const early = earlyOf(cures, now);
  const steps = wanted.flatMap((stage) => {
    const at = there.find((each) => each.stage === stage);
    return at
      ? stepsAt(shop, { move, at, cures, route, until: isEarly ? Number.POSITIVE_INFINITY : now })
      : [];
  });
  if (steps.length > 0) return { kind: 'would', tray, steps, early };
  const [soonest] = cures;
  return soonest
    ? wouldNot(id, { kind: 'still-cures', ready: soonest.ready }, early)
    : wouldNot(id, { kind: 'nothing-there' });
}

/** What of these is in a hold before its least time, or behind what is; null for nothing. */
function earlyOf(cures: readonly Hold[], now: number): EarlyPieces | null {
  const short = cures.filter((hold) => leastOf(hold) > now);
  if (short.length === 0) return null;
  // The order in which a tap takes pieces is one of its stage and grade.
  const places = new Map<string, Hold[]>();
  for (const hold of cures) {
    const place = `${hold.stage}|${hold.grade}`;
    places.set(place, [...(places.get(place) ?? []), hold]);
  }
  const unasked = [...places.values()].reduce((sum, inOrder) => sum + mayComeOut(inOrder, now), 0);
  return { pieces: piecesOf(cures) - unasked, least: Math.max(...short.map(leastOf)) };
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
  /** What of the tray is in holds, the soonest ready first. */
  readonly cures: readonly Hold[];
  readonly route: readonly StageId[];
  /** Pieces come out that have had their least time by then, ms UTC. */
  readonly until: number;
}

function stepsAt(
  shop: Shop,
  { move, at: { tray, stage, waiting, held }, cures, route, until }: StepsAt,
): BulkStep[] {
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
  return grades.flatMap((grade) => {
    const pieces = mayComeOut(
      cures.filter((hold) => hold.stage === stage && hold.grade === grade),
      until,
    );
    const spot = { ...where, at: 'held', grade, shown: held[grade] } as const;
    return pieces > 0 ? [{ command: { kind: 'pass', spot, pieces }, next }] : [];
  });
}
