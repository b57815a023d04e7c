import type { Random } from '../../src/domain/chance/seeded-random.ts';
import type { Command, Spot } from '../../src/domain/command/command.ts';
import type { Outcome, OutcomeKind } from '../../src/domain/log/event.ts';
import type { PersonId, StageId, StationId } from '../../src/domain/log/ids.ts';
import type { Grade } from '../../src/domain/log/place.ts';
import { holdLimit } from '../../src/domain/rollup/hold-limit.ts';
import { holds } from '../../src/domain/rollup/holds.ts';
import { type AtStage, traysAtStage } from '../../src/domain/rollup/waiting.ts';
import { stagesBefore } from '../../src/domain/route/route.ts';
import { factOf } from '../../src/domain/shop/registers.ts';
import { parts, stageIds } from './demo-facts.ts';
import { drawWeighted } from './draw-weighted.ts';
import { drawFlaw, drawOutcome, minutesOf } from './flaw-rates.ts';
import type { Doer, Teller } from './teller.ts';

/** One person at one station, with the moment (ms UTC) up to which they have worked. */
export interface Hand {
  readonly station: StationId;
  readonly letter: string;
  readonly person: PersonId;
  at: number;
  stage: StageId | null;
  /** Pieces that they have done, by stage. */
  readonly done: Map<StageId, number>;
}

export interface Shift {
  readonly teller: Teller;
  readonly random: Random;
  readonly day: number;
  /** End of the stretch, ms UTC. */
  readonly until: number;
}

const minute = 60_000;
/** Pieces that a good shop leaves in front of every stage, from this working day on. */
const buffer = 3;
const buffersFrom = 7;
const grades: readonly Grade[] = ['first', 'second'];

/** Lets a hand work off the tray that waits longest at a stage; false when none does. */
export function workAt(hand: Hand, { stage, shift }: { stage: StageId; shift: Shift }): boolean {
  const trays = traysAtStage(shift.teller.shop, stage).filter(
    ({ waiting }) => waiting.first + waiting.second > 0,
  );
  const [tray] = trays;
  if (!tray) return false;
  turnTo(hand, { stage, shift });
  workTray(hand, { tray, shift, leave: trays.length === 1 && shift.day >= buffersFrom ? buffer : 0 });
  return true;
}

/** Lets a hand do the next useful thing; false when there is nothing to do before the stretch ends. */
export function workOn(hand: Hand, shift: Shift): boolean {
  tendHolds(hand, shift);
  const stage = chooseStage(shift);
  return stage !== undefined && workAt(hand, { stage, shift });
}

/** Ends the hand's spell, as at a break. */
export function rest(hand: Hand, teller: Teller): void {
  if (hand.stage) teller.tell({ kind: 'end-spell', stage: hand.stage }, doer(hand, 0));
  hand.stage = null;
}

function turnTo(hand: Hand, { stage, shift }: { stage: StageId; shift: Shift }): void {
  if (hand.stage === stage) return;
  rest(hand, shift.teller);
  hand.stage = stage;
  shift.teller.tell({ kind: 'begin-spell', stage }, doer(hand, null));
}

/** Takes out what has cured and loads what waits, as far as clamps and racks go. */
export function tendHolds(hand: Hand, { teller, until }: Shift): void {
  for (const hold of holds(teller.shop)) {
    const took = 0.3 * hold.pieces;
    if (hold.ready > hand.at || hand.at + took * minute > until) continue;
    const spot: Spot = {
      tray: hold.tray.tray,
      stage: hold.stage,
      at: 'held',
      grade: hold.grade,
      shown: hold.pieces,
    };
    spend(hand, took);
    teller.tell({ kind: 'pass', spot, pieces: hold.pieces }, doer(hand, null));
  }
  for (const stage of stageIds) {
    for (const at of traysAtStage(teller.shop, stage)) {
      const free = holdLimit(teller.shop, stage)?.free ?? 0;
      for (const grade of grades) {
        const shown = at.waiting[grade];
        const took = 0.5 * shown;
        if (shown <= 0 || shown > free || hand.at + took * minute > until) continue;
        spend(hand, took);
        const spot: Spot = { tray: at.tray.tray, stage, at: 'waiting', grade, shown };
        teller.tell({ kind: 'load', spot, pieces: shown }, doer(hand, null));
      }
    }
  }
}

