import type { BatchId, RouteId, StageId } from '../../domain/log/ids.ts';
import { atStage, type StagePlace } from '../../domain/log/place.ts';
import { type Entry, factOf, factsOf, type Registers } from '../../domain/shop/registers.ts';
import type { Shop } from '../../domain/shop/shop.ts';
import type { TrayRecord } from '../../domain/shop/trays.ts';
import type { SectionName } from './sections.ts';

/** Whether a fact is put away: shown no more for new work, but kept. */
export function isAway(fact: object): boolean {
  return 'retired' in fact && fact.retired === true;
}

const registerOf = {
  woods: 'species',
  parts: 'part',
  variants: 'variant',
  reasons: 'reason',
  people: 'person',
  stages: 'stage',
  route: 'route',
  resources: 'resource',
  machines: 'machine',
  batches: 'batch',
} as const;

function isCounted(section: SectionName): section is keyof typeof registerOf {
  return Object.hasOwn(registerOf, section);
}

/** How many things of a section are in use; undefined for a section that counts nothing. */
export function liveCount(registers: Registers, section: SectionName): number | undefined {
  if (!isCounted(section)) return undefined;
  return factsOf(registers, registerOf[section]).filter(({ fact }) => !isAway(fact)).length;
}

export type StepName = 'wood' | 'ferrule' | 'variant' | 'batch' | 'stages' | 'tray';

export interface Step {
  readonly name: StepName;
  readonly done: boolean;
}

/**
 * What a new shop does first, in order, with what is done already; nothing once there is a tray. A missing batch or an
 * empty route is among the steps only when they are missing, because a new shop begins with both.
 */
export function firstSteps({ registers, trays }: Shop): readonly Step[] {
  if (trays.size > 0) return [];
  const variants = factsOf(registers, 'variant').filter(({ fact }) => !fact.retired);
  const batches = factsOf(registers, 'batch').filter(({ fact }) => !fact.retired);
  const routes = batches.map(({ fact }) => factOf(registers, { register: 'route', id: fact.route }));
  const hasVariant = variants.length > 0;
  const missing: Step[] = [];
  if (batches.length === 0) missing.push({ name: 'batch', done: false });
  else if (routes.every((route) => (route?.stages.length ?? 0) === 0))
    missing.push({ name: 'stages', done: false });
  return [
    ...missing,
    { name: 'wood', done: factsOf(registers, 'species').some(({ fact }) => !fact.retired) },
    // A maker without ferrules who has a variant is not asked for one again.
    { name: 'ferrule', done: hasVariant || hasFerrule(registers) },
    { name: 'variant', done: hasVariant },
    { name: 'tray', done: false },
  ];
}

export function hasFerrule(registers: Registers): boolean {
  return factsOf(registers, 'part').some(({ fact }) => fact.sort === 'ferrule' && !fact.retired);
}

interface Standing {
  readonly place: StagePlace;
  readonly pieces: number;
}

/** Pieces in work on the trays that `wanted` lets through, place by place; counts below zero are among them. */
function standings(shop: Shop, wanted: (tray: TrayRecord) => boolean): readonly Standing[] {
  return [...shop.positions.working].flatMap(([id, places]) => {
    const tray = shop.trays.get(id);
    if (!tray || !wanted(tray)) return [];
    return [...places.values()].flatMap(({ place, pieces }) =>
      atStage(place) && pieces !== 0 ? [{ place, pieces }] : [],
    );
  });
}

function byStage(found: readonly Standing[]): ReadonlyMap<StageId, number> {
  const sums = new Map<StageId, number>();
  for (const { place, pieces } of found) sums.set(place.stage, (sums.get(place.stage) ?? 0) + pieces);
  return sums;
}

/** Pieces in work at each stage, over all batches. */
export function piecesAtStages(shop: Shop): ReadonlyMap<StageId, number> {
  return byStage(standings(shop, () => true));
}

/** Pieces in work at each stage, of the batches on one route. */
export function piecesOnRoute(shop: Shop, route: RouteId): ReadonlyMap<StageId, number> {
  const isOn = ({ batch }: TrayRecord) =>
    factOf(shop.registers, { register: 'batch', id: batch })?.route === route;
  return byStage(standings(shop, isOn));
}

/** Pieces in work at each stage, of one batch. */
export function piecesOfBatch(shop: Shop, batch: BatchId): ReadonlyMap<StageId, number> {
  return byStage(standings(shop, (tray) => tray.batch === batch));
}

/** Pieces that cure at a stage. */
export function curingAt(shop: Shop, stage: StageId): number {
  return standings(shop, () => true)
    .filter(({ place }) => place.at === 'held' && place.stage === stage)
    .reduce((sum, { pieces }) => sum + pieces, 0);
}

/** The stages of all routes, each once, in the order in which the routes have them. */
export function stagesOnRoutes(registers: Registers): readonly StageId[] {
  return [...new Set(factsOf(registers, 'route').flatMap(({ fact }) => fact.stages))];
}

/** Stages as the routes order them; those off every route come last. */
export function inRouteOrder(
  registers: Registers,
  entries: readonly Entry<'stage'>[],
): readonly Entry<'stage'>[] {
  const order = stagesOnRoutes(registers);
  const place = ({ id }: Entry<'stage'>) => (order.includes(id) ? order.indexOf(id) : order.length);
  return entries.toSorted((a, b) => place(a) - place(b));
}

/** Why a stage cannot be put away: it is on a route, or pieces stand there; null when it can. */
export function whyStageStays(
  shop: Shop,
  stage: StageId,
): { readonly kind: 'on-route' } | { readonly kind: 'holds'; readonly pieces: number } | null {
  if (stagesOnRoutes(shop.registers).includes(stage)) return { kind: 'on-route' };
  const pieces = piecesAtStages(shop).get(stage) ?? 0;
  return pieces === 0 ? null : { kind: 'holds', pieces };
}
