import { type BoxTexts, noBoxTexts } from '../../domain/set-up/box-texts.ts';
import type { VariantFact } from '../../domain/set-up/facts.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { noteProblem, type Reading, readingOf } from '../parts/form/reading.ts';

/** What the shop's sheet for the box says, as it is typed. */
export type BoxDraft = BoxTexts;

export function readBox(draft: BoxDraft): Reading<BoxTexts, BoxDraft> {
  return readingOf(problemsOf(draft), () => tidied(draft));
}

/** The same of a variant, which may have no sheet at all. */
export interface VariantBoxDraft extends BoxTexts {
  readonly printed: 'yes' | 'no';
}

export function variantBoxDraftOf(variant: Pick<VariantFact, 'box'> | undefined): VariantBoxDraft {
  const { printed, ...texts } = variant?.box ?? { printed: true, ...noBoxTexts };
  return { ...texts, printed: printed ? 'yes' : 'no' };
}

/** What is kept of it: nothing where it is as with every variant. */
export function boxOf({ printed, ...texts }: VariantBoxDraft): Pick<VariantFact, 'box'> {
  const said = tidied(texts);
  const isOwn = printed === 'no' || Object.values(said).some((text) => text !== '');
  return isOwn ? { box: { printed: printed === 'yes', ...said } } : {};
}

export function problemsOf({ finish, care, caution }: BoxTexts) {
  return { finish: noteProblem(finish), care: noteProblem(care), caution: noteProblem(caution) };
}

function tidied({ finish, care, caution }: BoxTexts): BoxTexts {
  return { finish: tidyText(finish), care: tidyText(care), caution: tidyText(caution) };
}
