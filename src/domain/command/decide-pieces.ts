import { celsiusOf, curesFrom, cureTime } from '../hold/cure-time.ts';
import { mostEarly, type Outcome, type TrayFacts } from '../log/event.ts';
import type { StageId } from '../log/ids.ts';
import { leastOf, mostPieces, type Place, type StagePlace } from '../log/place.ts';
import { holdLimit, isFull } from '../rollup/hold-limit.ts';
import { placeAfter, placeSentBack, routeOfBatch, stagesBefore } from '../route/route.ts';
import type { VariantFact } from '../set-up/facts.ts';
import { isCleaned } from '../set-up/is-cleaned.ts';
import { factOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';
import { trayFacts } from '../shop/trays.ts';
import type { CommandOf, Spot } from './command.ts';
import { type Circumstances, type Decision, envelopeAt, happens, refuse } from './decision.ts';
import { type Drawn, draw, movesOf, piecesAt } from './draw.ts';
import { partsFitted, partsOfOutcome } from './parts.ts';
import type { Problem } from './problem.ts';
import { judgeWholeNumber } from './whole-number.ts';

/** Pieces taken up at a stage, with all that their next place depends on. */
interface Taken {
  readonly of: TrayFacts;
  readonly route: readonly StageId[];
  readonly bill: VariantFact['bill'];
  readonly drawn: readonly Drawn[];
}

type TakeUp =
  | { readonly ok: true; readonly taken: Taken }
  | { readonly ok: false; readonly problem: Problem };

/**
 * Judges whether `pieces` can be taken up. The measure is what the screen showed when the finger came down, so
 * that a piece in the hand is never refused because another window was quicker.
 */
function takeUp(shop: Shop, { spot, pieces }: { spot: Spot; pieces: number }): TakeUp {
  const record = shop.trays.get(spot.tray);
  if (!record) return { ok: false, problem: { kind: 'no-such-tray' } };
  const of = trayFacts(record);
  const route = routeOfBatch(shop.registers, of.batch);
  if (!route) return { ok: false, problem: { kind: 'no-such-batch' } };
  if (!route.includes(spot.stage))
    return { ok: false, problem: { kind: 'stage-off-route', stage: spot.stage } };
  const there = Math.max(spot.shown, piecesAt(shop.positions, spot));
  if (there <= 0) return { ok: false, problem: { kind: 'nothing-there' } };
  const count = judgeWholeNumber(pieces, { least: 1, most: mostPieces });
  if (!count.ok) return { ok: false, problem: { kind: 'number', problem: count.problem } };
  if (pieces > there) return { ok: false, problem: { kind: 'too-many', there } };
  const bill = factOf(shop.registers, { register: 'variant', id: of.variant })?.bill ?? [];
  return { ok: true, taken: { of, route, bill, drawn: draw(shop.positions, { ...spot, pieces }) } };
}

function againOf(drawn: readonly Drawn[]): number {
  return drawn.reduce((sum, { place, pieces }) => sum + (place.redo === null ? 0 : pieces), 0);
}

export function decidePass(shop: Shop, { spot, pieces }: CommandOf<'pass'>, at: Circumstances): Decision {
  const result = takeUp(shop, { spot, pieces });
  if (!result.ok) return refuse(result.problem);
  const { of, route, bill, drawn } = result.taken;
  const { stage } = spot;
  return happens([
    {
      ...envelopeAt(at),
      kind: 'passed',
      of,
      stage,
      pieces,
      again: againOf(drawn),
      moves: movesOf(of.tray, { drawn, to: (place) => placeAfter(route, place) }),
      parts: partsFitted({ bill, route, stage, pieces }),
      elapsed: at.elapsed,
      ...earlyBy(drawn, at.now),
    },
  ]);
}

/** By how many minutes the piece that has cured least comes out before its least time. */
function earlyBy(drawn: readonly Drawn[], now: number): { readonly early?: number } {
  const left = Math.max(0, ...drawn.map(({ place }) => (place.at === 'held' ? leastOf(place) - now : 0)));
  return left > 0 ? { early: Math.min(mostEarly, Math.ceil(left / 60_000)) } : {};
}

export function decideFlaw(
  shop: Shop,
  { spot, pieces, reasons, outcome }: CommandOf<'flaw'>,
  at: Circumstances,
): Decision {
  if (reasons.length === 0) return refuse({ kind: 'no-reason' });
  const result = takeUp(shop, { spot, pieces });
  if (!result.ok) return refuse(result.problem);
  const { of, route, bill, drawn } = result.taken;
  const { stage, grade } = spot;
  if (outcome.kind === 'sent-back' && !stagesBefore(route, stage).includes(outcome.to)) {
    return refuse({ kind: 'not-an-earlier-stage' });
  }
  const { parts, toClean } = partsOfOutcome(
    { bill, route, stage, pieces },
    { outcome, isCleaned: (id) => isCleaned(factOf(shop.registers, { register: 'part', id })) },
  );
  return happens([
    {
      ...envelopeAt(at),
      kind: 'flawed',
      of,
      stage,
      grade,
      pieces,
      again: againOf(drawn),
      reasons: [...reasons],
      outcome,
      moves: movesOf(of.tray, { drawn, to: (place) => placeOfOutcome(route, { place, outcome }) }),
      parts,
      ...(toClean.length > 0 ? { toClean } : {}),
      elapsed: at.elapsed,
      ...earlyBy(drawn, at.now),
    },
  ]);
}

function placeOfOutcome(
  route: readonly StageId[],
  { place, outcome }: { place: StagePlace; outcome: Outcome },
): Place {
  switch (outcome.kind) {
    case 'mended':
      return placeAfter(route, place);
    case 'second':
      return placeAfter(route, { ...place, grade: 'second' });
    case 'sent-back':
      return placeSentBack(route, { place, to: outcome.to });
    case 'scrapped':
      return { at: 'scrapped' };
  }
}

export function decideLoad(shop: Shop, { spot, pieces }: CommandOf<'load'>, at: Circumstances): Decision {
  const stage = factOf(shop.registers, { register: 'stage', id: spot.stage });
  const limit = holdLimit(shop, spot.stage);
  if (stage?.kind !== 'hold' || !limit) return refuse({ kind: 'no-such-stage' });
  if (pieces > limit.free) return refuse(isFull(limit));
  const result = takeUp(shop, { spot, pieces });
  if (!result.ok) return refuse(result.problem);
  const { of, drawn } = result.taken;
  const time = cureTime(stage, celsiusOf(shop.registers));
  const cure = curesFrom(at.now, time);
  return happens([
    {
      ...envelopeAt(at),
      kind: 'hold-begun',
      of,
      stage: spot.stage,
      moves: movesOf(of.tray, { drawn, to: (place) => heldIn(place, cure) }),
      elapsed: at.elapsed,
      ...(time.celsius === null ? {} : { celsius: time.celsius }),
    },
  ]);
}

/** Of pieces that are loaded once more only the new cure counts. */
function heldIn({ stage, grade, redo }: StagePlace, cure: ReturnType<typeof curesFrom>): Place {
  return { at: 'held', stage, grade, redo, ...cure };
}
