// @vitest-environment happy-dom
import { fireEvent, render, screen, within } from '@testing-library/preact';
import { expect, test } from 'vitest';
import { type Place, TabsNav } from '../../../src/ui/places/tabs-nav.tsx';

const places: readonly Place[] = ['Bench', 'Trays', 'Plan', 'Yield', 'Day', 'Shelf'].map((label) => ({
  id: label.toLowerCase(),
  label,
  icon: 'bench',
  href: `#/${label.toLowerCase()}`,
  waiting: label === 'Day' ? 'Backup is due' : undefined,
}));

const shown = (more: object = {}) =>
  render(
    <TabsNav label="Places" places={places} current="trays" moreLabel="More" closeLabel="Close" {...more} />,
  );

test('all places are links, and the one shown says so', () => {
  shown();
  const rack = screen.getByRole('navigation', { name: 'Places' });
  expect(within(rack).getAllByRole('link')).toHaveLength(6);
  expect(within(rack).getByRole('link', { current: 'page' }).getAttribute('href')).toBe('#/trays');
});

test('what waits at a place is read out with it', () => {
  shown();
  expect(screen.getByRole('link', { name: /Day.*Backup is due/ })).toBeTruthy();
});

test('a place that does not open just now says so, in the rack and in the sheet', async () => {
  shown({
    places: places.map((place) => ({ ...place, closed: place.id === 'bench' ? undefined : 'Locked' })),
  });
  fireEvent.click(screen.getByRole('button', { name: 'More' }));
  await screen.findByRole('dialog', { name: 'More' });
  expect(screen.getAllByRole('link', { name: /Locked/, hidden: true })).toHaveLength(5 + 2);
  expect(screen.getByRole('link', { name: 'Bench', hidden: true })).toBeTruthy();
});

test('the places beyond the fourth are in a sheet as well, which closes when one is chosen', async () => {
  const gone: string[] = [];
  shown({ onGo: (id: string) => gone.push(id) });
  fireEvent.click(screen.getByRole('button', { name: 'More' }));
  const sheet = await screen.findByRole('dialog', { name: 'More' });
  expect(within(sheet).getAllByRole('link')).toHaveLength(2);
  fireEvent.click(within(sheet).getByRole('link', { name: 'Shelf' }));
  expect(gone).toEqual(['shelf']);
  expect(screen.queryByRole('dialog')).toBeNull();
});

test('a place beyond the fourth that is shown marks the button for the others', () => {
  shown({ current: 'shelf' });
  expect(screen.getByRole('button', { name: 'More' }).hasAttribute('data-current')).toBe(true);
});

test('four places need no button for others', () => {
  shown({ places: places.slice(0, 4) });
  expect(screen.queryByRole('button', { name: 'More' })).toBeNull();
});

test('a click that opens a new tab is left to the browser', () => {
  const gone: string[] = [];
  shown({ onGo: (id: string) => gone.push(id) });
  fireEvent.click(screen.getByRole('link', { name: 'Plan' }), { ctrlKey: true });
  expect(gone).toEqual([]);
});
