import type { ShopDay, StageId } from '../log/ids.ts';
import { dayAfter } from '../log/zone.ts';
import { longestStretch } from '../shop/days.ts';
import type { PieceMinutes } from './piece-minutes.ts';
import { type StudyRoutes, stagesUpTo } from './study-routes.ts';
import { tapCounts } from './tap-counts.ts';
import { type TapFilter, tapFilter } from './tap-filter.ts';
import type { TapTable } from './tap-table.ts';

/** Minutes of work at one stage on one day, or in the week that begins on that Monday. */
export interface WorkedTime {
  readonly day: ShopDay;
  readonly stage: StageId;
  readonly minutes: number;
}

/**
 * Minutes of work inside spells by shop day and stage, in their order: what the day's sheet has as worked time. Loading of
 * cures and the rest of a spell after its last tap count; stretches beyond `longestStretch` are breaks.
 */
export function workedByDay(table: TapTable, filter: TapFilter = {}): readonly WorkedTime[] {
  const { kind, day, elapsed } = table.columns;
  const isWanted = tapFilter(table, filter);
  const sums = new Map<number, number>();
  for (let row = 0; row < table.length; row += 1) {
    const ms = elapsed[row] ?? -1;
    if (ms <= 0 || ms > longestStretch || !isWanted(row)) continue;
    const cell = (day[row] ?? 0) * table.kinds.length + (kind[row] ?? 0);
    sums.set(cell, (sums.get(cell) ?? 0) + ms);
  }
  const cells = [...sums].flatMap(([cell, ms]) => {
    const on = table.days[Math.floor(cell / table.kinds.length)];
    const stage = table.kinds[cell % table.kinds.length]?.stage;
    return on === undefined || stage === undefined ? [] : [{ day: on, stage, minutes: ms / 60_000 }];
  });
  return addedUp(cells);
}

/** The same by week. */
export function workedByWeek(days: readonly WorkedTime[]): readonly WorkedTime[] {
  return addedUp(days.map((each) => ({ ...each, day: mondayOf(each.day) })));
}

/** The Monday of a day's week (ISO 8601). */
export function mondayOf(day: ShopDay): ShopDay {
  // 1 January 1970 was a Thursday.
  const sinceMonday = (Math.floor(Date.parse(day) / 86_400_000) + 3) % 7;
  return dayAfter(day, -((sinceMonday + 7) % 7));
}

function addedUp(cells: readonly WorkedTime[]): readonly WorkedTime[] {
  const sums = new Map<string, WorkedTime>();
  for (const cell of cells) {
    const key = `${cell.day}|${cell.stage}`;
    sums.set(key, { ...cell, minutes: cell.minutes + (sums.get(key)?.minutes ?? 0) });
  }
  return [...sums].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, cell]) => cell);
}

/** How much work went into pieces that were scrapped, by the usual minutes of a piece. */
export interface ScrappedTime {
  /** Minutes that had gone into what was scrapped. */
  readonly scrapped: number;
  /** Minutes of all judged visits. */
  readonly all: number;
  /** scrapped ÷ all; undefined while no time is known. */
  readonly share: number | undefined;
}

/**
 * Both sums are of usual minutes (`pieceMinutes`) and not of what the taps have: which of the pieces on a tray took longer
 * cannot be known, and so breaks play no part. A piece costs the stages of its route up to where it was scrapped; stages
 * without a known time count in neither sum. Of a period, a person or a stage: what was scrapped there, with the minutes
 * of the stages before, whenever and by whomever they were worked. The share can then pass 1.
 */
export function scrappedTime(
  table: TapTable,
  {
    routes,
    filter,
    pieceMinutes,
  }: {
    readonly routes: StudyRoutes;
    readonly filter?: TapFilter | undefined;
    readonly pieceMinutes: PieceMinutes;
  },
): ScrappedTime {
  let scrapped = 0;
  let all = 0;
  for (const { what, of, taps } of tapCounts(table, filter)) {
    if (what.kind !== 'visit' || !of) continue;
    const pieces = taps * what.pieces;
    all += pieces * (pieceMinutes(what.stage, of.species) ?? 0);
    if (what.flaw?.outcome !== 'scrapped') continue;
    for (const stage of stagesUpTo(routes, { batch: of.batch, stage: what.stage }))
      scrapped += pieces * (pieceMinutes(stage, of.species) ?? 0);
  }
  return { scrapped, all, share: all > 0 ? scrapped / all : undefined };
}
