import type { BatchId, PersonId, ShopDay, SpeciesId, StageId } from '../../domain/log/ids.ts';
import { dayAfter } from '../../domain/log/zone.ts';
import type { Comparison } from '../../domain/study/comparison.ts';
import { daysOf, type Stretch } from './study-question.ts';

export const compareKinds = ['periods', 'day', 'people', 'batches', 'mark'] as const;
type CompareKind = (typeof compareKinds)[number];

/** What a person has chosen so far; each kind keeps its own choice while another is looked at. */
export interface CompareChoice {
  readonly kind: CompareKind;
  readonly stretch: Exclude<Stretch, 'all'>;
  readonly day: ShopDay | null;
  readonly people: Pair<PersonId>;
  readonly batches: Pair<BatchId>;
  readonly mark: ChosenMark | null;
}

export interface Pair<Id> {
  readonly a: Id | null;
  readonly b: Id | null;
}

/** A mark that was set at a stage at a moment, ms UTC; of one wood, or of all of them. */
interface ChosenMark {
  readonly id: string;
  readonly stage: StageId;
  readonly species: SpeciesId | null;
  readonly at: number;
}

const nobody = { a: null, b: null };
export const firstChoice: CompareChoice = {
  ...{ kind: 'periods', stretch: 'week', day: null, people: nobody, batches: nobody, mark: null },
};

/** The two lots that a choice means on a day: the later or first one is `a`. null while it is not complete. */
export function comparisonOf(choice: CompareChoice, today: ShopDay): Comparison | null {
  switch (choice.kind) {
    case 'periods': {
      const days = daysOf[choice.stretch];
      const from = dayAfter(today, 1 - days);
      return { a: { from, to: today }, b: { from: dayAfter(from, -days), to: dayAfter(from, -1) } };
    }
    case 'day':
      return choice.day === null ? null : { a: { from: choice.day }, b: { to: dayAfter(choice.day, -1) } };
    case 'people': {
      const { a, b } = choice.people;
      return a === null || b === null || a === b ? null : { a: { person: a }, b: { person: b } };
    }
    case 'batches': {
      const { a, b } = choice.batches;
      return a === null || b === null || a === b ? null : { a: { batch: a }, b: { batch: b } };
    }
    case 'mark': {
      if (choice.mark === null) return null;
      const { stage, species, at } = choice.mark;
      const where = { stage, ...(species === null ? {} : { species }) };
      return { a: { ...where, since: at }, b: { ...where, before: at } };
    }
  }
}
