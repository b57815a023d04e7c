import type { PartFact } from '../../domain/set-up/facts.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { nameProblem, type Reading, readingOf } from '../parts/form/reading.ts';

/** A part as it is typed. */
export interface PartDraft {
  readonly name: string;
  readonly sort: PartFact['sort'];
}

/** The usual one first: a newcomer adds a ferrule. */
export const partSorts: readonly PartFact['sort'][] = ['ferrule', 'core', 'blank', 'consumable'];

export function partDraftOf(part: PartFact | undefined): PartDraft {
  return { name: part?.name ?? '', sort: part?.sort ?? 'ferrule' };
}

export function readPart({ name, sort }: PartDraft): Reading<Omit<PartFact, 'retired'>, PartDraft> {
  return readingOf({ name: nameProblem(name) }, () => ({ name: tidyText(name), sort }));
}
