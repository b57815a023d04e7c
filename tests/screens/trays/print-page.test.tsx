// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/preact';
import { afterEach, describe, expect, test, vi } from 'vitest';
import type { Session } from '../../../src/app/session.ts';
import { readSymbol } from '../../../src/domain/label/symbol-text.ts';
import { address } from '../../../src/screens/parts/address.ts';
import { trayLabel } from '../../../src/screens/trays/print/label-view.ts';
import { PrintPage } from '../../../src/screens/trays/print/print-page.tsx';
import { shortCaution } from '../../../src/words/label-words.ts';
import { woodCaution } from '../../../src/words/wood-caution-words.ts';
import { aShop, aWorkshop, scrapped } from '../../support/a-shop.ts';
import { batch, variant } from '../../support/workshop.ts';
import { choose, errorAt, mount, press, settle, type } from '../set-up/mount.tsx';

afterEach(() => {
  cleanup();
  address.value = { place: 'trays', rest: [] };
});

async function open(trays: number, rest: readonly string[] = ['labels']): Promise<Session> {
  address.value = { place: 'trays', rest };
  const { session } = await mount(<PrintPage />);
  for (let left = trays; left > 0; left -= 50)
    await session.act({
      kind: 'make-trays',
      variant: variant['ash-copper'],
      batch: batch.spring,
      pieces: 3,
      trays: Math.min(50, left),
    });
  await settle();
  if (trays > 0 && rest[0] === 'labels') {
    await screen.findByTestId('print');
    choose('print-size', 'A4, 3 × 8 of 70 × 37 mm');
  }
  return session;
}

const printedPages = () => [...document.querySelectorAll('.print-root .print-page')];
const isRefused = () => screen.getByTestId('print').getAttribute('aria-disabled') === 'true';

describe('labels', () => {
  test('of no tray cannot be printed, and say so', async () => {
    await open(2);
    expect(isRefused()).toBe(true);
    expect(screen.getByTestId('print').textContent).toContain('Choose a tray');
    expect(printedPages()).toEqual([]);
  });

  test('of a shop without trays say what to do first', async () => {
    await open(0);
    expect(screen.queryByTestId('print')).toBeNull();
    expect(document.body.textContent).toContain('Make up a tray first');
  });

  test('of all trays stand beside the app, ready for the printer, and leave with the page', async () => {
    const print = vi.fn();
    vi.stubGlobal('print', print);
    await open(30);
    await press('print-all');
    expect(printedPages().length).toBe(2);
    expect(document.querySelectorAll('.print-root .label').length).toBe(30);
    expect(document.querySelectorAll('.print-root .label-outline').length).toBe(0);
    await press('print');
    expect(print).toHaveBeenCalledOnce();
    cleanup();
    expect(document.querySelector('.print-root')).toBeNull();
    vi.unstubAllGlobals();
  });

  test('begin at the first free label; one that is not on the sheet is refused', async () => {
    await open(2);
    await press('print-newest');
    type('print-first', '24');
    await settle();
    expect(printedPages().length).toBe(2);
    type('print-first', '25');
    await settle();
    expect(errorAt('print-first')).toBe('At most 24.');
    expect(isRefused()).toBe(true);
    expect(printedPages()).toEqual([]);
  });

  test('of the trays that the address names are chosen from the start', async () => {
    // Ids of the test sessions count on: the address is set before the trays are there.
    const session = await open(1, ['labels', 'another-tray']);
    expect(screen.getByTestId('print-chosen').textContent).toBe('1 chosen');
    expect(isRefused()).toBe(true);
    const [tray] = session.view.value.shop.trays.keys();
    address.value = { place: 'trays', rest: ['labels', String(tray)] };
    await settle();
    await screen.findByTestId('print');
    expect(isRefused()).toBe(false);
    expect(document.querySelectorAll('.print-root .label').length).toBe(1);
  });
});

describe('what stands on a label', () => {
  test('is the code, a symbol of tray and shop, the variant in words, the count and a short caution', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 12);
    shop.flaw(tray, 'bore', { why: 'blown', outcome: scrapped() });
    const record = shop.shop.trays.get(tray);
    if (!record) throw new Error('no tray');
    const label = trayLabel(shop.shop, record);
    expect(label).toMatchObject({
      code: record.code,
      variant: 'ash with copper',
      count: '11 pieces',
      caution: '',
    });
    expect(readSymbol(label.symbol ?? '')).toMatchObject({ kind: 'tray', code: record.code });
  });

  test('has no symbol in a shop without a sign, and says of an empty tray that it is', () => {
    const bare = aShop();
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 1);
    shop.flaw(tray, 'bore', { why: 'blown', outcome: scrapped() });
    bare.receive(shop.log.filter((event) => event.kind !== 'set-up' || event.set.register !== 'shop'));
    const record = bare.shop.trays.get(tray);
    if (!record) throw new Error('no tray');
    expect(trayLabel(bare.shop, record)).toMatchObject({ symbol: null, count: 'no pieces' });
  });

  test('defers to the data sheet and leaves out what stands in brackets', () => {
    const caution = woodCaution({
      hazard: { effects: ['sensitiser'], sites: ['skin'], from: ['dust'], strength: 3, source: 'a chart' },
      carcinogen: '',
    });
    expect(shortCaution('Olive', caution)).toBe('Olive: It can make you allergic. Safety data sheet rules.');
    expect(shortCaution('Ash', '')).toBe('');
  });
});
