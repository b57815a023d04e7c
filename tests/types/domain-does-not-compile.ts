/** What must not compile: each line below an expectation is an error, or the type check of the tests fails. */
import type { Command, Spot } from '../../src/domain/command/command.ts';
import { decide } from '../../src/domain/command/decide.ts';
import type { Circumstances, Decision } from '../../src/domain/command/decision.ts';
import type { Problem } from '../../src/domain/command/problem.ts';
import type { Draft, Outcome, ShopEvent, VoidEvent } from '../../src/domain/log/event.ts';
import type { ShopDay, SpeciesId, StageId, TrayId } from '../../src/domain/log/ids.ts';
import type { Move, Place } from '../../src/domain/log/place.ts';
import type { ReadEvent } from '../../src/domain/log/read-event.ts';
import type { Stamp } from '../../src/domain/log/stamp.ts';
import { dayAfter } from '../../src/domain/log/zone.ts';
import { firstPassYield } from '../../src/domain/rollup/first-pass-yield.ts';
import type { StageFact } from '../../src/domain/set-up/facts.ts';
import type { RegisterSet } from '../../src/domain/set-up/register.ts';
import { factOf } from '../../src/domain/shop/registers.ts';
import type { Shop } from '../../src/domain/shop/shop.ts';
import { numberOfCode, parseTrayCode } from '../../src/domain/tray/tray-code.ts';

declare const shop: Shop;
declare const at: Circumstances;
declare const spot: Spot;
declare const stage: StageId;
declare const species: SpeciesId;
declare const event: ShopEvent;
declare const place: Place;
declare const day: ShopDay;

export function ids() {
  // @ts-expect-error a bare text is no id of a stage
  const bare: StageId = 'bore';
  // @ts-expect-error a wood is no stage, though both are texts
  const crossed: StageId = species;
  // @ts-expect-error a stage is no tray
  const tray: TrayId = stage;
  // @ts-expect-error a bare text is no tray code
  const number = numberOfCode('A17R');
  // @ts-expect-error a typed code may be none
  const unchecked = numberOfCode(parseTrayCode('A17R'));
  // @ts-expect-error a bare text is no shop day
  const later = dayAfter('2026-03-02', 1);
  return [bare, crossed, tray, number, unchecked, later, dayAfter(day, 1)];
}

export function places() {
  // @ts-expect-error a scrapped piece has no grade
  const scrapped: Place = { at: 'scrapped', grade: 'first' };
  // @ts-expect-error a finished piece stands at no stage
  const finished: Place = { at: 'finished', grade: 'first', stage };
  // @ts-expect-error what cures has a time at which it is ready
  const held: Place = { at: 'held', stage, grade: 'first', redo: null };
  // @ts-expect-error there is no third grade
  const third: Place = { at: 'finished', grade: 'third' };
  // @ts-expect-error only what stands at a stage has one
  const where = place.stage;
  return [scrapped, finished, held, third, where];
}

export function outcomes() {
  // @ts-expect-error a piece is sent back to some stage
  const back: Outcome = { kind: 'sent-back' };
  // @ts-expect-error a mended piece saves no parts
  const mended: Outcome = { kind: 'mended', saved: [] };
  // @ts-expect-error scrap says which parts were saved, if only that none were
  const scrap: Outcome = { kind: 'scrapped' };
  return [back, mended, scrap];
}

export function events(move: Move, stamp: Stamp, undo: VoidEvent) {
  // @ts-expect-error what happened is never changed
  event.day = day;
  // @ts-expect-error a move is never changed
  move.pieces = 2;
  // @ts-expect-error a stamp is never changed
  stamp.tick += 1;
  // @ts-expect-error set-up is taken back by setting it anew, not by a void
  const ofSetUp: VoidEvent['event'] = { ...undo.event, kind: 'set-up' };
  // @ts-expect-error the store numbers an event, not who drafts it
  const numbered: Draft = { ...event, seq: 7 };
  return [ofSetUp, numbered];
}

export function reading(read: ReadEvent) {
  // @ts-expect-error a damaged record has no event
  return read.event;
}

export function commands(decision: Decision, problem: Problem) {
  // @ts-expect-error a tap says how many pieces it is about
  decide(shop, { kind: 'pass', spot }, at);
  // @ts-expect-error a flaw has reasons
  decide(shop, { kind: 'flaw', spot, pieces: 1, outcome: { kind: 'mended' } }, at);
  // @ts-expect-error what a person asks is one of the commands
  const eaten: Command = { kind: 'eat', spot };
  // @ts-expect-error the time comes in as an argument
  decide(shop, { kind: 'begin-spell', stage });
  // @ts-expect-error a refusal has no events
  const drafts = decision.drafts;
  // @ts-expect-error only a full hold has free places to tell of
  const free = problem.free;
  return [eaten, drafts, free];
}

export function setUp(stageFact: StageFact) {
  // @ts-expect-error only a hold has a cure time
  const minutes = stageFact.cureMinutes;
  // @ts-expect-error a wood is no stage
  const crossed: RegisterSet = { register: 'species', id: species, value: stageFact };
  // @ts-expect-error a fact may not be set yet
  const name: string = factOf(shop.registers, { register: 'species', id: species }).name;
  // @ts-expect-error a stage id names no wood
  const wood = factOf(shop.registers, { register: 'species', id: stage });
  return [minutes, crossed, name, wood];
}

export function yields() {
  // @ts-expect-error a yield may be unknown, and unknown is no number
  const share: number = firstPassYield({ good: 0, judged: 0 });
  return share;
}