/** A stage of handwork, the likelier the more waits there; the last tray of a stage is left while others have more. */
function chooseStage({ teller, random }: Shift): StageId | undefined {
  const waiting = new Map<StageId, number>();
  for (const [key, pieces] of teller.shop.ledger.wip) {
    const stage = stageIds.find((each) => key.startsWith(`${each}|`));
    if (stage && key.endsWith('|waiting')) waiting.set(stage, (waiting.get(stage) ?? 0) + pieces);
  }
  return drawWeighted(stageIds.filter(isHandwork), {
    weight: (stage) => Math.max(0, (waiting.get(stage) ?? 0) - buffer),
    random,
  });
}

function isHandwork(stage: StageId): boolean {
  return minutesOf(stage, 1) !== undefined;
}

/** Works through a tray, down to the few pieces that are left as a buffer for the stage after. */
function workTray(hand: Hand, { tray, shift, leave }: { tray: AtStage; shift: Shift; leave: number }): void {
  const { teller, random, until } = shift;
  const bulk = factOf(teller.shop.registers, { register: 'stage', id: tray.stage })?.bulk ?? false;
  for (const grade of grades) {
    let left = tray.waiting[grade] - leave;
    while (left > 0) {
      const pieces = bulk ? left : 1;
      const done = hand.done.get(tray.stage) ?? 0;
      const took = (minutesOf(tray.stage, done + 1) ?? 1) * pieces * (0.7 + 0.6 * random());
      if (hand.at + took * minute > until) return;
      const elapsed = spend(hand, took);
      hand.done.set(tray.stage, done + pieces);
      const spot: Spot = {
        tray: tray.tray.tray,
        stage: tray.stage,
        at: 'waiting',
        grade,
        shown: left + leave,
      };
      const command = commandFor({ tray, spot, pieces, shift });
      const events = teller.tell(command, doer(hand, elapsed));
      left -= command.kind === 'flaw' ? 1 : pieces;
      if (command.kind === 'pass' && !bulk && random() < 0.008)
        takeBackAndTapAgain(hand, { teller, command, events });
    }
  }
}

/** A slip of the thumb: undone at once, tapped again. */
function takeBackAndTapAgain(
  hand: Hand,
  { teller, command, events }: { teller: Teller; command: Command; events: ReturnType<Teller['tell']> },
): void {
  const slip = events.filter((event) => event.kind === 'passed');
  spend(hand, 0.05);
  teller.tell({ kind: 'undo', events: slip }, doer(hand, null));
  teller.tell(command, doer(hand, spend(hand, 0.1)));
}

interface Tap {
  readonly tray: AtStage;
  readonly spot: Spot;
  readonly pieces: number;
  readonly shift: Shift;
}

function commandFor({ tray, spot, pieces, shift }: Tap): Extract<Command, { kind: 'pass' | 'flaw' }> {
  const visit = { stage: spot.stage, species: tray.tray.species, day: shift.day };
  const reason = drawFlaw(visit, shift.random);
  if (reason === null) return { kind: 'pass', spot, pieces };
  const outcome = outcomeOf(drawOutcome(reason, shift.random), { spot });
  return { kind: 'flaw', spot, pieces: 1, reasons: [reason], outcome };
}

function outcomeOf(kind: OutcomeKind, { spot }: { spot: Spot }): Outcome {
  switch (kind) {
    case 'mended':
      return { kind };
    case 'second':
      return spot.grade === 'first' ? { kind } : { kind: 'mended' };
    case 'scrapped':
      return { kind, saved: [parts.core] };
    case 'sent-back': {
      const to = stagesBefore(stageIds, spot.stage).findLast(isHandwork);
      return to ? { kind, to } : { kind: 'mended' };
    }
  }
}

/** Moves the hand's clock on; returns the milliseconds that went by. */
function spend(hand: Hand, minutes: number): number {
  const elapsed = Math.round(minutes * minute);
  hand.at += elapsed;
  return elapsed;
}

export function doer({ station, letter, person, at }: Hand, elapsed: number | null): Doer {
  return { station, letter, person, at, elapsed };
}
