import * as v from 'valibot';
import type { Draft, TrayFacts } from '../log/event.ts';
import type { BatchId, SpeciesId, VariantId } from '../log/ids.ts';
import { trayId } from '../log/ids.ts';
import { atStage, type Move, type Place } from '../log/place.ts';
import { routeOfBatch } from '../route/route.ts';
import { meanArrival, placesOf, type Standing } from '../shop/positions.ts';
import { factOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';
import { letterOf } from '../shop/station-letters.ts';
import { trayFacts } from '../shop/trays.ts';
import { numberOfCode, parseTrayCode, trayCode } from '../tray/tray-code.ts';
import type { CommandOf } from './command.ts';
import { type Circumstances, type Decision, envelopeAt, happens, refuse } from './decision.ts';
import { draw, piecesAt } from './draw.ts';
import type { Problem } from './problem.ts';
import { judgeWholeNumber } from './whole-number.ts';

/** Most trays made up by one tap, and most pieces on one tray. */
export const mostTrays = 50;
export const mostOnTray = 999;

/** Codes for the next trays of a station, on from its highest number. Throws RangeError past 99,999. */
export function nextCodes(
  shop: Shop,
  { letter, trays }: { letter: string; trays: number },
): readonly string[] {
  let highest = 0;
  for (const { code } of shop.trays.values()) {
    const known = code.startsWith(letter) ? parseTrayCode(code) : undefined;
    if (known) highest = Math.max(highest, numberOfCode(known));
  }
  return Array.from({ length: trays }, (_, index) => trayCode(letter, highest + 1 + index));
}

/** The letter for new codes, or why there is none: a letter that is another station's would give one code twice. */
function letterFor(
  { registers }: Shop,
  { station, letter }: Circumstances,
): { readonly letter: string } | { readonly problem: Problem } {
  if (letter === null) return { problem: { kind: 'no-letter' } };
  const state = letterOf(registers, station);
  if (state.kind !== 'lost') return { letter };
  return { problem: { kind: 'letter-lost', letter: state.letter, free: state.free } };
}

interface NewTray {
  readonly code: string;
  readonly variant: VariantId;
  readonly species: SpeciesId;
  readonly batch: BatchId;
}

function newTray({ newId }: Circumstances, facts: NewTray): TrayFacts {
  return { tray: v.parse(trayId, newId()), ...facts };
}

/** All that stands somewhere of one tray, brought over to another. */
function carryAll(standings: readonly Standing[], { from, into }: Pick<CarryOver, 'from' | 'into'>): Move[] {
  return standings.flatMap((standing) => {
    const { place, pieces } = standing;
    const since = meanArrival(standing);
    if (pieces > 0) return carryOver({ from, into, place, pieces, since });
    // A count below zero goes along as it is: what the log misses is still to be recounted.
    return pieces < 0 ? carryOver({ from: into, into: from, place, pieces: -pieces, since }) : [];
  });
}

export function decideMakeTrays(shop: Shop, command: CommandOf<'make-trays'>, at: Circumstances): Decision {
  const trays = judgeWholeNumber(command.trays, { least: 1, most: mostTrays });
  if (!trays.ok) return refuse({ kind: 'number', problem: trays.problem });
  const pieces = judgeWholeNumber(command.pieces, { least: 1, most: mostOnTray });
  if (!pieces.ok) return refuse({ kind: 'number', problem: pieces.problem });
  const own = letterFor(shop, at);
  if ('problem' in own) return refuse(own.problem);
  const { variant, batch } = command;
  const species = factOf(shop.registers, { register: 'variant', id: variant })?.species;
  if (!species) return refuse({ kind: 'no-such-variant' });
  const route = routeOfBatch(shop.registers, batch);
  if (!route) return refuse({ kind: 'no-such-batch' });
  const [stage] = route;
  if (!stage) return refuse({ kind: 'route-is-empty' });
  const to: Place = { at: 'waiting', stage, grade: 'first', redo: null };
  const codes = nextCodes(shop, { letter: own.letter, trays: trays.value });
  return happens(
    codes.map((code): Draft => {
      const of = newTray(at, { code, variant, species, batch });
      const moves: Move[] = [{ tray: of.tray, from: null, to, pieces: pieces.value, since: null }];
      return { ...envelopeAt(at), kind: 'tray-made', of, moves };
    }),
  );
}

/** The move out of one tray and the move into the other that bring `pieces` over at the same place. */
function carryOver({ from, into, place, pieces, since }: CarryOver): readonly Move[] {
  return [
    { tray: from, from: place, to: null, pieces, since },
    { tray: into, from: null, to: place, pieces, since },
  ];
}

interface CarryOver {
  readonly from: Move['tray'];
  readonly into: Move['tray'];
  readonly place: Place;
  readonly pieces: number;
  readonly since: number | null;
}

export function decideSplit(shop: Shop, { spot, pieces }: CommandOf<'split'>, at: Circumstances): Decision {
  const record = shop.trays.get(spot.tray);
  if (!record) return refuse({ kind: 'no-such-tray' });
  const own = letterFor(shop, at);
  if ('problem' in own) return refuse(own.problem);
  const of = trayFacts(record);
  const there = piecesAt(shop.positions, spot);
  if (there === 0) return refuse({ kind: 'nothing-there' });
  const count = judgeWholeNumber(pieces, { least: 1, most: there });
  if (!count.ok) return refuse({ kind: 'number', problem: count.problem });
  const into = newTrayLike(shop, of, { at, letter: own.letter });
  const moves = draw(shop.positions, { ...spot, pieces: count.value }).flatMap((drawn) =>
    carryOver({ from: of.tray, into: into.tray, ...drawn }),
  );
  return happens([{ ...envelopeAt(at), kind: 'tray-split', of, into, moves }]);
}

/** A new tray of the same pieces as `of`, under the next code. */
function newTrayLike(
  shop: Shop,
  { variant, species, batch }: TrayFacts,
  { at, letter }: { at: Circumstances; letter: string },
): TrayFacts {
  const [code = ''] = nextCodes(shop, { letter, trays: 1 });
  return newTray(at, { code, variant, species, batch });
}

/**
 * A new code for what a tray has in work: all of it is split off, so that what was tapped under the old code stays told of
 * it, and the new code is known to every version of the app.
 */
export function decideRecode(shop: Shop, { tray }: CommandOf<'recode'>, at: Circumstances): Decision {
  const record = shop.trays.get(tray);
  if (!record) return refuse({ kind: 'no-such-tray' });
  const own = letterFor(shop, at);
  if ('problem' in own) return refuse(own.problem);
  const of = trayFacts(record);
  const into = newTrayLike(shop, of, { at, letter: own.letter });
  const inWork = [...placesOf(shop.positions, tray).values()].filter(({ place }) => atStage(place));
  const moves = carryAll(inWork, { from: tray, into: into.tray });
  if (moves.length === 0) return refuse({ kind: 'nothing-there' });
  return happens([{ ...envelopeAt(at), kind: 'tray-split', of, into, moves }]);
}

export function decideJoin(shop: Shop, { tray, into }: CommandOf<'join'>, at: Circumstances): Decision {
  if (tray === into) return refuse({ kind: 'same-tray' });
  const [source, target] = [shop.trays.get(tray), shop.trays.get(into)];
  if (!source || !target) return refuse({ kind: 'no-such-tray' });
  if (source.variant !== target.variant || source.batch !== target.batch) {
    return refuse({ kind: 'trays-differ', a: source, b: target });
  }
  const moves = carryAll([...placesOf(shop.positions, tray).values()], { from: tray, into });
  if (moves.length === 0) return refuse({ kind: 'nothing-there' });
  return happens([
    { ...envelopeAt(at), kind: 'tray-joined', of: trayFacts(source), into: trayFacts(target), moves },
  ]);
}
