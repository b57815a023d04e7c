// @vitest-environment happy-dom
import { screen } from '@testing-library/preact';
import { expect, test } from 'vitest';
import { factsOf } from '../../../src/domain/shop/registers.ts';
import { People } from '../../../src/screens/set-up/people.tsx';
import { errorAt, mount, press, pressOn, take, type } from './mount.tsx';

const added = async () => {
  const { session } = await mount(<People />);
  await press('add-person');
  type('person-name', 'Edda');
  return () =>
    factsOf(session.view.value.shop.registers, 'person').find(({ fact }) => fact.name === 'Edda')?.fact;
};

test('a name is enough: hours are then not said', async () => {
  const edda = await added();
  await press('person-save');
  expect(edda()).toEqual({ name: 'Edda', retired: false });
});

test('hours, days off and a rate are kept as they were typed', async () => {
  const edda = await added();
  await take('person-hours-said');
  type('week-from-0', '08:00');
  type('week-to-0', '16:00');
  type('week-break-0', '30');
  await press('week-like-monday');
  type('day-off-from', '2026-12-24');
  type('day-off-to', '2027-01-01');
  await press('day-off-add');
  type('day-off-from', '2026-06-04');
  await press('day-off-add');
  type('person-hour-cost', '32.50');
  await press('person-save');
  const usual = { from: 480, to: 960, breakMinutes: 30 };
  expect(edda()).toEqual({
    name: 'Edda',
    retired: false,
    week: [usual, usual, usual, usual, usual, null, null],
    daysOff: [
      { from: '2026-06-04', to: '2026-06-04' },
      { from: '2026-12-24', to: '2027-01-01' },
    ],
    hourCost: 3250,
  });
  expect(screen.getByText('37.5 h a week')).toBeDefined();
});

test('a person who is put away keeps what is said of them', async () => {
  const edda = await added();
  type('person-hour-cost', '20');
  await press('person-save');
  await pressOn(screen.getByRole('button', { name: /Edda/ }));
  await press('person-retire');
  expect(edda()).toEqual({ name: 'Edda', retired: true, hourCost: 2000 });
});

test('a day that ends nowhere is said at that day, and days off that end before they begin are not taken', async () => {
  const edda = await added();
  await take('person-hours-said');
  type('week-from-2', '08:00');
  type('day-off-from', '2026-06-04');
  type('day-off-to', '2026-06-01');
  await press('day-off-add');
  expect(errorAt('day-off-to')).toBe('The last day is before the first.');
  await press('person-save');
  expect(errorAt('week-from-2')).toBe('Say from when to when.');
  expect(errorAt('week-from-0')).toBeUndefined();
  expect(edda()).toBeUndefined();
});
