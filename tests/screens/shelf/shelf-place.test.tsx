// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Session } from '../../../src/app/session.ts';
import type { Grade } from '../../../src/domain/log/place.ts';
import { address, readAddress } from '../../../src/screens/parts/address.ts';
import { ShelfPlace } from '../../../src/screens/shelf/shelf-place.tsx';
import { aPhoto } from '../../support/a-photo.ts';
import { batch, reason, stage, variant } from '../../support/workshop.ts';
import { errorAt, mount, press, settle, take, type, typed } from '../set-up/mount.tsx';

const goTo = (hash: string) => {
  address.value = readAddress(hash);
};
beforeEach(() => goTo('#/shelf'));
afterEach(cleanup);

const ash = variant['ash-copper'];
const text = (id: string) => screen.getByTestId(id).textContent;
const places = ['shelf', 'listed', 'sold', 'given', 'kept'];
const at = (grade: Grade) => places.map((place) => text(`shelf-${ash}-${grade}-${place}`));

/** The place with pieces of ash and copper on the shelf: five firsts, and a second with a scratch. They take the short route. */
async function shelf(): Promise<Session> {
  const { session } = await mount(<ShelfPlace />);
  await session.act({ kind: 'make-trays', variant: ash, batch: batch.autumn, pieces: 6, trays: 1 });
  const tray = [...session.view.value.shop.trays.keys()].at(-1);
  if (!tray) throw new Error('a tray was made');
  const spot = (where: (typeof stage)['turn'], grade: Grade, shown: number) =>
    ({ tray, stage: where, at: 'waiting', grade, shown }) as const;
  await session.act({
    kind: 'flaw',
    spot: spot(stage.turn, 'first', 6),
    pieces: 1,
    reasons: [reason.scratch],
    outcome: { kind: 'second' },
  });
  await session.act({ kind: 'pass', spot: spot(stage.turn, 'first', 5), pieces: 5 });
  await session.act({ kind: 'pass', spot: spot(stage.sand, 'first', 5), pieces: 5 });
  await session.act({ kind: 'pass', spot: spot(stage.sand, 'second', 1), pieces: 1 });
  await settle();
  return session;
}

/** Moves pieces by the sheet that is open. */
async function say(from: string, to: string, pieces: string): Promise<void> {
  await take(`move-from-${from}`);
  await take(`move-to-${to}`);
  type('move-pieces', pieces);
  await settle();
}

describe('seconds on the shelf that were reworked', () => {
  test('are raised with the blemish that is gone, and lowered again when that is taken back', async () => {
    await shelf();
    goTo(`#/shelf/${ash}`);
    await settle();
    expect(screen.getByTestId('variant-blemishes').textContent).toContain('scratch');
    await press('shelf-raise');
    expect(text('raise-where')).toBe('Finished: 1 second-grade on the shelf');
    expect(screen.getByTestId(`raise-gone-${reason.scratch}`).getAttribute('aria-pressed')).toBe('true');
    await press('raise-save');
    expect([at('first')[0], at('second')[0]]).toEqual(['6', '0']);
    expect(screen.getByTestId('variant-blemishes').textContent).not.toContain('scratch');
    expect(screen.queryByTestId('shelf-raise')).toBeNull();
    expect(text('shelf-last')).toMatch(/^1 piece of \S+ raised to firsts, gone: scratch$/);
    await press('shelf-take-back');
    expect([at('first')[0], at('second')[0]]).toEqual(['5', '1']);
  });

  test('are raised neither beyond their number nor without a word of what is gone', async () => {
    await shelf();
    goTo(`#/shelf/${ash}`);
    await settle();
    await press('shelf-raise');
    type('raise-pieces', '2');
    await press(`raise-gone-${reason.scratch}`);
    await press('raise-save');
    expect(errorAt('raise-pieces')).toBe('At most 1.');
    expect(screen.getByText('Choose what is gone, or that none of these is.')).toBeTruthy();
    type('raise-pieces', '1');
    await press('raise-gone-none');
    await press('raise-save');
    expect(at('first')[0]).toBe('6');
    expect(screen.getByTestId('variant-blemishes').textContent).toContain('scratch');
  });
});

