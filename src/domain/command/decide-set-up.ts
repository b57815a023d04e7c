import { keepingSign } from '../label/sign-of.ts';
import type { Draft, SetUpEvent } from '../log/event.ts';
import type { BatchId, RouteId, StageId } from '../log/ids.ts';
import { atStage, type Move, type StagePlace } from '../log/place.ts';
import type { MarkFact } from '../set-up/facts.ts';
import type { RegisterSet } from '../set-up/register.ts';
import { sameName } from '../set-up/text.ts';
import { meanArrival, type Standing } from '../shop/positions.ts';
import { factOf, factsOf, nextRev, type Registers } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';
import { type TrayRecord, trayFacts } from '../shop/trays.ts';
import type { CommandOf } from './command.ts';
import { type Circumstances, type Decision, envelopeAt, happens, refuse } from './decision.ts';
import { problemOfFact, tidied } from './fact-problem.ts';
import type { Problem } from './problem.ts';

export function decideSet(shop: Shop, { set }: CommandOf<'set'>, at: Circumstances): Decision {
  const problem = problemOfSet(shop, set) ?? problemOfPlaces(shop, set);
  return problem ? refuse(problem) : happens([setUpDraft(shop, set, at)]);
}

export function setUpDraft({ registers }: Shop, set: RegisterSet, at: Circumstances): Draft<SetUpEvent> {
  const signed = keepingSign(registers, { set, chance: at.newId });
  const value = withClaim(registers, tidied(signed));
  return { ...envelopeAt(at), kind: 'set-up', set: value, rev: nextRev(registers, set) };
}

/** A word on a station says since when it has its letter; a letter that is new to it is claimed by the word itself. */
function withClaim(registers: Registers, set: RegisterSet): RegisterSet {
  if (set.register !== 'station') return set;
  const { since: _said, ...value } = set.value;
  const held = registers.get(`station/${set.id}`);
  const before = held?.set.register === 'station' ? held.set.value : undefined;
  const isNew = !held || !before || before.letter !== value.letter || before.handedTo !== value.handedTo;
  return { ...set, value: isNew ? value : { ...value, since: before.since ?? held.stamp.wall } };
}

/** What is wrong with a set-up fact in itself, or null. Names that are in use are unique within their kind. */
function problemOfSet(shop: Shop, set: RegisterSet): Problem | null {
  const problem = problemOfFact(tidied(set));
  if (problem) return problem;
  if ('retired' in set.value && set.value.retired) return null;
  if (set.register === 'mark') return problemOfMark(shop, set.value);
  const taken = factsOf(shop.registers, set.register).some(
    ({ id, fact }) =>
      id !== set.id && !('retired' in fact && fact.retired) && sameName(fact.name, set.value.name),
  );
  if (taken) return { kind: 'same-name' };
  if (set.register === 'variant' && !factOf(shop.registers, { register: 'species', id: set.value.species })) {
    return { kind: 'no-wood' };
  }
  return null;
}

/** What is wrong with where a mark stands, or null. Its note need not be its own: a tool is ground again and again. */
function problemOfMark({ registers }: Shop, { stage, species }: MarkFact): Problem | null {
  if (!factOf(registers, { register: 'stage', id: stage })) return { kind: 'no-stage' };
  const hasWood = species === null || factOf(registers, { register: 'species', id: species });
  return hasWood ? null : { kind: 'no-wood' };
}

/** Whether a new route, or another route for a batch, would leave pieces where no tap reaches them. */
function problemOfPlaces(shop: Shop, set: RegisterSet): Problem | null {
  if (set.register === 'route') {
    if (set.value.stages.length === 0) return { kind: 'route-is-empty' };
    const asked = stagesToAskAbout(shop, { route: set.id, stages: set.value.stages });
    return asked.length > 0 ? { kind: 'stage-still-holds', stages: asked } : null;
  }
  if (set.register === 'batch') {
    const route = factOf(shop.registers, { register: 'route', id: set.value.route })?.stages ?? [];
    const stranded = piecesByStage(standingsOf(shop, new Set([set.id]))).filter(
      ({ stage }) => !route.includes(stage),
    );
    return stranded.length > 0 ? { kind: 'stage-still-holds', stages: stranded } : null;
  }
  return null;
}

export function batchesOn(shop: Shop, route: RouteId): ReadonlySet<BatchId> {
  return new Set(
    factsOf(shop.registers, 'batch')
      .filter(({ fact }) => fact.route === route)
      .map(({ id }) => id),
  );
}

type StandingOfTray = Standing & { readonly record: TrayRecord; readonly place: StagePlace };

