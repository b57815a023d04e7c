import type { StageId } from '../log/ids.ts';
import { type StudyRoutes, stagesOf } from './study-routes.ts';
import type { TapTable } from './tap-table.ts';

export interface HandsQuestion {
  readonly routes: StudyRoutes;
  /** Stages that hands can go on with at once; not those that wait for clamps. */
  readonly bench: ReadonlySet<StageId>;
  /** Pieces that wait at those stages after the last tap of the table. */
  readonly waiting: number;
  /** Pieces that keep a pair of hands in work: a tray. */
  readonly each: number;
  readonly people: number;
}

/**
 * How many of the hands there was work for, as a fraction, over a stretch of time: 0 while everything cures. Taps are undone
 * from the last one back, so that it is known what waited after each. Trays that were made up later count as there
 * before: their blanks could have been taken up.
 *
 * @returns a function of a stretch, ms UTC; for stretches before the first tap it is as before that
 */
export function handsWanted(
  table: TapTable,
  question: HandsQuestion,
): (stretch: { readonly from: number; readonly to: number }) => number {
  const { each, people } = question;
  const shareOf = (waiting: number) => Math.min(1, Math.max(0, waiting / (each * people)));
  const walls = table.columns.wall.subarray(0, table.length);
  const before = waitingBefore(table, question);
  return ({ from, to }) => {
    let sum = 0;
    let row = walls.findIndex((wall) => wall > from);
    if (row < 0) row = walls.length;
    for (let at = from; at < to; row += 1) {
      const until = Math.min(to, Math.max(at, walls[row] ?? to));
      sum += shareOf(before[row] ?? question.waiting) * (until - at);
      at = until;
      if (row >= walls.length) break;
    }
    return to > from ? sum / (to - from) : 0;
  };
}

/** Pieces that waited before each tap. */
function waitingBefore(table: TapTable, { routes, bench, waiting }: HandsQuestion): Float64Array {
  const { kind, tray } = table.columns;
  const before = new Float64Array(table.length);
  let now = waiting;
  for (let row = table.length - 1; row >= 0; row -= 1) {
    const what = table.kinds[kind[row] ?? -1];
    const of = table.trays[tray[row] ?? -1];
    if (what?.kind === 'visit' && of) {
      const route = stagesOf(routes, [of.batch]);
      const next = what.flaw?.to ?? route[route.indexOf(what.stage) + 1];
      const isGone = what.flaw?.outcome === 'scrapped' || next === undefined;
      if (bench.has(what.stage)) now += what.pieces;
      if (!isGone && bench.has(next)) now -= what.pieces;
    }
    before[row] = now;
  }
  return before;
}
