import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { shopDayText } from '../../../src/domain/log/ids.ts';
import { personFact } from '../../../src/domain/set-up/facts.ts';
import {
  dayProblem,
  likeMonday,
  minutesAWeek,
  personDraftOf,
  readPerson,
} from '../../../src/screens/set-up/person-draft.ts';

const day = (text: string) => v.parse(shopDayText, text);
const usual = { from: 7 * 60 + 30, to: 16 * 60, breakMinutes: 45 };
const edda = {
  name: 'Edda',
  retired: false,
  week: [usual, usual, null, usual, { from: 22 * 60, to: 26 * 60, breakMinutes: 0 }, null, null],
  daysOff: [{ from: day('2026-12-24'), to: day('2027-01-01') }],
  hourCost: 3250,
};

test.each([
  ['with hours, days off and a rate', edda],
  ['of whom nothing is said but a name', { name: 'Odo', retired: false }],
])('a person %s is the same when read back', (_, person) => {
  const read = readPerson(personDraftOf(person));
  expect(read.ok && { ...read.value, retired: false }).toEqual(person);
  expect(v.is(personFact, person)).toBe(true);
});

describe('a day of the week', () => {
  test.each([
    [{ from: '', to: '', breaks: '' }, undefined],
    [{ from: '08:00', to: '17:00', breaks: '' }, undefined],
    [{ from: '22:00', to: '02:00', breaks: '239' }, undefined],
    [{ from: '08:00', to: '', breaks: '' }, 'Say from when to when.'],
    [{ from: '08:00', to: '08:00', breaks: '' }, 'Say from when to when.'],
    [{ from: '24:00', to: '08:00', breaks: '' }, 'Say from when to when.'],
    [{ from: '08:00', to: '09:00', breaks: '60' }, 'Minutes are a whole number, less than the day has.'],
    [{ from: '08:00', to: '09:00', breaks: '-5' }, 'Minutes are a whole number, less than the day has.'],
    [{ from: '08:00', to: '09:00', breaks: '1e9' }, 'Minutes are a whole number, less than the day has.'],
  ])('%j: %s', (draft, problem) => {
    expect(dayProblem(draft)).toBe(problem);
  });
});

test('a week needs a day, and one that is wrong is refused', () => {
  const draft = personDraftOf({ name: 'Edda', retired: false });
  expect(readPerson({ ...draft, hours: 'said' })).toMatchObject({
    ok: false,
    problems: { week: 'Say at least one day.' },
  });
  const wrong = draft.week.map(() => ({ from: '9', to: '', breaks: '' }));
  expect(readPerson({ ...draft, hours: 'said', week: wrong })).toMatchObject({ ok: false });
  expect(readPerson({ ...draft, hours: 'unsaid', week: wrong })).toEqual({
    ok: true,
    value: { name: 'Edda' },
  });
});

test.each(['-1', 'a lot', '1.234', '1e9'])('“%s” is no rate', (hourCost) => {
  expect(readPerson({ ...personDraftOf(edda), hourCost })).toMatchObject({
    problems: { hourCost: 'A rate is a number such as 24 or 24.50.' },
  });
});

test('Tuesday to Friday are like Monday when that is asked, and the weekend stays', () => {
  const monday = { from: '08:00', to: '12:00', breaks: '15' };
  const rest = { from: '', to: '', breaks: '' };
  const week = likeMonday([monday, rest, rest, rest, rest, rest, rest]);
  expect(week).toEqual([monday, monday, monday, monday, monday, rest, rest]);
});

test('hours of a week are summed with breaks taken off; unsaid ones are not known', () => {
  expect(minutesAWeek(edda)).toBe(3 * (510 - 45) + 240);
  expect(minutesAWeek({})).toBeUndefined();
});
