import type { ReasonFact } from '../../domain/set-up/facts.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { nameProblem, noteProblem, type Reading, readingOf } from '../parts/form/reading.ts';

/** A reason as it is typed. */
export interface ReasonDraft {
  readonly name: string;
  readonly passes: string;
}

export const reasonDraftOf = (reason: ReasonFact | undefined): ReasonDraft => ({
  name: reason?.name ?? '',
  passes: reason?.passes ?? '',
});

export function readReason({ name, passes }: ReasonDraft): Reading<Omit<ReasonFact, 'retired'>, ReasonDraft> {
  return readingOf({ name: nameProblem(name), passes: noteProblem(passes) }, () => {
    const said = tidyText(passes);
    return { name: tidyText(name), ...(said === '' ? {} : { passes: said }) };
  });
}
