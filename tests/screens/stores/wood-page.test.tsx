// @vitest-environment happy-dom
import { cleanup, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { factOf } from '../../../src/domain/shop/registers.ts';
import { WoodPage } from '../../../src/screens/stores/wood-page.tsx';
import { moistureWords as words } from '../../../src/words/moisture-words.ts';
import { lot, part, species } from '../../support/workshop.ts';
import { choose, errorAt, type Mounted, mount, press, settle, type, typed } from '../set-up/mount.tsx';

afterEach(cleanup);

let mounted: Mounted;

beforeEach(async () => {
  mounted = await mount(<WoodPage />);
  const { session } = mounted;
  const ash = factOf(session.view.value.shop.registers, { register: 'species', id: species.ash });
  if (!ash) throw new Error('no ash');
  const ferrule = { name: 'Copper ferrule', sort: 'ferrule', retired: false, fitDiameter: 1400 } as const;
  await session.act({ kind: 'set', set: { register: 'part', id: part['copper-ferrule'], value: ferrule } });
  await session.act({
    kind: 'set',
    set: { register: 'species', id: species.ash, value: { ...ash, reference: 'ash-white' } },
  });
  const value = { name: 'Ash, shelf', species: species.ash, retired: false };
  await session.act({ kind: 'set', set: { register: 'lot', id: lot.shelf, value } });
  await settle();
});

const verdict = () => screen.getByTestId(`lot-verdict-${lot.shelf}`);

async function read(percent: string): Promise<void> {
  type(`lot-reading-${lot.shelf}`, percent);
  await press(`lot-read-${lot.shelf}`);
  await settle();
}

/** Histories are read from the store, by code that comes when it is first needed. */
const says = (text: string) =>
  waitFor(() => expect(verdict().textContent).toContain(text), { timeout: 10_000 });

test('a lot is read, judged by the air of the room, and its reading taken back', async () => {
  await says(words.verdicts['no-reading']);
  await read('13.4');
  await says(words.verdicts['no-air']);
  type('air-celsius', '21.1');
  type('air-humidity', '50');
  expect(screen.getByTestId('air-comes-to').textContent).toBe('Wood comes to about 9.2 % in this air.');
  // White ash, Wood Handbook table 4-3: 7.8 along the rings. 1400 × 4.2 ÷ (3000 ÷ 7.8 − 16.6) = 16.
  await says('a gap of about 16/100 mm on 14 mm is to be expected');
  expect(verdict().dataset.verdict).toBe('too-wet');
  await read('9.3');
  await says(words.ready);
  expect(screen.getByText('Before: 13.4 %')).toBeTruthy();
  await press(`lot-take-back-${lot.shelf}`);
  await says(words.tooWet);
  expect(screen.getByTestId(`lot-last-${lot.shelf}`).textContent).toMatch(/^13\.4 %/);
  await press(`lot-take-back-${lot.shelf}`);
  await says(words.verdicts['no-reading']);
});

test('what is typed wrong stays, with what is wrong at its field', async () => {
  await read('wet');
  expect(errorAt(`lot-reading-${lot.shelf}`)).toBe(words.badReading);
  expect(typed(`lot-reading-${lot.shelf}`)).toBe('wet');
  type('air-humidity', '99');
  expect(errorAt('air-humidity')).toBe(words.badHumidity);
  type('air-celsius', 'warm');
  expect(errorAt('air-celsius')).toBe(words.badCelsius);
});

test('a further lot has a name and a wood; one that is put away is gone from the page', async () => {
  await press('lot-add');
  expect(errorAt('lot-name')).toBe('Enter a name.');
  expect(errorAt('lot-wood')).toBe(words.noWood);
  type('lot-name', 'Plum, attic');
  choose('lot-wood', 'plum');
  await press('lot-add');
  expect(screen.getByRole('heading', { name: 'Plum, attic' })).toBeTruthy();
  await press(`lot-put-away-${lot.shelf}`);
  expect(screen.queryByTestId(`lot-${lot.shelf}`)).toBeNull();
});
