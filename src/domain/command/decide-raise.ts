import type { Draft, TrayFacts } from '../log/event.ts';
import type { Move, Place } from '../log/place.ts';
import { finishedSeconds } from '../rollup/finished-seconds.ts';
import { shelfRow } from '../rollup/shelf-stock.ts';
import { factOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';
import { trayFacts } from '../shop/trays.ts';
import type { CommandOf } from './command.ts';
import { type Circumstances, type Decision, envelopeAt, happens, refuse } from './decision.ts';
import { type Drawn, draw, piecesAt } from './draw.ts';
import type { Problem } from './problem.ts';
import { judgeWholeNumber } from './whole-number.ts';

/** Seconds at a stage were reworked and are firsts again; they stay where they are and go on from there as firsts. */
export function decideRaise(
  shop: Shop,
  { spot, pieces, gone }: CommandOf<'raise'>,
  at: Circumstances,
): Decision {
  const record = shop.trays.get(spot.tray);
  if (!record) return refuse({ kind: 'no-such-tray' });
  const from = { ...spot, grade: 'second' } as const;
  const problem = problemOf(pieces, Math.max(spot.shown, piecesAt(shop.positions, from)));
  if (problem) return refuse(problem);
  const of = trayFacts(record);
  return happens([raised({ of, drawn: draw(shop.positions, { ...from, pieces }), gone }, at)]);
}

/**
 * Finished seconds are firsts again, one event for each tray that they are from: of like pieces nobody can tell which tray
 * they were on, so the oldest trays come first. Only what stands on the shelf can be raised: what is listed or sold is so as a
 * second. Unlike at the bench the log is the measure, because nothing corrects a count of finished pieces.
 */
export function decideRaiseFinished(
  shop: Shop,
  { variant, tray, pieces, gone }: CommandOf<'raise-finished'>,
  at: Circumstances,
): Decision {
  if (!factOf(shop.registers, { register: 'variant', id: variant }))
    return refuse({ kind: 'no-such-variant' });
  const trays = finishedSeconds(shop, variant).filter(({ of }) => tray === null || of.tray === tray);
  const finished = trays.reduce((sum, each) => sum + each.pieces, 0);
  const there = Math.min(finished, shelfRow(shop, { variant, grade: 'second' }).at.shelf);
  const problem = problemOf(pieces, there);
  if (problem) return refuse(problem);
  let left = pieces;
  const drafts: Draft[] = [];
  for (const { of, pieces: has, since } of trays) {
    const taken = Math.min(left, has);
    left -= taken;
    const drawn = [{ place: { at: 'finished', grade: 'second' }, pieces: taken, since } as const];
    if (taken > 0) drafts.push(raised({ of, drawn, gone }, at));
  }
  return happens(drafts);
}

function problemOf(pieces: number, there: number): Problem | undefined {
  if (there <= 0) return { kind: 'no-seconds' };
  const count = judgeWholeNumber(pieces, { least: 1, most: there });
  if (count.ok) return undefined;
  return count.problem.kind === 'too-large'
    ? { kind: 'too-many', there }
    : { kind: 'number', problem: count.problem };
}

interface Raised extends Pick<CommandOf<'raise'>, 'gone'> {
  readonly of: TrayFacts;
  readonly drawn: readonly (Omit<Drawn, 'place'> & { readonly place: Extract<Place, { grade: unknown }> })[];
}

function raised({ of, drawn, gone }: Raised, at: Circumstances): Draft {
  return {
    ...envelopeAt(at),
    kind: 'raised',
    of,
    pieces: drawn.reduce((sum, { pieces }) => sum + pieces, 0),
    reasons: [...new Set(gone)],
    // Out of the tray and in again: that way they have been at their stage as long as before.
    moves: drawn.flatMap(({ place, pieces, since }): Move[] => [
      { tray: of.tray, from: place, to: null, pieces, since },
      { tray: of.tray, from: null, to: { ...place, grade: 'first' }, pieces, since },
    ]),
  };
}
