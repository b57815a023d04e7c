// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import type { Session } from '../../../src/app/session.ts';
import { factOf } from '../../../src/domain/shop/registers.ts';
import { address } from '../../../src/screens/parts/address.ts';
import { boxSheet, sheetsOf } from '../../../src/screens/trays/print/box-view.ts';
import { PrintPage } from '../../../src/screens/trays/print/print-page.tsx';
import { aWorkshop, scrapped, type TestShop } from '../../support/a-shop.ts';
import { finish } from '../../support/full-shelf.ts';
import { batch, species, variant } from '../../support/workshop.ts';
import { choose, mount, press, settle } from '../set-up/mount.tsx';

const ash = variant['ash-copper'];
const usual = { finish: 'Shellac under wax.', care: 'Keep it dry.', caution: 'Sharp when fitted.' };

function setBox(shop: TestShop, box: typeof usual): void {
  const fact = factOf(shop.shop.registers, { register: 'shop', id: 'shop' });
  if (!fact) throw new Error('the workshop has a name');
  shop.set({ register: 'shop', id: 'shop', value: { ...fact, box } });
}

function recordOf(shop: TestShop, tray: ReturnType<TestShop['tray']>) {
  const record = shop.shop.trays.get(tray);
  if (!record) throw new Error('no tray');
  return record;
}

describe('what stands on a sheet for the box', () => {
  test('is the variant, its wood, finish, care, caution, and where it came from', () => {
    const shop = aWorkshop();
    setBox(shop, usual);
    const record = recordOf(shop, shop.tray('ash-copper', 3));
    expect(boxSheet(shop.shop, record)).toMatchObject({
      variant: 'ash with copper',
      says: ['Wood: ash', 'Finish: Shellac under wax.', 'Care: Keep it dry.', 'Caution: Sharp when fitted.'],
      foot: `${record.code} · spring`,
      written: true,
    });
  });

  test('is the caution of the wood too, which defers to the data sheet', () => {
    const shop = aWorkshop();
    const fact = factOf(shop.shop.registers, { register: 'species', id: species.ash });
    if (!fact) throw new Error('the workshop has ash');
    const caution = 'Dust can make breathing worse (asthma). More of it.';
    shop.set({ register: 'species', id: species.ash, value: { ...fact, caution } });
    const sheet = boxSheet(shop.shop, recordOf(shop, shop.tray('ash-copper', 1)));
    expect(sheet?.says).toEqual([
      'Wood: ash',
      'Caution: ash: Dust can make breathing worse. Safety data sheet rules.',
    ]);
    expect(sheet?.written).toBe(false);
  });

  test('is nothing where the variant has none', () => {
    const shop = aWorkshop();
    const fact = factOf(shop.shop.registers, { register: 'variant', id: ash });
    if (!fact) throw new Error('the workshop has ash with copper');
    const box = { printed: false, finish: '', care: '', caution: '' };
    shop.set({ register: 'variant', id: ash, value: { ...fact, box } });
    const trays = [recordOf(shop, shop.tray('ash-copper', 4))];
    expect(sheetsOf(shop.shop, { trays, each: 'piece' })).toEqual([]);
  });

  test('is there once for each piece on the tray, finished ones too, or once for the tray', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 5);
    shop.flaw(tray, 'bore', { why: 'blown', outcome: scrapped() });
    finish(shop, tray, { pieces: 2 });
    const trays = [recordOf(shop, tray)];
    const sheets = sheetsOf(shop.shop, { trays, each: 'piece' });
    expect(sheets).toHaveLength(4);
    expect(new Set(sheets.map(({ key }) => key)).size).toBe(4);
    expect(sheetsOf(shop.shop, { trays, each: 'tray' })).toHaveLength(1);
  });
});

async function open(box = usual): Promise<Session> {
  address.value = { place: 'trays', rest: ['boxes'] };
  const { session } = await mount(<PrintPage />);
  const shop = factOf(session.view.value.shop.registers, { register: 'shop', id: 'shop' });
  if (shop)
    await session.act({ kind: 'set', set: { register: 'shop', id: 'shop', value: { ...shop, box } } });
  await session.act({ kind: 'make-trays', variant: ash, batch: batch.spring, pieces: 3, trays: 2 });
  await settle();
  await screen.findByTestId('print');
  choose('print-size', 'A4, 2 × 4 of 99.1 × 67.7 mm');
  await settle();
  return session;
}

const printed = () => [...document.querySelectorAll('.print-root .label')];
const isRefused = () => screen.getByTestId('print').getAttribute('aria-disabled') === 'true';

describe('printing them', () => {
  afterEach(() => {
    cleanup();
    address.value = { place: 'trays', rest: [] };
  });

  test('makes one for each piece of the chosen trays, and says that they are not finished', async () => {
    await open();
    await press('print-all');
    expect(printed()).toHaveLength(6);
    expect(printed()[0]?.textContent).toContain('Care: Keep it dry.');
    expect(screen.getByTestId('box-not-cured').textContent).toContain('6 pieces of');
    expect(isRefused()).toBe(false);
  });

  test('is refused where a text would be cut', async () => {
    await open({ ...usual, caution: 'Wear a mask when it is sanded anew. '.repeat(13).trim() });
    await press('print-all');
    expect(isRefused()).toBe(false);
    choose('print-size', 'A4, 3 × 7 of 63.5 × 38.1 mm');
    await settle();
    expect(screen.getByTestId('box-too-small').textContent).toContain('a caution is never cut');
    expect(isRefused()).toBe(true);
    expect(printed()).toEqual([]);
  });

  test('of a shop that has written nothing says where to write it', async () => {
    await open({ finish: '', care: '', caution: '' });
    await press('print-all');
    expect(screen.getByTestId('box-silent').textContent).toContain('Set-up, Labels');
  });
});
