// @vitest-environment happy-dom
import { screen, within } from '@testing-library/preact';
import { beforeEach, expect, test } from 'vitest';
import { goTo } from '../../../src/screens/parts/address.ts';
import { person, route, stage } from '../../support/workshop.ts';
import { press } from '../set-up/mount.tsx';
import { answered, planOfShop, type spring } from './open-plan.tsx';

const openToday = async () => {
  goTo('plan', 'today');
  await screen.findByTestId('plan-today');
  await answered();
};
const listed = () => within(screen.getByTestId('next')).queryAllByRole('listitem');

beforeEach(() => goTo('plan'));

test('what waits is listed with its reason, and a tap goes there', async () => {
  await planOfShop({ turned: 9 });
  await openToday();
  expect(listed().map((item) => item.textContent)).toEqual([
    expect.stringMatching(/^Sand: 9 pieces.*spare|furthest/),
  ]);
  await press(`next-work-${stage.sand}`);
  expect(location.hash).toBe(`#/bench/${stage.sand}`);
});

test('nothing waits in an empty shop, and without hours the way to them is shown', async () => {
  await planOfShop();
  await openToday();
  expect(screen.getByTestId('next').textContent).toContain('Nothing waits anywhere.');
  expect(screen.getByTestId('rounds').textContent).toContain('hours are said');
});

test('with hours each rack has one line of advice', async () => {
  const { session } = await planOfShop({ part: { route: route.haft as typeof spring.route } });
  const usual = { from: 0, to: 1440, breakMinutes: 0 };
  const value = { name: 'Edda', retired: false, week: [usual, usual, usual, usual, usual, usual, usual] };
  await session.act({ kind: 'set', set: { register: 'person', id: person.edda, value } });
  await openToday();
  expect(screen.getByTestId(`advice-stage/${stage.glue}`).textContent).toBe('Nothing waits for a place.');
});
