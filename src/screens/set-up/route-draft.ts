import { stagesToAskAbout } from '../../domain/command/decide-set-up.ts';
import type { RouteId, StageId } from '../../domain/log/ids.ts';
import { type Entry, factsOf, type Registers } from '../../domain/shop/registers.ts';
import type { Shop } from '../../domain/shop/shop.ts';
import { piecesOnRoute } from './set-up-view.ts';

/** A route as it is put together; `from` is the order it was begun with. */
export interface RouteDraft {
  readonly name: string;
  readonly from: readonly StageId[];
  readonly stages: readonly StageId[];
  /** Where the maker sends the pieces of a stage, for every stage that was asked about so far. */
  readonly destinations: ReadonlyMap<StageId, StageId>;
}

type Route = { readonly name: string; readonly stages: readonly StageId[] } | undefined;

export function routeDraftOf(route: Route): RouteDraft {
  const stages = route?.stages ?? [];
  return { name: route?.name ?? '', from: stages, stages, destinations: new Map() };
}

/** The draft on top of an order that was changed elsewhere meanwhile: what came or went there, comes or goes here. */
export function rebased(draft: RouteDraft, route: Route): RouteDraft {
  const to = route?.stages ?? [];
  if (to.join(' ') === draft.from.join(' ')) return draft;
  const gone = new Set(draft.from.filter((stage) => !to.includes(stage)));
  let stages: readonly StageId[] = draft.stages.filter((stage) => !gone.has(stage));
  for (const stage of to) {
    if (!draft.from.includes(stage) && !stages.includes(stage)) stages = putAs(to, { stage, stages });
  }
  return { ...draft, from: to, stages };
}

/** The stage on the route again, where it stood as far as its neighbours are still there. */
export function putBack({ from, stages }: RouteDraft, stage: StageId): readonly StageId[] {
  return putAs(from, { stage, stages });
}

interface Among {
  readonly stage: StageId;
  readonly stages: readonly StageId[];
}

/** `stages` with `stage` right after the nearest stage that `order` has before it, or else at the start. */
function putAs(order: readonly StageId[], { stage, stages }: Among): readonly StageId[] {
  const before = nearestBefore(order, { stage, stages });
  return stages.toSpliced(before ? stages.indexOf(before) + 1 : 0, 0, stage);
}

/** The nearest stage before `stage` in `order` that is among `stages`. */
function nearestBefore(order: readonly StageId[], { stage, stages }: Among): StageId | undefined {
  return order.slice(0, Math.max(0, order.indexOf(stage))).findLast((each) => stages.includes(each));
}

/** A stage that holds pieces which the new order has no self-evident place for. */
export interface Ask {
  readonly pieces: number;
  /** The stage leaves the route, so its pieces cannot stay. */
  readonly gone: boolean;
  /** Where the maker sends them, once that is said. */
  readonly to: StageId | undefined;
}

/** One line of the route: a stage at its place, or a stage that leaves the route while it holds pieces. */
export interface RouteRow {
  readonly stage: StageId;
  /** Counted from nought; null for a stage that leaves. */
  readonly place: number | null;
  readonly pieces: number;
  readonly ask: Ask | null;
}

/** The lines of a route in order; a stage that leaves stands where it stood, for as long as it holds pieces. */
export function routeRows(
  shop: Shop,
  { route, draft }: { route: RouteId; draft: RouteDraft },
): readonly RouteRow[] {
  const { stages, from } = draft;
  const pieces = piecesOnRoute(shop, route);
  const asks = new Map(
    stagesToAskAbout(shop, { route, stages }).map((asked) => [
      asked.stage,
      { pieces: asked.pieces, gone: asked.gone, to: answer(draft, asked) },
    ]),
  );
  const row = (stage: StageId): RouteRow => ({
    stage,
    place: stages.includes(stage) ? stages.indexOf(stage) : null,
    pieces: pieces.get(stage) ?? 0,
    ask: asks.get(stage) ?? null,
  });
  const leaving = [...asks.keys()].filter((stage) => !stages.includes(stage));
  const leavingAfter = (before: StageId | undefined) =>
    leaving.filter((stage) => nearestBefore(from, { stage, stages }) === before).map(row);
  return [...leavingAfter(undefined), ...stages.flatMap((stage) => [row(stage), ...leavingAfter(stage)])];
}

/** The maker's answer for a stage, unless the stage that it names has left the route since. */
function answer({ destinations, stages }: RouteDraft, { stage }: { stage: StageId }): StageId | undefined {
  const to = destinations.get(stage);
  return to !== undefined && stages.includes(to) ? to : undefined;
}

/** The answers that count: of stages that are asked about now. One for a stage that was put back moves nothing. */
export function answersOf(rows: readonly RouteRow[]): ReadonlyMap<StageId, StageId> {
  return new Map(rows.flatMap(({ stage, ask }) => (ask?.to === undefined ? [] : [[stage, ask.to] as const])));
}

/** The stages still to be answered for. */
export function unanswered(rows: readonly RouteRow[]): readonly StageId[] {
  return rows.filter(({ ask }) => ask !== null && ask.to === undefined).map(({ stage }) => stage);
}

/** Stages in use that are not on the route and hold no pieces of it: they can be put on. */
export function stagesToAdd(registers: Registers, rows: readonly RouteRow[]): readonly Entry<'stage'>[] {
  const shown = new Set(rows.map(({ stage }) => stage));
  return factsOf(registers, 'stage').filter(({ id, fact }) => !fact.retired && !shown.has(id));
}

/** Variants in use with a part that is fitted at a stage which leaves the route: it would not be counted as used. */
export function looseParts(
  registers: Registers,
  { from, stages }: RouteDraft,
): readonly { readonly variant: Entry<'variant'>; readonly stage: StageId }[] {
  const leaving = from.filter((stage) => !stages.includes(stage));
  return factsOf(registers, 'variant')
    .filter(({ fact }) => !fact.retired)
    .flatMap((variant) =>
      leaving
        .filter((stage) => variant.fact.bill.some((line) => line.stage === stage))
        .map((stage) => ({ variant, stage })),
    );
}
