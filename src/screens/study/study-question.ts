import type { BatchId, PersonId, ShopDay } from '../../domain/log/ids.ts';
import { dayAfter } from '../../domain/log/zone.ts';
import type { TapFilter } from '../../domain/study/tap-filter.ts';

/** How far back one looks. */
export const stretches = ['all', 'week', 'month', 'quarter'] as const;
export type Stretch = (typeof stretches)[number];

export const daysOf: Readonly<Record<Exclude<Stretch, 'all'>, number>> = { week: 7, month: 28, quarter: 91 };

/** What a person has chosen to look at; null for no choice. */
export interface Chosen {
  readonly stretch: Stretch;
  readonly person: PersonId | null;
  readonly batch: BatchId | null;
}

export const everything: Chosen = { stretch: 'all', person: null, batch: null };

/** The taps that a choice means on a day: the last 7 days are that day and the six before it. */
export function filterOf({ stretch, person, batch }: Chosen, today: ShopDay): TapFilter {
  return {
    ...(stretch === 'all' ? {} : { from: dayAfter(today, 1 - daysOf[stretch]), to: today }),
    ...(person === null ? {} : { person }),
    ...(batch === null ? {} : { batch }),
  };
}
