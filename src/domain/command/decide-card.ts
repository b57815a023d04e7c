import * as v from 'valibot';
import type { Draft, ShopEvent } from '../log/event.ts';
import { type StationId, stationId } from '../log/ids.ts';
import { mostPieces } from '../log/place.ts';
import { routeOfBatch } from '../route/route.ts';
import { placesOf } from '../shop/positions.ts';
import { addEvent, emptyShop, type Shop } from '../shop/shop.ts';
import type { CardLine, CommandOf, Spot } from './command.ts';
import { decideFlaw, decidePass } from './decide-pieces.ts';
import { type Circumstances, type Decision, happens, refuse } from './decision.ts';
import { piecesAt } from './draw.ts';
import type { Problem } from './problem.ts';
import { judgeWholeNumber } from './whole-number.ts';

/**
 * Enters a pencilled route card as one act: the events that taps at its stages would have been, in the order of the route.
 * Pieces that a later stage sent back pass the earlier ones once more, as often as the counts of the card need it. A card
 * whose counts do not come out is refused as a whole, at the line that has too many.
 */
export function decideCard(
  shop: Shop,
  { tray, lines }: CommandOf<'enter-card'>,
  at: Circumstances,
): Decision {
  const record = shop.trays.get(tray);
  if (!record) return refuse({ kind: 'no-such-tray' });
  const route = routeOfBatch(shop.registers, record.batch);
  if (!route) return refuse({ kind: 'no-such-batch' });
  if (lines.length === 0) return refuse({ kind: 'card-is-empty' });
  const wrong = lines.findIndex(({ pieces }) => !judgeWholeNumber(pieces, { least: 1, most: mostPieces }).ok);
  const strange = lines[wrong];
  if (strange) return atLine(wrong, numberProblem(strange));
  // Flaws first: what is left then passes.
  const places = (line: CardLine) => 2 * route.indexOf(line.stage) + (line.kind === 'flaw' ? 0 : 1);
  const rest: Rest[] = lines
    .map((line, index) => ({ line, index, left: line.pieces }))
    .toSorted((a, b) => places(a.line) - places(b.line));
  const trial = trialOf(shop, { tray, at });
  for (let goesOn = true; goesOn; ) {
    goesOn = false;
    for (const each of rest) {
      const round = enter(trial, { tray, each });
      if (round.problem) return atLine(each.index, round.problem);
      goesOn ||= round.entered > 0;
      each.left -= round.entered;
    }
  }
  const short = rest.find(({ left }) => left > 0);
  if (short) return atLine(short.index, tooMany(short));
  return happens(trial.drafts);
}

/** A line of the card with what is still to be entered of it. */
interface Rest {
  readonly line: CardLine;
  readonly index: number;
  left: number;
}

function atLine(line: number, problem: Problem): Decision {
  return refuse({ kind: 'card-line', line, problem });
}

function numberProblem({ pieces }: CardLine): Problem {
  const read = judgeWholeNumber(pieces, { least: 1, most: mostPieces });
  return read.ok ? { kind: 'nothing-there' } : { kind: 'number', problem: read.problem };
}

function tooMany({ line, left }: Rest): Problem {
  const there = line.pieces - left;
  return there > 0 ? { kind: 'too-many', there } : { kind: 'nothing-there' };
}

/** A shop of the one tray, in which the lines of the card are tried one after another. */
interface Trial {
  readonly shop: Shop;
  readonly at: Circumstances;
  readonly drafts: Draft[];
}

function trialOf(shop: Shop, { tray, at }: { tray: Spot['tray']; at: Circumstances }): Trial {
  const record = shop.trays.get(tray);
  const trial: Shop = {
    ...emptyShop(),
    registers: shop.registers,
    trays: new Map(record ? [[tray, { ...record }]] : []),
  };
  const places = [...placesOf(shop.positions, tray)].map(
    ([key, standing]) => [key, { ...standing }] as const,
  );
  trial.positions.working.set(tray, new Map(places));
  // What a card tells was done at some time: no minutes are learnt from how fast it is typed in.
  return { shop: trial, at: { ...at, elapsed: null }, drafts: [] };
}

/** Enters as much of a line as there is at its stage by now. */
function enter(
  trial: Trial,
  { tray, each: { line, left } }: { tray: Spot['tray']; each: Rest },
): { readonly entered: number; readonly problem: Problem | null } {
  let entered = 0;
  for (const spot of spotsAt(trial.shop, { tray, stage: line.stage })) {
    const pieces = Math.min(left - entered, spot.shown);
    if (pieces <= 0) continue;
    const decision =
      line.kind === 'pass'
        ? decidePass(trial.shop, { kind: 'pass', spot, pieces }, trial.at)
        : decideFlaw(trial.shop, { ...line, spot, pieces }, trial.at);
    if (decision.kind === 'refused') return { entered, problem: decision.problem };
    for (const draft of decision.drafts) keep(trial, draft);
    entered += pieces;
  }
  return { entered, problem: null };
}

/** Where pieces of the tray can be taken at a stage: out of a cure before those that wait, firsts before seconds. */
function spotsAt(shop: Shop, { tray, stage }: Pick<Spot, 'tray' | 'stage'>): readonly Spot[] {
  return (['first', 'second'] as const).flatMap((grade) =>
    (['held', 'waiting'] as const).map((place) => {
      const spot = { tray, stage, at: place, grade };
      return { ...spot, shown: piecesAt(shop.positions, spot) };
    }),
  );
}

const trialStation: StationId = v.parse(stationId, 'card');

/** Adds a draft to the trial as the event that it will be; its number and stamp are the store's to give. */
function keep({ shop, at, drafts }: Trial, draft: Draft): void {
  drafts.push(draft);
  const stamp = { wall: at.now, tick: 0 };
  addEvent(shop, { ...draft, station: trialStation, seq: drafts.length, stamp } as ShopEvent);
}
