/**
 * The model of the forecast as one writes it on a heap: what happens next comes out of one queue, each list of lots that
 * wait is another, lots are objects. Draws are those of the app, so that each replication has the same end.
 */
import FlatQueue from 'flatqueue';
import { partDone } from '../../../src/domain/plan/forecast/calendar.ts';
import { clearFloor } from '../../../src/domain/plan/forecast/clear-floor.ts';
import type { CompiledPlan } from '../../../src/domain/plan/forecast/compiled-plan.ts';
import {
  drawBeliefs,
  flawKind,
  nextGap,
  timeTogether,
  unloadsFirst,
  whim,
} from '../../../src/domain/plan/forecast/draw-beliefs.ts';
import { newFloor } from '../../../src/domain/plan/forecast/floor.ts';
import { bitsAt, keyOf } from '../../../src/domain/plan/forecast/keyed-random.ts';
import { ORDER } from '../../../src/domain/plan/forecast/replicate.ts';

interface Lot {
  step: number;
  firsts: number;
  seconds: number;
  redo: number;
  /** Whether it has cured where it stands. */
  isCured: boolean;
}

interface Person {
  lot: Lot | null;
  /** Loading, unloading or work, at the stage of the lot. */
  isLoading: boolean;
  stretch: number;
  isIdle: boolean;
  begun: number;
}

/** Of things that happen at once lots are ready first, then people are free in their order. */
const order = (time: number, person: number) => time + (person + 1) / 1024;

interface End {
  /** When the last piece leaves. */
  readonly doneAt: number;
  /** Good ones by then: variant × mark. */
  readonly good: Int32Array;
  /** By stage, over all replications so far. */
  readonly worked: Float64Array;
  readonly pieceVisits: Float64Array;
}