describe('the shelf', () => {
  test('without a finished piece says how one comes there, and which variants have no photo', async () => {
    await mount(<ShelfPlace />);
    expect(screen.getByText('Nothing is finished yet')).toBeTruthy();
    expect(screen.queryByTestId('to-listing')).toBeNull();
    expect(text(`unpictured-${ash}`)).toBe('ash with copper');
  });

  test('shows of each grade what was finished and where it is', async () => {
    await shelf();
    expect(text(`shelf-${ash}-first-finished`)).toBe('5 finished');
    expect([at('first'), at('second')]).toEqual([
      ['5', '0', '0', '0', '0'],
      ['1', '0', '0', '0', '0'],
    ]);
    expect([text('shelf-finished'), text('shelf-takings')]).toEqual(['6 finished', '–']);
  });

  test('says what sold pieces brought, and of how many that is known', async () => {
    const session = await shelf();
    const its = { variant: ash, grade: 'first', from: 'shelf', shown: 5 } as const;
    await session.act({ kind: 'move-on-shelf', to: 'sold', lines: [{ ...its, pieces: 2, price: 3050 }] });
    await session.act({ kind: 'move-on-shelf', to: 'sold', lines: [{ ...its, pieces: 1, price: null }] });
    await settle();
    expect([text('shelf-takings'), text('shelf-priced')]).toEqual(['61.00', 'the price is known of 2 of 3']);
  });

  test('asks for a count where more went than came', async () => {
    const session = await shelf();
    const line = { variant: ash, grade: 'first', from: 'shelf', pieces: 5, shown: 5, price: null } as const;
    await session.act({ kind: 'move-on-shelf', to: 'kept', lines: [line] });
    await session.act({ kind: 'move-on-shelf', to: 'given', lines: [{ ...line, pieces: 1 }] });
    await settle();
    expect(at('first')).toEqual(['−1', '0', '0', '1', '5']);
    expect(text(`shelf-${ash}-first-below-zero`)).toContain('Below zero: count (on the shelf)');
  });

  test('has variants off the list once a photo shows them', async () => {
    const session = await shelf();
    await session.act({ kind: 'photograph', shows: { kind: 'variant', variant: ash }, photo: aPhoto('a') });
    await settle();
    expect(screen.queryByTestId(`unpictured-${ash}`)).toBeNull();
  });
});

describe('moving pieces', () => {
  test('sells at the usual price, or at the one that is typed, and takes it back with one tap', async () => {
    await shelf();
    await press(`shelf-move-${ash}`);
    await say('shelf', 'sold', '2');
    expect(typed('move-price')).toBe('32.00');
    type('move-price', '28.50');
    await press('move-save');
    expect(at('first')).toEqual(['3', '0', '2', '0', '0']);
    expect(text('shelf-takings')).toBe('57.00');
    expect(text('shelf-last')).toBe('2 pieces of ash with copper (firsts): on the shelf → sold, 28.50 each');
    await press('shelf-take-back');
    expect(at('first')).toEqual(['5', '0', '0', '0', '0']);
    expect(screen.queryByTestId('shelf-last')).toBeNull();
  });

  test('of seconds takes their price', async () => {
    await shelf();
    await press(`shelf-move-${ash}`);
    await take('move-grade-second');
    await say('shelf', 'sold', '1');
    expect(typed('move-price')).toBe('19.00');
    await press('move-save');
    expect(at('second')).toEqual(['0', '0', '1', '0', '0']);
  });

  test('is refused at the field, and keeps what was typed', async () => {
    await shelf();
    await press(`shelf-move-${ash}`);
    await say('shelf', 'given', '6');
    await press('move-save');
    expect(errorAt('move-pieces')).toBe('Only 5 pieces here.');
    type('move-pieces', '');
    await press('move-save');
    expect(errorAt('move-pieces')).toBe('Enter a number.');
    await say('shelf', 'sold', '1');
    type('move-price', 'dear');
    await settle();
    expect(errorAt('move-price')).toBe('A price such as 48.50.');
    await press('move-save');
    expect(at('first')).toEqual(['5', '0', '0', '0', '0']);
  });
});

