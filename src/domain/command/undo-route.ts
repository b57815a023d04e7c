import type { Draft, SetUpEvent, TallyEvent } from '../log/event.ts';
import type { RouteId, StageId } from '../log/ids.ts';
import { atStage } from '../log/place.ts';
import { compareStamps } from '../log/stamp.ts';
import { routeOfBatch } from '../route/route.ts';
import { addTo, type Counter } from '../shop/counter.ts';
import type { Shop } from '../shop/shop.ts';
import { type Voidable, type Voids, voidsInForce } from '../shop/voids.ts';
import { batchesOn, setUpDraft, standingsOf } from './decide-set-up.ts';
import type { Circumstances } from './decision.ts';

type Rerouted = Extract<TallyEvent, { kind: 'rerouted' }>;

/** The moves of a change of route that an undo takes back, or that the undo of an undo makes again. */
interface Rerouting {
  readonly undone: Voidable;
  readonly moved: Rerouted;
  readonly back: boolean;
}

/** A change of route that is undone whole: its word still stands, and it knows the one before. */
export interface RouteChange {
  readonly route: RouteId;
  readonly stages: readonly StageId[];
  readonly word: SetUpEvent & { readonly replaced: NonNullable<SetUpEvent['replaced']> };
}

function reroutingsIn(voids: Voids, events: readonly Voidable[]): readonly Rerouting[] {
  return events.flatMap((undone) => {
    const { innermost, changes, back } = reach(voids, undone);
    return changes && innermost.kind === 'rerouted' ? [{ undone, moved: innermost, back }] : [];
  });
}

/** What taking back an event comes to: a void that another tablet made as well goes on standing, and nothing changes. */
function reach(voids: Voids, undone: Voidable): { innermost: TallyEvent; changes: boolean; back: boolean } {
  let event = undone;
  let back = true;
  let changes = true;
  while (event.kind === 'voided') {
    const standing = voidsInForce(voids, event.event);
    if (standing > (back ? 1 : 0)) changes = false;
    event = event.event;
    back = !back;
  }
  return { innermost: event, changes, back };
}

/**
 * The change of route whose moves are all among what is undone. None when a later word on the route stands, which is
 * then left as it is.
 */
export function routeChangeIn(
  { registers, voids }: Shop,
  events: readonly Voidable[],
): RouteChange | undefined {
  const reroutings = reroutingsIn(voids, events);
  const [first] = reroutings;
  if (!first) return undefined;
  for (const word of registers.values()) {
    const { replaced, set } = word;
    if (!replaced || set.register !== 'route' || replaced.set.register !== 'route') continue;
    const its = reroutings.filter(
      ({ undone }) => undone.station === word.station && compareStamps(undone.stamp, word.stamp) === 0,
    );
    if (its.length === replaced.trays) {
      return { route: set.id, stages: replaced.set.value.stages, word: { ...word, replaced } };
    }
  }
  return undefined;
}

/** The word that brings the route back to what it was before; it knows what it replaces, so that it can be undone. */
export function routeBrought(shop: Shop, { word }: RouteChange, at: Circumstances): Draft {
  const { set, trays } = word.replaced;
  return { ...setUpDraft(shop, set, at), replaced: { set: word.set, trays } };
}

/** Whether an undo would leave pieces at a stage that their route has not: no tap would reach them there. */
export function strandsPieces(
  shop: Shop,
  { events, change }: { events: readonly Voidable[]; change: RouteChange | undefined },
): boolean {
  const reroutings = reroutingsIn(shop.voids, events);
  if (!change) {
    return reroutings.some(({ moved }) => {
      const stages = routeOfBatch(shop.registers, moved.of.batch);
      return moved.moves
        .flatMap(({ from, to }) => [from, to])
        .some((place) => place && atStage(place) && !stages?.includes(place.stage));
    });
  }
  const standing: Counter = new Map();
  const add = (tray: string, { stage, pieces }: { stage: StageId; pieces: number }) => {
    if (!change.stages.includes(stage)) addTo(standing, { key: `${tray}|${stage}`, by: pieces });
  };
  for (const { record, place, pieces } of standingsOf(shop, batchesOn(shop, change.route))) {
    add(record.tray, { stage: place.stage, pieces });
  }
  for (const { moved, back } of reroutings) {
    for (const { tray, from, to, pieces } of moved.moves) {
      const by = back ? pieces : -pieces;
      if (from && atStage(from)) add(tray, { stage: from.stage, pieces: by });
      if (to && atStage(to)) add(tray, { stage: to.stage, pieces: -by });
    }
  }
  return standing.size > 0;
}
