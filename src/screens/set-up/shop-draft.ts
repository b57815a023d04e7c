import { isZoneName, usualDayStart } from '../../domain/log/zone.ts';
import type { ShopFact } from '../../domain/set-up/facts.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { nameProblem, type Reading, readingOf } from '../parts/form/reading.ts';

/** The shop as it is typed; the hour is the text of its choice. */
export interface ShopDraft {
  readonly name: string;
  readonly zone: string;
  readonly hour: string;
}

export function shopDraftOf(shop: ShopFact | undefined, zoneHere: string): ShopDraft {
  return {
    name: shop?.name ?? '',
    zone: shop?.zone ?? zoneHere,
    hour: String(shop?.dayStartHour ?? usualDayStart),
  };
}

export function readShop({ name, zone, hour }: ShopDraft): Reading<ShopFact, ShopDraft> {
  return readingOf({ name: nameProblem(name) }, () => ({
    name: tidyText(name),
    zone,
    dayStartHour: Number(hour),
  }));
}

/** The hours at which a shop day can begin: midnight to noon. */
export const dayStartHours: readonly { readonly value: string; readonly label: string }[] = Array.from(
  { length: 13 },
  (_, hour) => ({ value: String(hour), label: `${String(hour).padStart(2, '0')}:00` }),
);

/** Zones to choose from, the chosen one and the tablet's own among them, each only once and known to the platform. */
export function zonesToOffer(
  known: readonly string[],
  { chosen, here }: { chosen: string; here: string },
): readonly string[] {
  return [...new Set([here, chosen, 'UTC', ...known])]
    .filter(isZoneName)
    .sort((a, b) => a.localeCompare(b, 'en'));
}
