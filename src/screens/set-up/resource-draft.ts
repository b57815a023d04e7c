import { readWholeNumber } from '../../domain/command/whole-number.ts';
import type { ResourceFact } from '../../domain/set-up/facts.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { numberProblemWords } from '../../words/problem-words.ts';
import { nameProblem, type Reading, readingOf } from '../parts/form/reading.ts';

/** Clamps or a rack as they are typed; no places typed are no limit. */
export interface ResourceDraft {
  readonly name: string;
  readonly capacity: string;
}

export function resourceDraftOf(resource: ResourceFact | undefined): ResourceDraft {
  return {
    name: resource?.name ?? '',
    capacity: resource?.capacity == null ? '' : String(resource.capacity),
  };
}

export function readResource({
  name,
  capacity,
}: ResourceDraft): Reading<Omit<ResourceFact, 'retired'>, ResourceDraft> {
  const saysPlaces = capacity.trim() !== '';
  const places = readWholeNumber(capacity, { least: 1, most: 9999 });
  const wrong = saysPlaces && !places.ok ? numberProblemWords(places.problem) : undefined;
  return readingOf({ name: nameProblem(name), capacity: wrong }, () => ({
    name: tidyText(name),
    capacity: places.ok ? places.value : null,
  }));
}
