import type { OutcomeKind } from '../log/event.ts';
import type { ReasonId } from '../log/ids.ts';
import type { PieceMinutes } from './piece-minutes.ts';
import { type StudyRoutes, stagesUpTo } from './study-routes.ts';
import { type TapCount, tapCounts } from './tap-counts.ts';
import type { TapFilter } from './tap-filter.ts';
import type { Flaw, Visit } from './tap-kind.ts';
import type { TapTable } from './tap-table.ts';

/** What one reason has cost. */
export interface ParetoRow {
  readonly reason: ReasonId;
  /** Flawed pieces; a piece with two reasons stands under both. */
  readonly pieces: number;
  readonly byOutcome: Readonly<Record<OutcomeKind, number>>;
  readonly minutes: LostMinutes;
}

interface LostMinutes {
  /** Minutes that had gone into pieces which were scrapped. */
  readonly scrapped: number;
  /** Minutes of the stages that pieces which were sent back go through again. */
  readonly again: number;
  /** Pieces of which minutes are missing, since a stage that they had been through has no known time. */
  readonly partly: number;
}

export interface FlawPareto {
  /** By pieces, the most first; of two that are alike the one that cost more minutes. */
  readonly reasons: readonly ParetoRow[];
  /** Every flawed piece once, whatever the number of its reasons. */
  readonly pieces: number;
  readonly minutes: LostMinutes;
}

export interface ParetoQuestion {
  readonly routes: StudyRoutes;
  readonly filter?: TapFilter | undefined;
  /** Minutes that a piece takes, see piece-minutes.ts. */
  readonly pieceMinutes: PieceMinutes;
}

/**
 * Flaws by reason, by count and by minutes lost. The minutes of a scrapped piece are those that a piece of its wood takes
 * at each stage of its route up to the one where it was scrapped; those of a piece that was sent back are what it takes
 * from the stage it goes back to up to the one that sent it. Mended pieces and seconds lose none: what they lose is money.
 */
export function flawPareto(table: TapTable, { routes, filter, pieceMinutes }: ParetoQuestion): FlawPareto {
  const byReason = new Map<ReasonId, Sums>();
  const all = noSums();
  for (const { what, of, taps } of tapCounts(table, filter)) {
    if (what.kind !== 'visit' || !what.flaw || !of) continue;
    const cost = costOf({ visit: what, flaw: what.flaw, of }, { routes, pieceMinutes });
    const flawed = { outcome: what.flaw.outcome, pieces: taps * what.pieces, cost };
    enter(all, flawed);
    for (const reason of what.flaw.reasons) {
      const sums = byReason.get(reason) ?? noSums();
      byReason.set(reason, sums);
      enter(sums, flawed);
    }
  }
  const reasons = [...byReason]
    .map(([reason, sums]): ParetoRow => ({ reason, ...sums }))
    .sort((a, b) => b.pieces - a.pieces || lost(b) - lost(a) || (a.reason < b.reason ? -1 : 1));
  return { reasons, pieces: all.pieces, minutes: all.minutes };
}

const lost = ({ minutes }: ParetoRow) => minutes.scrapped + minutes.again;

interface Sums {
  pieces: number;
  readonly byOutcome: Record<OutcomeKind, number>;
  readonly minutes: { scrapped: number; again: number; partly: number };
}

const noSums = (): Sums => ({
  pieces: 0,
  byOutcome: { mended: 0, 'sent-back': 0, second: 0, scrapped: 0 },
  minutes: { scrapped: 0, again: 0, partly: 0 },
});

/** What one piece has cost, and whether all of that is known. */
interface Cost {
  readonly minutes: number;
  readonly isWhole: boolean;
}

interface Flawed {
  readonly outcome: OutcomeKind;
  readonly pieces: number;
  readonly cost: Cost;
}

function enter(sums: Sums, { outcome, pieces, cost }: Flawed): void {
  sums.pieces += pieces;
  sums.byOutcome[outcome] += pieces;
  if (outcome === 'scrapped') sums.minutes.scrapped += pieces * cost.minutes;
  if (outcome === 'sent-back') sums.minutes.again += pieces * cost.minutes;
  if (!cost.isWhole) sums.minutes.partly += pieces;
}

function costOf(
  { visit, flaw, of }: { visit: Visit; flaw: Flaw; of: NonNullable<TapCount['of']> },
  { routes, pieceMinutes }: Pick<ParetoQuestion, 'routes' | 'pieceMinutes'>,
): Cost {
  if (flaw.outcome === 'mended' || flaw.outcome === 'second') return { minutes: 0, isWhole: true };
  const passed = stagesUpTo(routes, { batch: of.batch, stage: visit.stage });
  const stages = flaw.to === null ? passed : passed.slice(Math.max(0, passed.indexOf(flaw.to)));
  const minutes = stages.map((stage) => pieceMinutes(stage, of.species));
  return {
    minutes: minutes.reduce<number>((sum, each) => sum + (each ?? 0), 0),
    isWhole: !minutes.includes(undefined),
  };
}
