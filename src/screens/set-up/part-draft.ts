import { readWholeNumber } from '../../domain/command/whole-number.ts';
import { mostParts } from '../../domain/log/stores-facts.ts';
import type { PartFact } from '../../domain/set-up/facts.ts';
import { isCleaned } from '../../domain/set-up/is-cleaned.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { numberProblemWords } from '../../words/problem-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { woodCareWords } from '../../words/wood-care-words.ts';
import { lengthText, readLength } from '../parts/form/length.ts';
import { nameProblem, type Reading, readingOf } from '../parts/form/reading.ts';
import { pieceCostText, readPieceCost } from '../parts/money.ts';

/** 1/100 mm. */
const fitBounds = { least: 100, most: 30_000 };

/** A part as it is typed. */
export interface PartDraft {
  readonly name: string;
  readonly sort: PartFact['sort'];
  readonly cost: string;
  readonly lowMark: string;
  /** null while nobody has chosen: it goes with the sort. */
  readonly cleaned: boolean | null;
  /** mm, as it is typed; of cores and ferrules alone. */
  readonly fitDiameter: string;
}

/** The usual one first: a newcomer adds a ferrule. */
export const partSorts: readonly PartFact['sort'][] = ['ferrule', 'core', 'blank', 'consumable'];

export function partDraftOf(part: PartFact | undefined): PartDraft {
  const mark = part?.lowMark ?? null;
  return {
    name: part?.name ?? '',
    sort: part?.sort ?? 'ferrule',
    fitDiameter: part?.fitDiameter === undefined ? '' : lengthText(part.fitDiameter),
    cost: pieceCostText(part?.cost ?? null),
    lowMark: mark === null ? '' : String(mark),
    cleaned: part?.cleaned ?? null,
  };
}

/** Whether a part is fitted onto wood that is turned to a diameter. */
export const isFitted = (sort: PartFact['sort']): boolean => sort === 'core' || sort === 'ferrule';

/** Whether a saved part has to be cleaned, as the form has it. */
export function cleanedInForm({ sort, cleaned }: PartDraft): boolean {
  return cleaned ?? isCleaned({ sort });
}

export function readPart(draft: PartDraft): Reading<Omit<PartFact, 'retired'>, PartDraft> {
  const { name, sort } = draft;
  const cost = readPieceCost(draft.cost);
  const lowMark = draft.lowMark.trim() === '' ? null : readWholeNumber(draft.lowMark, markBounds);
  const typed = isFitted(sort) ? draft.fitDiameter.trim() : '';
  const fitDiameter = typed === '' ? null : readLength(typed, fitBounds);
  const problems = {
    name: nameProblem(name),
    fitDiameter: typed !== '' && fitDiameter === null ? woodCareWords.badFit : undefined,
    cost: cost === undefined ? words.badPieceCost : undefined,
    lowMark: lowMark && !lowMark.ok ? numberProblemWords(lowMark.problem) : undefined,
  };
  return readingOf(problems, () => ({
    name: tidyText(name),
    sort,
    ...(fitDiameter !== null && { fitDiameter }),
    cost: cost ?? null,
    lowMark: lowMark?.ok ? lowMark.value : null,
    ...(draft.cleaned === null ? {} : { cleaned: draft.cleaned }),
  }));
}

const markBounds = { least: 0, most: mostParts };
