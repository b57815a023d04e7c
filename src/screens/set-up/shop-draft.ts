import { isZoneName, usualDayStart } from '../../domain/log/zone.ts';
import type { ShopFact } from '../../domain/set-up/facts.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { peopleWords } from '../../words/people-words.ts';
import { nameProblem, type Reading, readingOf } from '../parts/form/reading.ts';
import { priceText, readPrice } from '../parts/money.ts';

/** The shop as it is typed; the hour is the text of its choice. */
export interface ShopDraft {
  readonly name: string;
  readonly zone: string;
  readonly hour: string;
  readonly hourCost: string;
}

export function shopDraftOf(shop: ShopFact | undefined, zoneHere: string): ShopDraft {
  return {
    name: shop?.name ?? '',
    zone: shop?.zone ?? zoneHere,
    hour: String(shop?.dayStartHour ?? usualDayStart),
    hourCost: priceText(shop?.hourCost ?? null),
  };
}

export function readShop({ name, zone, hour, hourCost }: ShopDraft): Reading<ShopFact, ShopDraft> {
  const cost = readPrice(hourCost);
  const problems = {
    name: nameProblem(name),
    hourCost: cost === undefined ? peopleWords.badHourCost : undefined,
  };
  return readingOf(problems, () => ({
    name: tidyText(name),
    zone,
    dayStartHour: Number(hour),
    ...(cost != null && { hourCost: cost }),
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
