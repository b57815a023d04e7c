import { celsiusOf, curesFrom, cureTime } from '../hold/cure-time.ts';
import type { BatchId } from '../log/ids.ts';
import { type Move, mostPieces, type Place } from '../log/place.ts';
import { routeOfBatch } from '../route/route.ts';
import { problemOfNote, tidyText } from '../set-up/text.ts';
import { meanArrival } from '../shop/positions.ts';
import { factOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';
import { trayFacts } from '../shop/trays.ts';
import type { CommandOf, Spot } from './command.ts';
import { type Circumstances, type Decision, envelopeAt, happens, refuse } from './decision.ts';
import { draw, piecesAt, standingAt } from './draw.ts';
import type { Problem } from './problem.ts';
import { judgeWholeNumber } from './whole-number.ts';

type CountedSpot = Omit<Spot, 'shown'>;

/** Corrects what the log holds at a spot to what a person has counted there. */
export function decideRecount(
  shop: Shop,
  { spot, counted, why, note }: CommandOf<'recount'>,
  at: Circumstances,
): Decision {
  const record = shop.trays.get(spot.tray);
  if (!record) return refuse({ kind: 'no-such-tray' });
  const count = judgeWholeNumber(counted, { least: 0, most: mostPieces });
  if (!count.ok) return refuse({ kind: 'number', problem: count.problem });
  const text = problemOfNote(note);
  if (text) return refuse({ kind: 'text', problem: text });
  const there = piecesAt(shop.positions, spot);
  const moves = [...movesToNought(shop, spot)];
  if (count.value > there) {
    const found = placeOfFound(shop, { spot, batch: record.batch, now: at.now });
    if ('kind' in found) return refuse(found);
    moves.push({ tray: spot.tray, from: null, to: found, pieces: count.value - there, since: null });
  } else moves.push(...movesOfMissing(shop, { spot, pieces: there - count.value }));
  if (moves.length === 0) return refuse({ kind: 'count-is-right' });
  const of = trayFacts(record);
  return happens([{ ...envelopeAt(at), kind: 'recounted', of, moves, why, note: tidyText(note) }]);
}

/** Brings every count below zero at the spot up to zero, as of when it went below: the age of later pieces is theirs. */
function movesToNought({ positions }: Shop, spot: CountedSpot): readonly Move[] {
  return standingAt(positions, spot)
    .filter(({ pieces }) => pieces < 0)
    .map((standing) => ({
      tray: spot.tray,
      from: null,
      to: standing.place,
      pieces: -standing.pieces,
      since: meanArrival(standing),
    }));
}

function movesOfMissing(
  { positions }: Shop,
  { spot, pieces }: { spot: CountedSpot; pieces: number },
): readonly Move[] {
  return draw(positions, { ...spot, pieces }).map((drawn) => ({
    tray: spot.tray,
    from: drawn.place,
    to: null,
    pieces: drawn.pieces,
    since: drawn.since,
  }));
}

/** Where found pieces stand: with those that are there, else where the stage and its route have a place for them. */
function placeOfFound(
  shop: Shop,
  { spot, batch, now }: { spot: CountedSpot; batch: BatchId; now: number },
): Place | Problem {
  const { stage, grade } = spot;
  const [standing] = standingAt(shop.positions, spot);
  if (standing) return standing.place;
  if (!routeOfBatch(shop.registers, batch)?.includes(stage)) return { kind: 'stage-off-route', stage };
  if (spot.at === 'waiting') return { at: 'waiting', stage, grade, redo: null };
  const fact = factOf(shop.registers, { register: 'stage', id: stage });
  if (fact?.kind !== 'hold') return { kind: 'no-such-stage' };
  // Nobody knows since when they cure: the whole cure from now on is the safe guess.
  const cure = curesFrom(now, cureTime(fact, celsiusOf(shop.registers)));
  return { at: 'held', stage, grade, redo: null, ...cure };
}
