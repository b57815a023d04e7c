import { readWholeNumber } from '../../domain/command/whole-number.ts';
import { mostParts } from '../../domain/log/stores-facts.ts';
import type { PartFact } from '../../domain/set-up/facts.ts';
import { isCleaned } from '../../domain/set-up/is-cleaned.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { numberProblemWords } from '../../words/problem-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { nameProblem, type Reading, readingOf } from '../parts/form/reading.ts';
import { pieceCostText, readPieceCost } from '../parts/money.ts';

/** A part as it is typed. */
export interface PartDraft {
  readonly name: string;
  readonly sort: PartFact['sort'];
  readonly cost: string;
  readonly lowMark: string;
  /** null while nobody has chosen: it goes with the sort. */
  readonly cleaned: boolean | null;
}

/** The usual one first: a newcomer adds a ferrule. */
export const partSorts: readonly PartFact['sort'][] = ['ferrule', 'core', 'blank', 'consumable'];

export function partDraftOf(part: PartFact | undefined): PartDraft {
  const mark = part?.lowMark ?? null;
  return {
    name: part?.name ?? '',
    sort: part?.sort ?? 'ferrule',
    cost: pieceCostText(part?.cost ?? null),
    lowMark: mark === null ? '' : String(mark),
    cleaned: part?.cleaned ?? null,
  };
}

/** Whether a saved part has to be cleaned, as the form has it. */
export function cleanedInForm({ sort, cleaned }: PartDraft): boolean {
  return cleaned ?? isCleaned({ sort });
}

export function readPart(draft: PartDraft): Reading<Omit<PartFact, 'retired'>, PartDraft> {
  const { name, sort } = draft;
  const cost = readPieceCost(draft.cost);
  const lowMark = draft.lowMark.trim() === '' ? null : readWholeNumber(draft.lowMark, markBounds);
  const problems = {
    name: nameProblem(name),
    cost: cost === undefined ? words.badPieceCost : undefined,
    lowMark: lowMark && !lowMark.ok ? numberProblemWords(lowMark.problem) : undefined,
  };
  return readingOf(problems, () => ({
    name: tidyText(name),
    sort,
    cost: cost ?? null,
    lowMark: lowMark?.ok ? lowMark.value : null,
    ...(draft.cleaned === null ? {} : { cleaned: draft.cleaned }),
  }));
}

const markBounds = { least: 0, most: mostParts };