describe('the page of a variant', () => {
  test('has its places, what its seconds show, and its history', async () => {
    const session = await shelf();
    goTo(`#/shelf/${ash}`);
    await settle();
    expect(at('first')[0]).toBe('5');
    expect(text('variant-blemishes')).toContain('scratch');
    const line = { variant: ash, grade: 'first', from: 'shelf', pieces: 1, shown: 5, price: null } as const;
    await session.act({ kind: 'move-on-shelf', to: 'kept', lines: [line] });
    const said = '1 piece of ash with copper (firsts): on the shelf → kept';
    expect(await screen.findByText(said, { selector: '.event-said' })).toBeTruthy();
  });

  test('that is not in the shop says so', async () => {
    await shelf();
    goTo('#/shelf/unheard-of');
    await settle();
    expect(screen.getByText('This variant is not in the shop')).toBeTruthy();
  });
});

describe('the listing', () => {
  async function listing(): Promise<Session> {
    const session = await shelf();
    goTo('#/shelf/listing');
    await screen.findByTestId('list-now');
    return session;
  }
  const sheetRows = () =>
    [...document.querySelectorAll('.listing-preview tbody tr')].map((row) =>
      [...row.querySelectorAll('td')].map((cell) => cell.textContent),
    );
  const heads = () => [...document.querySelectorAll('.listing-preview th')].map((head) => head.textContent);

  test('lists all that is on the shelf in one act; then nothing is left to list, and one tap takes it back', async () => {
    const session = await listing();
    expect(text('list-now')).toContain('List 6 pieces');
    await press('list-now');
    expect(session.acts.value.at(-1)?.events).toHaveLength(2);
    expect(screen.getByTestId('nothing-to-list')).toBeTruthy();
    expect(text('shelf-last')).toBe('6 pieces of 2 kinds: now listed');
    await press('shelf-take-back');
    expect(text('list-now')).toContain('List 6 pieces');
  });

  test('tells the counts of its kinds apart for those who cannot see them', async () => {
    await listing();
    const fields = [...document.querySelectorAll('.listing-line input[type=text], .listing-line button')];
    const names = fields.map((field) => field.getAttribute('aria-label'));
    expect(names).toContain('Pieces: ash with copper, seconds');
    expect(names).toContain('Fewer: ash with copper, firsts');
    expect(new Set(names).size).toBe(6);
  });

  test('lists what is chosen, and nothing while a count is wrong', async () => {
    await listing();
    screen.getByTestId(`list-${ash}-second`).click();
    type(`list-${ash}-first-pieces`, '7');
    await settle();
    expect(errorAt(`list-${ash}-first-pieces`)).toBe('At most 5.');
    expect(screen.getByTestId('list-now').getAttribute('aria-disabled')).toBe('true');
    type(`list-${ash}-first-pieces`, '4');
    await settle();
    await press('list-now');
    expect(text('list-now')).toContain('List 2 pieces');
  });

  test('makes a sheet of what was listed last, or of all; its columns are the maker’s and stay so', async () => {
    await listing();
    screen.getByTestId(`list-${ash}-second`).click();
    await settle();
    await press('list-now');
    await press('list-now');
    await screen.findByTestId('listing-csv');
    expect(sheetRows()).toEqual([
      ['ash with copper', 'ash', 'copper-ferrule', 'Second', '1', '19.00', 'scratch', ''],
    ]);
    await take('listing-which-now');
    await settle();
    expect(sheetRows().map((row) => row.slice(3, 6))).toEqual([
      ['First', '5', '32.00'],
      ['Second', '1', '19.00'],
    ]);
    for (const column of ['name', 'species', 'ferrule', 'blemishes', 'photo-files'])
      await press(`listing-remove-${column}`);
    await press('listing-add-batch');
    await press('listing-up-batch');
    expect(heads()).toEqual(['Grade', 'Pieces', 'Batch', 'Price']);
    expect(sheetRows()[0]).toEqual(['First', '5', 'autumn', '32.00']);
    for (const column of ['grade', 'pieces', 'batch', 'price']) await press(`listing-remove-${column}`);
    expect(heads()).toEqual(['Price']);
  });
});