/** What stands at the stages of some batches, with the tray that it is on. */
export function standingsOf(shop: Shop, batches: ReadonlySet<BatchId>): readonly StandingOfTray[] {
  return [...shop.positions.working].flatMap(([tray, places]) => {
    const record = shop.trays.get(tray);
    if (!record || !batches.has(record.batch)) return [];
    return [...places.values()].flatMap(({ place, pieces, arrived }) =>
      atStage(place) && pieces !== 0 ? [{ record, place, pieces, arrived }] : [],
    );
  });
}

interface StagePieces {
  readonly stage: StageId;
  readonly pieces: number;
}

function piecesByStage(standings: readonly StandingOfTray[]): readonly StagePieces[] {
  const sums = new Map<StageId, number>();
  for (const { place, pieces } of standings) sums.set(place.stage, (sums.get(place.stage) ?? 0) + pieces);
  return [...sums].map(([stage, pieces]) => ({ stage, pieces }));
}

/**
 * The stages that hold pieces and that a new order takes away or moves past another stage: for each of them
 * the maker says where the pieces go (to stay is an answer, except for a stage that is gone).
 */
export function stagesToAskAbout(
  shop: Shop,
  { route, stages }: { route: RouteId; stages: readonly StageId[] },
): readonly (StagePieces & { readonly gone: boolean })[] {
  const old = factOf(shop.registers, { register: 'route', id: route })?.stages ?? [];
  return piecesByStage(standingsOf(shop, batchesOn(shop, route)))
    .map(({ stage, pieces }) => ({ stage, pieces, gone: !stages.includes(stage) }))
    .filter(
      ({ stage, gone }) =>
        gone || earlierKept(old, { stage, others: stages }) !== earlierKept(stages, { stage, others: old }),
    );
}

/** The stages before `stage` in `list` that `others` has too, as one text to compare. */
function earlierKept(
  list: readonly StageId[],
  { stage, others }: { stage: StageId; others: readonly StageId[] },
): string {
  const earlier = list.slice(0, list.indexOf(stage)).filter((each) => others.includes(each));
  return earlier.sort().join('|');
}

export function decideChangeRoute(
  shop: Shop,
  command: CommandOf<'change-route'>,
  at: Circumstances,
): Decision {
  const { route, name, destinations } = command;
  const stages = [...new Set(command.stages)];
  if (stages.length === 0) return refuse({ kind: 'route-is-empty' });
  const set: RegisterSet = { register: 'route', id: route, value: { name, stages } };
  const problem = problemOfSet(shop, set);
  if (problem) return refuse(problem);
  const asked = stagesToAskAbout(shop, { route, stages });
  const unanswered = asked.filter(({ stage }) => {
    const destination = destinations.get(stage);
    return destination === undefined || !stages.includes(destination);
  });
  if (unanswered.length > 0) return refuse({ kind: 'stage-still-holds', stages: unanswered });
  // An answer to what is asked no more is an old one: those pieces stay.
  const answers = new Map([...destinations].filter(([from]) => asked.some(({ stage }) => stage === from)));
  const moved = reroutes(shop, { route, stages, answers }, at);
  const before = shop.registers.get(`route/${route}`)?.set;
  const replaced = before && moved.length > 0 ? { replaced: { set: before, trays: moved.length } } : {};
  return happens([{ ...setUpDraft(shop, set, at), ...replaced }, ...moved]);
}

interface Rerouting {
  readonly route: RouteId;
  readonly stages: readonly StageId[];
  /** Where the pieces of a stage go. */
  readonly answers: ReadonlyMap<StageId, StageId>;
}

/** One event per tray whose pieces go to another stage. */
function reroutes(shop: Shop, { route, stages, answers }: Rerouting, at: Circumstances): Draft[] {
  const moves = new Map<TrayRecord, Move[]>();
  for (const standing of standingsOf(shop, batchesOn(shop, route))) {
    const { record, place, pieces } = standing;
    const stage = answers.get(place.stage) ?? place.stage;
    if (stage === place.stage) continue;
    const redo = place.redo !== null && stages.includes(place.redo) ? place.redo : null;
    const { tray } = record;
    const to = { at: 'waiting', stage, grade: place.grade, redo } as const;
    const move: Move =
      pieces > 0
        ? { tray, from: place, to, pieces, since: meanArrival(standing) }
        : { tray, from: to, to: place, pieces: -pieces, since: null };
    moves.set(record, [...(moves.get(record) ?? []), move]);
  }
  return [...moves].map(([record, its]) => ({
    ...envelopeAt(at),
    kind: 'rerouted',
    of: trayFacts(record),
    moves: its,
  }));
}
