import { type ResourceId, readId, resourceId } from '../../domain/log/ids.ts';
import { celsiusBounds } from '../../domain/log/moisture-facts.ts';
import type { HoldFact } from '../../domain/set-up/facts.ts';
import { holdSetUpWords as words } from '../../words/hold-set-up-words.ts';
import type { Problems } from '../parts/form/reading.ts';
import { readTenths } from '../parts/form/tenths.ts';
import { type MixDraft, mixDraftOf, readMix } from './mix-draft.ts';
import { hoursText, readMinutes } from './typed-hours.ts';

/** What a hold has besides its time and its own places, as it is typed. */
export interface HoldDraft extends MixDraft {
  /** Empty for places of its own. */
  readonly resource: string;
  readonly least: string;
  readonly ratedAt: string;
  readonly quickerWarm: 'yes' | 'no';
}

export function holdDraftOf(hold: HoldFact | undefined): HoldDraft {
  return {
    ...mixDraftOf(hold?.mix ?? null),
    resource: hold?.resource ?? '',
    least: hold?.leastMinutes === undefined ? '' : hoursText(hold.leastMinutes),
    ratedAt: hold?.ratedAt == null ? '' : String(hold.ratedAt / 10),
    quickerWarm: hold?.quickerWarm ? 'yes' : 'no',
  };
}

type HoldExtras = Pick<HoldFact, 'resource' | 'leastMinutes' | 'ratedAt' | 'quickerWarm' | 'mix'>;

/** Reads it; `cureMinutes` is the recommended time, which the least is not beyond. What is not said is left out. */
export function readHold(
  draft: HoldDraft,
  { cureMinutes }: { cureMinutes: number },
): { readonly problems: Problems<HoldDraft>; readonly value: HoldExtras } {
  const least = draft.least.trim() === '' ? undefined : readMinutes(draft.least, cureMinutes);
  const ratedAt = draft.ratedAt.trim() === '' ? undefined : readTenths(draft.ratedAt, celsiusBounds);
  const mix = readMix(draft);
  const resource: ResourceId | null = readId(resourceId, draft.resource);
  return {
    problems: {
      ...mix.problems,
      least: least === null ? words.badLeast : undefined,
      ratedAt: ratedAt === null ? words.badRatedAt : undefined,
    },
    value: {
      ...(resource && { resource }),
      ...(least && { leastMinutes: least }),
      ...(ratedAt == null ? {} : { ratedAt }),
      ...(draft.quickerWarm === 'yes' && ratedAt != null ? { quickerWarm: true } : {}),
      ...(mix.value && { mix: mix.value }),
    },
  };
}
