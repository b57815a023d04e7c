import { celsiusOf, cureTime } from '../../hold/cure-time.ts';
import type { BatchId, ShopDay, VariantId } from '../../log/ids.ts';
import { atStage } from '../../log/place.ts';
import { dayAfter, momentAt } from '../../log/zone.ts';
import type { BatchTargets } from '../../rollup/batch-targets.ts';
import { holdGroups } from '../../rollup/hold-groups.ts';
import { liveStages, withRoute } from '../../route/live-stages.ts';
import { factOf, factsOf } from '../../shop/registers.ts';
import type { Shop } from '../../shop/shop.ts';
import { shiftOn } from '../working-hours.ts';
import type { ForecastHistory } from './forecast-history.ts';
import type { ShopToPlan, StageToPlan, StandingToPlan } from './model-of-shop.ts';
import type { PlanResource } from './plan-model.ts';
import type { ShiftToPlan } from './shift-hours.ts';

/** What the shop itself knows of a plan; the log knows the rest. */
export type PlannedShop = Omit<ShopToPlan, keyof ForecastHistory | 'starts'>;

/** Days of people's hours that a plan has: what is not done in two years is not done. */
export const daysOfHours = 730;

export interface PlanFacts {
  /** ms UTC. */
  readonly now: number;
  readonly today: ShopDay;
  readonly zone: string;
  readonly goal: ShopToPlan['goal'];
  /** What is planned together. */
  readonly batches: readonly BatchTargets[];
}

/** The name of a variant of a batch in a plan. */
export const planKey = (batch: BatchId, variant: VariantId): string => `${batch}/${variant}`;

/** The end of a shop day, ms UTC: the first moment of the next one. */
export function endOfDay(
  day: ShopDay,
  { zone, startHour }: { readonly zone: string; readonly startHour: number },
): number | null {
  return momentAt({ day: dayAfter(day, 1), time: `${String(startHour).padStart(2, '0')}:00` }, zone);
}

/** The shop's half of what `modelOfShop` takes. Variants without a wood, and batches without a route, are left out. */
export function shopToPlan(shop: Shop, facts: PlanFacts): PlannedShop {
  const { now, goal, batches, zone } = facts;
  const startHour = factOf(shop.registers, { register: 'shop', id: 'shop' })?.dayStartHour ?? 0;
  const { resources, stages } = stagesOf(shop, batches);
  return {
    ...{ now, goal, resources, stages },
    people: factsOf(shop.registers, 'person').flatMap(({ fact }) =>
      fact.retired || fact.week === undefined ? [] : [shiftsAhead(fact, facts)],
    ),
    variants: batches.flatMap((batch) =>
      batch.variants.flatMap(({ variant, species, wanted, finished }) =>
        species === undefined || batch.route.length === 0
          ? []
          : [
              {
                ...{ id: planKey(batch.batch, variant), species, route: batch.route, wanted },
                finished: goal === 'firsts' ? finished.first : finished.first + finished.second,
                due: batch.due === null ? null : endOfDay(batch.due, { zone, startHour }),
              },
            ],
      ),
    ),
    standings: standingsOf(shop, new Set(batches.map(({ batch }) => batch))),
  };
}

function stagesOf(
  shop: Shop,
  batches: readonly BatchTargets[],
): { readonly stages: readonly StageToPlan[]; readonly resources: readonly PlanResource[] } {
  const { registers } = shop;
  const groups = holdGroups(shop);
  const resources = groups.map(({ key, limit, stages: [first] }) => ({
    capacity: limit.limit,
    name:
      (limit.resource === null
        ? first && factOf(registers, { register: 'stage', id: first })?.name
        : factOf(registers, { register: 'resource', id: limit.resource })?.name) ?? key,
  }));
  const stages = batches.map(({ route }) => route).reduce(withRoute, liveStages(registers));
  return {
    resources,
    stages: stages.map((id): StageToPlan => {
      const fact = factOf(registers, { register: 'stage', id });
      if (fact?.kind !== 'hold') return { id, kind: 'work', resource: null };
      const resource = groups.findIndex((group) => group.stages.includes(id));
      return {
        ...{ id, kind: 'hold', resource: resource < 0 ? null : resource },
        cureMinutes: cureTime(fact, celsiusOf(registers)).recommended,
      };
    }),
  };
}

/** From the night before on; where two shifts overlap the later one begins when the earlier has ended. */
function shiftsAhead(
  person: Parameters<typeof shiftOn>[0],
  { today, zone }: PlanFacts,
): readonly ShiftToPlan[] {
  const shifts: ShiftToPlan[] = [];
  for (let ahead = -1; ahead < daysOfHours; ahead += 1) {
    const shift = shiftOn(person, dayAfter(today, ahead), zone);
    if (shift == null) continue;
    const from = Math.max(shift.from, shifts.at(-1)?.to ?? 0);
    if (from < shift.to) shifts.push({ ...shift, from });
  }
  return shifts;
}

function standingsOf(
  { trays, positions: { working } }: Shop,
  batches: ReadonlySet<BatchId>,
): readonly StandingToPlan[] {
  const found: StandingToPlan[] = [];
  // In an order of their own: that in which events came is another one on another tablet.
  for (const [id, places] of [...working].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const tray = trays.get(id);
    if (!tray || !batches.has(tray.batch)) continue;
    for (const [, { place, pieces }] of [...places].sort(([a], [b]) => (a < b ? -1 : 1)))
      if (atStage(place)) found.push({ variant: planKey(tray.batch, tray.variant), place, pieces });
  }
  return found;
}