/** Gives what works off one replication. */
export function onHeap(
  plan: CompiledPlan,
  marks: readonly number[],
): (seed: number, replication: number) => End {
  // For its draws alone.
  const luck = newFloor(plan, marks);
  const { calendar, begin } = plan;
  const lists = plan.classes * 2 * plan.stages;
  const events = new FlatQueue<number | Lot>();
  const waiting = Array.from({ length: lists }, () => new FlatQueue<Lot>());
  const people: Person[] = [];
  let free: number[] = [];
  let [left, doneAt, came, broughtFirst] = [0, 0, 0, 0];
  let visits: number[] = [];
  let gaps: number[] = [];
  let good = new Int32Array();
  let mark = 0;
  /** By stage, over all replications. */
  const worked = plan.cureMs.map(() => 0);
  const pieceVisits = plan.cureMs.map(() => 0);

  const stageOf = (lot: Lot) => plan.stageOf[lot.step] ?? 0;
  const cureOf = (stage: number) => plan.cureMs[stage] ?? -1;
  const count = (lot: Lot) => lot.firsts + lot.seconds;

  function wait(lot: Lot): void {
    const due = plan.classOf[plan.variantOf[lot.step] ?? 0] ?? 0;
    came += 1;
    waiting[due * 2 * plan.stages + 2 * stageOf(lot) + (lot.isCured ? 0 : 1)]?.push(lot, came);
  }

  /** Whether a lot of it can be begun on, which is then the first. */
  function canBegin(queue: FlatQueue<Lot>): boolean {
    const lot = queue.peek();
    if (!lot || lot.isCured) return lot !== undefined;
    const stage = stageOf(lot);
    const resource = plan.resourceOf[stage] ?? 0;
    const places = free[resource] ?? 0;
    if (cureOf(stage) < 0 || places <= 0) return places > 0;
    const passed: { readonly lot: Lot; readonly came: number }[] = [];
    let isFound = false;
    while (!isFound && queue.length > 0) {
      const came = queue.peekValue() ?? 0;
      const next = queue.pop();
      if (!next) break;
      isFound = places >= luck.fills * Math.min(count(next), plan.capacity[resource] ?? 0);
      const isMoved = isFound && passed.length > 0;
      if (isMoved) broughtFirst -= 1;
      passed.push({ lot: next, came: isMoved ? broughtFirst : came });
    }
    for (const each of passed) queue.push(each.lot, each.came);
    return isFound;
  }

  const isAmong = (list: number, among: 'holds' | 'benches' | 'all') =>
    among === 'all' || cureOf((list % (2 * plan.stages)) >> 1) >= 0 === (among === 'holds');

  /** Any of the lists whose first lot can be begun on, each lot in them as likely; −1 where there is none. */
  function anyList(share: number, among: 'holds' | 'all'): number {
    const able = [...waiting.entries()].filter(([list, queue]) => isAmong(list, among) && canBegin(queue));
    let left = Math.floor(share * able.reduce((all, [, queue]) => all + queue.length, 0));
    for (const [list, queue] of able) {
      left -= queue.length;
      if (left < 0) return list;
    }
    return -1;
  }

  function chosenList(): number {
    const share = whim(luck);
    if (share < 0) return firstList();
    const hold = luck.tends ? anyList(share, 'holds') : -1;
    return hold >= 0 ? hold : anyList(share, 'all');
  }

  /** The list by the rule. */
  function firstList(): number {
    for (let due = 0; due < plan.classes; due += 1) {
      const list = luck.tends ? latest(due, 'holds') : latest(due, 'all');
      if (list >= 0) return list;
      const bench = luck.tends ? latest(due, 'benches') : -1;
      if (bench >= 0) return bench;
    }
    return -1;
  }

  function latest(due: number, among: 'holds' | 'benches' | 'all'): number {
    for (let of = 2 * plan.stages - 1; of >= 0; of -= 1) {
      const list = due * 2 * plan.stages + of;
      const queue = waiting[list];
      if (!queue || !isAmong(list, among) || !canBegin(queue)) continue;
      const unloading = cureOf(of >> 1) >= 0 && of % 2 === 1 ? (waiting[list - 1]?.length ?? 0) : 0;
      return unloadsFirst(luck, unloading, queue.length) ? list - 1 : list;
    }
    return -1;
  }

  function findWork(who: number, time: number): void {
    const person = people[who];
    if (!person) return;
    const beyond = calendar.first[who + 1] ?? 0;
    while (person.stretch < beyond && (calendar.to[person.stretch] ?? 0) <= time) person.stretch += 1;
    if (person.stretch === beyond) return;
    const opens = calendar.from[person.stretch] ?? 0;
    if (opens > time) {
      events.push(who, order(opens, who));
      return;
    }
    const queue = waiting[chosenList()];
    const lot = queue?.peek();
    if (queue && lot) {
      luck.picks += 1;
      beginWork(who, person, queue, lot, time);
      return;
    }
    person.isIdle = true;
  }

  function beginWork(who: number, person: Person, queue: FlatQueue<Lot>, lot: Lot, time: number): void {
    const stage = stageOf(lot);
    const resource = plan.resourceOf[stage] ?? 0;
    const isLoading = cureOf(stage) >= 0 && !lot.isCured;
    const fit = isLoading ? Math.min(count(lot), free[resource] ?? 0) : count(lot);
    const visit = visits[lot.step] ?? 0;
    visits[lot.step] = visit + 1;
    const each = (isLoading ? luck.loadMs[lot.step] : luck.workMs[lot.step]) ?? 0;
    const third = (isLoading ? plan.loading.third[lot.step] : plan.work.third[lot.step]) ?? 0;
    const bits = bitsAt(luck.timeKey[lot.step] ?? 0, visit);
    const ms = Math.floor(luck.changeMs + timeTogether(each * fit, third / Math.sqrt(fit), bits) + 0.5);
    const before = (calendar.worked[person.stretch] ?? 0) + time - (calendar.from[person.stretch] ?? 0);
    const left = (calendar.untilAway[person.stretch] ?? 0) - before;
    const pieces = ms <= left || fit === 1 ? fit : Math.max(1, Math.floor((fit * left) / ms));
    const taken = pieces === fit ? ms : Math.floor((ms * pieces) / fit + 0.5);
    worked[stage] = (worked[stage] ?? 0) + taken;
    if (!isLoading) pieceVisits[stage] = (pieceVisits[stage] ?? 0) + pieces;
    if (pieces === count(lot)) {
      queue.pop();
      person.lot = lot;
    } else {
      const firsts = Math.min(pieces, lot.firsts);
      person.lot = { ...lot, firsts, seconds: pieces - firsts };
      lot.firsts -= firsts;
      lot.seconds -= pieces - firsts;
      if (isLoading && begin.isShuffled) {
        queue.pop();
        wait(lot);
      }
    }
    if (isLoading) free[resource] = (free[resource] ?? 0) - pieces;
    else if (cureOf(stage) < 0) free[resource] = (free[resource] ?? 0) - 1;
    person.isLoading = isLoading;
    person.begun = time;
    const beyond = calendar.first[who + 1] ?? 0;
    while (person.stretch + 1 < beyond && before + taken > (calendar.worked[person.stretch + 1] ?? 0))
      person.stretch += 1;
    const end =
      (calendar.from[person.stretch] ?? 0) + before + taken - (calendar.worked[person.stretch] ?? 0);
    if (end <= (calendar.to[person.stretch] ?? 0)) events.push(who, order(end, who));
  }

  function endWork(person: Person, time: number): void {
    const { lot } = person;
    if (!lot) return;
    person.lot = null;
    const stage = stageOf(lot);
    const cure = cureOf(stage);
    if (person.isLoading) {
      lot.isCured = true;
      events.push(lot, time + cure);
      return;
    }
    const resource = plan.resourceOf[stage] ?? 0;
    free[resource] = (free[resource] ?? 0) + (cure >= 0 ? count(lot) : 1);
    lot.isCured = false;
    if (lot.redo < 0 || lot.redo === lot.step) tryPieces(lot, time);
    if (count(lot) === 0) return;
    if (plan.isLast[lot.step] === 1) {
      const variant = plan.variantOf[lot.step] ?? 0;
      while (mark < marks.length && (marks[mark] ?? 0) < time) mark += 1;
      goodOnes(variant, lot.firsts, person, time);
      leave(count(lot), time);
      return;
    }
    if (lot.redo === lot.step) lot.redo = -1;
    lot.step += 1;
    wait(lot);
  }

  function goodOnes(variant: number, pieces: number, person: Person, time: number): void {
    let [left, at] = [pieces, mark];
    const add = (many: number) => {
      const place = variant * (marks.length + 1) + at;
      good[place] = (good[place] ?? 0) + many;
    };
    for (; at > 0 && (marks[at - 1] ?? 0) > person.begun; at -= 1) {
      const moment = { begun: person.begun, ended: time, at: marks[at - 1] ?? 0, last: person.stretch };
      const before = Math.floor(pieces * partDone(calendar, moment));
      add(left - before);
      left = before;
    }
    add(left);
  }

  function leave(pieces: number, time: number): void {
    left -= pieces;
    if (left === 0) doneAt = time;
  }

  function tryPieces(lot: Lot, time: number): void {
    const { step } = lot;
    const [all, whole] = [count(lot), lot.firsts];
    let at = gaps[step] ?? -1;
    if (at < 0) at = nextGap(luck, step);
    let back: Lot | undefined;
    while (at < all) {
      const kind = flawKind(luck, step);
      const isFirst = at < whole;
      if (kind >= (luck.lostPart[step] ?? 0)) {
        if (isFirst) {
          lot.firsts -= 1;
          lot.seconds += 1;
        }
      } else {
        if (isFirst) lot.firsts -= 1;
        else lot.seconds -= 1;
        if (kind >= (luck.backPart[step] ?? 0)) leave(1, time);
        else back = sendBack(step, kind / (luck.backPart[step] ?? 1), isFirst, back);
      }
      at += 1 + nextGap(luck, step);
    }
    gaps[step] = at - all;
  }

  function sendBack(step: number, share: number, isFirst: boolean, last: Lot | undefined): Lot {
    const end = (plan.backFrom[step + 1] ?? 0) - 1;
    let target = plan.backFrom[step] ?? 0;
    while (target < end && share >= (plan.backShare[target] ?? 1)) target += 1;
    const to = plan.backTo[target] ?? 0;
    const lot = last?.step === to ? last : { step: to, firsts: 0, seconds: 0, redo: step, isCured: false };
    if (isFirst) lot.firsts += 1;
    else lot.seconds += 1;
    if (lot !== last) wait(lot);
    return lot;
  }

  function clear(): void {
    events.clear();
    for (const queue of waiting) queue.clear();
    people.length = 0;
    free = [...plan.capacity];
    visits = [];
    gaps = [];
    good = new Int32Array(plan.variants * (marks.length + 1));
    mark = 0;
    left = plan.pieces;
    doneAt = Number.POSITIVE_INFINITY;
    came = 0;
    broughtFirst = 0;
    for (const at of luck.order) {
      const lot: Lot = {
        ...{
          step: begin.step[at] ?? 0,
          firsts: begin.firsts[at] ?? 0,
          seconds: (begin.pieces[at] ?? 0) - (begin.firsts[at] ?? 0),
        },
        ...{ redo: begin.redo[at] ?? -1, isCured: begin.isHeld[at] === 1 },
      };
      const ready = begin.ready[at] ?? 0;
      const resource = plan.resourceOf[stageOf(lot)] ?? 0;
      if (lot.isCured) free[resource] = (free[resource] ?? 0) - count(lot);
      if (lot.isCured || ready > plan.now) events.push(lot, ready);
      else wait(lot);
    }
    for (let who = 0; who < plan.people; who += 1) {
      people.push({
        lot: null,
        isLoading: false,
        stretch: calendar.first[who] ?? 0,
        isIdle: false,
        begun: 0,
      });
      events.push(who, order(plan.now, who));
    }
  }

  return (seed, replication) => {
    const key = keyOf(keyOf(0, seed), replication);
    clearFloor(luck, keyOf(key, ORDER));
    drawBeliefs(luck, key);
    clear();
    while (left > 0) {
      const time = Math.floor(events.peekValue() ?? Number.POSITIVE_INFINITY);
      const event = events.pop();
      if (event === undefined) break;
      if (typeof event === 'number') {
        const person = people[event];
        if (!person) break;
        endWork(person, time);
        findWork(event, time);
      } else wait(event);
      for (const [who, person] of people.entries()) {
        if (!person.isIdle) continue;
        person.isIdle = false;
        findWork(who, time);
      }
    }
    const table = new Int32Array(plan.variants * marks.length);
    for (let variant = 0, place = 0; variant < plan.variants; variant += 1) {
      let sum = plan.finished[variant] ?? 0;
      for (let at = 0; at < marks.length; at += 1, place += 1) {
        sum += good[variant * (marks.length + 1) + at] ?? 0;
        table[place] = sum;
      }
    }
    return { doneAt, good: table, worked, pieceVisits };
  };
}
