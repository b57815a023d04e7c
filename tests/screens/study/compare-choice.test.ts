import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { batchId, personId, shopDayText, speciesId, stageId } from '../../../src/domain/log/ids.ts';
import { type CompareChoice, comparisonOf, firstChoice } from '../../../src/screens/study/compare-choice.ts';
import { everything, filterOf } from '../../../src/screens/study/study-question.ts';

const day = (text: string) => v.parse(shopDayText, text);
const today = day('2026-03-01');
const chosen = (choice: Partial<CompareChoice>) => comparisonOf({ ...firstChoice, ...choice }, today);

describe('what is looked at', () => {
  test('all time is no limit', () => {
    expect(filterOf(everything, today)).toEqual({});
  });

  test('the last 7 days are today and the six before it, whatever the length of the month', () => {
    expect(filterOf({ ...everything, stretch: 'week' }, today)).toEqual({
      from: '2026-02-23',
      to: '2026-03-01',
    });
  });

  test('a person and a batch go with it', () => {
    const person = v.parse(personId, 'ada');
    const batch = v.parse(batchId, 'spring');
    expect(filterOf({ stretch: 'all', person, batch }, today)).toEqual({ person, batch });
  });
});

describe('what is held against each other', () => {
  test.each([
    ['week', '2026-02-23', '2026-02-16', '2026-02-22'],
    ['month', '2026-02-02', '2026-01-05', '2026-02-01'],
    ['quarter', '2025-12-01', '2025-09-01', '2025-11-30'],
  ] as const)(
    'the last %s and as many days before it touch and do not overlap',
    (stretch, from, before, until) => {
      expect(chosen({ kind: 'periods', stretch })).toEqual({
        a: { from, to: today },
        b: { from: before, to: until },
      });
    },
  );

  test('a day belongs to what is since it', () => {
    expect(chosen({ kind: 'day', day: day('2026-02-10') })).toEqual({
      a: { from: '2026-02-10' },
      b: { to: '2026-02-09' },
    });
  });

  test('a mark compares its own stage and wood, up to it and from it on', () => {
    const mark = { id: 'm', stage: v.parse(stageId, 'turn'), species: null, at: 1234 };
    expect(chosen({ kind: 'mark', mark })).toEqual({
      a: { stage: 'turn', since: 1234 },
      b: { stage: 'turn', before: 1234 },
    });
    const species = v.parse(speciesId, 'plum');
    expect(chosen({ kind: 'mark', mark: { ...mark, species } })).toEqual({
      a: { stage: 'turn', species: 'plum', since: 1234 },
      b: { stage: 'turn', species: 'plum', before: 1234 },
    });
  });

  test('nothing is asked before the choice is complete, nor of one thing twice', () => {
    const ada = v.parse(personId, 'ada');
    const ben = v.parse(personId, 'ben');
    expect(chosen({ kind: 'day' })).toBeNull();
    expect(chosen({ kind: 'mark' })).toBeNull();
    expect(chosen({ kind: 'people', people: { a: ada, b: null } })).toBeNull();
    expect(chosen({ kind: 'people', people: { a: ada, b: ada } })).toBeNull();
    expect(chosen({ kind: 'people', people: { a: ada, b: ben } })).toEqual({
      a: { person: ada },
      b: { person: ben },
    });
  });
});
