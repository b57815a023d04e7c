import type { Draft } from '../log/event.ts';
import type { BatchId, RouteId, StageId } from '../log/ids.ts';
import { atStage, type Move } from '../log/place.ts';
import type { RegisterSet } from '../set-up/register.ts';
import { problemOfName, sameName } from '../set-up/text.ts';
import { meanArrival } from '../shop/positions.ts';
import { factOf, factsOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';
import { type TrayRecord, trayFacts } from '../shop/trays.ts';
import type { CommandOf } from './command.ts';
import { type Circumstances, type Decision, envelopeAt, happens, refuse } from './decision.ts';
import type { Problem } from './problem.ts';

export function decideSet(shop: Shop, { set }: CommandOf<'set'>, at: Circumstances): Decision {
  const problem = problemOfSet(shop, set);
  return problem ? refuse(problem) : happens([{ ...envelopeAt(at), kind: 'set-up', set }]);
}

/** What is wrong with a set-up fact, or null. Names that are in use are unique within their kind. */
export function problemOfSet(shop: Shop, set: RegisterSet): Problem | null {
  const text = problemOfName(set.value.name);
  if (text) return { kind: 'text', problem: text };
  if ('retired' in set.value && set.value.retired) return null;
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

function batchesOn(shop: Shop, route: RouteId): ReadonlySet<BatchId> {
  return new Set(
    factsOf(shop.registers, 'batch')
      .filter(({ fact }) => fact.route === route)
      .map(({ id }) => id),
  );
}

/** Pieces that stand at a stage of a route, with the tray they are on. */
function standingsOnRoute(shop: Shop, route: RouteId) {
  const batches = batchesOn(shop, route);
  return [...shop.positions].flatMap(([tray, places]) => {
    const record = shop.trays.get(tray);
    if (!record || !batches.has(record.batch)) return [];
    return [...places.values()].flatMap((standing) => {
      const { place, pieces } = standing;
      return atStage(place) && pieces !== 0 ? [{ record, standing, place, pieces }] : [];
    });
  });
}

/**
 * The stages that hold pieces and that a new order takes away or moves past another stage: for each of them
 * the maker says where the pieces go (to stay is an answer, except for a stage that is gone).
 */
export function stagesToAskAbout(
  shop: Shop,
  { route, stages }: { route: RouteId; stages: readonly StageId[] },
): readonly { readonly stage: StageId; readonly pieces: number; readonly gone: boolean }[] {
  const old = factOf(shop.registers, { register: 'route', id: route })?.stages ?? [];
  const sums = new Map<StageId, number>();
  for (const { place, pieces } of standingsOnRoute(shop, route)) {
    sums.set(place.stage, (sums.get(place.stage) ?? 0) + pieces);
  }
  return [...sums]
    .map(([stage, pieces]) => ({ stage, pieces, gone: !stages.includes(stage) }))
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
  const unanswered = stagesToAskAbout(shop, { route, stages }).filter(({ stage }) => {
    const destination = destinations.get(stage);
    return destination === undefined || !stages.includes(destination);
  });
  if (unanswered.length > 0) return refuse({ kind: 'stage-still-holds', stages: unanswered });
  return happens([{ ...envelopeAt(at), kind: 'set-up', set }, ...reroutes(shop, { command, stages }, at)]);
}

/** One event per tray whose pieces go to another stage. */
function reroutes(
  shop: Shop,
  { command, stages }: { command: CommandOf<'change-route'>; stages: readonly StageId[] },
  at: Circumstances,
): Draft[] {
  const moves = new Map<TrayRecord, Move[]>();
  for (const { record, standing, place, pieces } of standingsOnRoute(shop, command.route)) {
    const stage = command.destinations.get(place.stage) ?? place.stage;
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
