import type { Registers } from '../../domain/shop/registers.ts';
import { compareWords as words } from '../../words/compare-words.ts';
import { dayWords, momentWords } from '../../words/date-words.ts';
import { nameOf } from '../../words/names.ts';
import type { CompareChoice } from './compare-choice.ts';

/** What the two lots are called in a sentence. */
export interface LotNames {
  readonly a: string;
  readonly b: string;
}

export function lotNames(
  choice: CompareChoice,
  { registers, zone }: { readonly registers: Registers; readonly zone: string },
): LotNames {
  switch (choice.kind) {
    case 'periods': {
      const days = words.stretches[choice.stretch];
      return { a: words.lately(days), b: words.earlier(days) };
    }
    case 'day':
      return sinceAndBefore(choice.day === null ? '' : dayWords(choice.day));
    case 'people':
      return {
        a: nameOf(registers, { register: 'person', id: choice.people.a ?? '' }),
        b: nameOf(registers, { register: 'person', id: choice.people.b ?? '' }),
      };
    case 'batches':
      return {
        a: nameOf(registers, { register: 'batch', id: choice.batches.a ?? '' }),
        b: nameOf(registers, { register: 'batch', id: choice.batches.b ?? '' }),
      };
    case 'mark':
      return sinceAndBefore(choice.mark === null ? '' : momentWords(choice.mark.at, zone));
  }
}

/** The one place that is compared: the stage of a mark, and its wood where it has one. null where all are compared. */
export function onlyPlace({ kind, mark }: CompareChoice, registers: Registers): string | null {
  if (kind !== 'mark' || mark === null) return null;
  const stage = nameOf(registers, { register: 'stage', id: mark.stage });
  return words.place(
    stage,
    mark.species === null ? null : nameOf(registers, { register: 'species', id: mark.species }),
  );
}

const sinceAndBefore = (when: string): LotNames => ({ a: words.since(when), b: words.before(when) });
