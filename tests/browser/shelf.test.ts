import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { parsedByRfc4180 } from '../app/rfc-4180.ts';
import { accessibilityFaults, launchBrowser, openDemo, type Size } from '../support/browser.ts';
import { handedOut } from '../support/handed-out.ts';
import { type Maker, maker } from '../support/maker.ts';
import { file, turnedJpeg } from '../support/pictures.ts';
import { printed } from '../support/printed-page.ts';
import { filesInZip } from '../support/zip-reader.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

async function onShelf(size: Size = 'tablet') {
  const { page, troubles } = await openDemo(browser, { size });
  const hands = maker(page);
  await hands.goTo('#/shelf');
  await hands.at('shelf-finished').waitFor();
  return { page, troubles, hands };
}

async function saved(page: Page, hands: Maker, button: string): Promise<Buffer> {
  return (await handedOut(page, () => hands.tap(button))).bytes;
}

/** The cells of a table that was saved, as the grammar of RFC 4180 reads them; its headings and its rows. */
function cells(csv: Buffer) {
  const text = csv.toString('utf8');
  expect(text.startsWith('\ufeff')).toBe(true);
  const [heads = [], ...rows] = parsedByRfc4180(text.slice(1));
  return rows.map((row) => Object.fromEntries(heads.map((head, at) => [head, row[at] ?? ''])));
}

const count = (text: string) => Number.parseInt(text.replace('−', '-'), 10);

test('what stands on the shelf is what the trays say was finished, kind by kind', async () => {
  const { page, troubles, hands } = await onShelf();
  const shelf = cells(await saved(page, hands, 'table-shelf'));
  const shown = count(await hands.figure('shelf-finished'));
  await hands.goTo('#/set-up/files');
  const trays = cells(await saved(page, hands, 'table-trays'));
  const byKind = new Map<string, number>();
  for (const row of trays.filter(({ Where }) => Where === 'Finished')) {
    const kind = `${row.Variant}, ${row.Grade}`;
    byKind.set(kind, (byKind.get(kind) ?? 0) + Number(row.Pieces));
  }
  expect(shown).toBeGreaterThan(0);
  expect([...byKind.values()].reduce((sum, pieces) => sum + pieces, 0)).toBe(shown);
  const kinds = shelf.map((row) => [`${row.Variant}, ${row.Grade}`, Number(row['On the shelf'])] as const);
  expect(new Map(kinds)).toEqual(byKind);
  for (const row of shelf) expect(row.Finished).toBe(row['On the shelf']);
  expect(troubles).toEqual([]);
  await page.context().close();
});

describe('a listing', () => {
  test('goes out with its photos, is made once, and comes back with one tap', async () => {
    const { page, troubles, hands } = await onShelf();
    const { at, tap, close, goTo, figure } = hands;
    const finished = count(await figure('shelf-finished'));
    await goTo('#/shelf/plum-copper');
    await at('variant-photo-file-input').setInputFiles(file('a.jpg', await turnedJpeg(page, 1)));
    await at('variant-photo-strip').locator('img').waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);

    await goTo('#/shelf/listing');
    await close('list-now');
    await at('nothing-to-list').waitFor();
    expect(await at('shelf-last').textContent()).toContain(`${finished} pieces`);
    await at('listing-zip').filter({ hasText: '1 photo' }).waitFor();
    expect(await at('listing-pictureless').textContent()).not.toContain('plum, copper');
    await at('listing-columns').click();
    await at('listing-columns-chosen').waitFor();
    await tap('listing-remove-ferrule');
    await tap('listing-up-pieces', 2);
    expect(await accessibilityFaults(page)).toEqual([]);

    const csv = await saved(page, hands, 'listing-csv');
    const rows = cells(csv);
    expect(Object.keys(rows[0] ?? {})).toEqual([
      ...['Name', 'Pieces', 'Wood', 'Grade', 'Price', 'Blemishes', 'Photo files'],
    ]);
    expect(rows.reduce((sum, row) => sum + Number(row.Pieces), 0)).toBe(finished);
    const files = await filesInZip(await saved(page, hands, 'listing-zip'));
    expect(files.map(({ name }) => name)).toEqual(['listing.csv', 'awl-haft-plum-copper-1.jpg']);
    expect(files[0]?.bytes.equals(csv)).toBe(true);
    expect([...(files[1]?.bytes.subarray(0, 3) ?? [])]).toEqual([0xff, 0xd8, 0xff]);
    const withPhoto = rows.filter((row) => row['Photo files'] !== '');
    expect(new Set(withPhoto.map((row) => row['Photo files']))).toEqual(new Set([files[1]?.name]));
    expect(new Set(withPhoto.map(({ Name }) => Name))).toEqual(new Set(['Awl haft, plum, copper']));

    const pages = await printed(page);
    const paper = pages
      .map(({ text }) => text)
      .join('\n')
      .replace(/\s+/g, ' ');
    expect(paper).toContain('Haft workshop (demo)');
    for (const row of rows) expect(paper).toContain(row.Wood);
    expect(paper).not.toContain('What to list');
    expect(pages[0]?.width).toBeCloseTo(210, 0);

    // The list of columns stays the maker's own, and what is listed is not listed again.
    await page.reload();
    await at('nothing-to-list').waitFor();
    await at('listing-columns').click();
    expect(await at('listing-columns-chosen').textContent()).not.toContain('Ferrule');
    await close('shelf-take-back');
    await at('list-now')
      .filter({ hasText: `List ${finished} pieces` })
      .waitFor();
    expect(await at('listing-empty').textContent()).toContain('Nothing');
    expect(troubles).toEqual([]);
    await page.context().close();
  });

  test('says which photos are not on this tablet, and is without them', async () => {
    const { page, hands } = await onShelf();
    const { at, close, goTo } = hands;
    await goTo('#/shelf/plum-copper');
    await at('variant-photo-file-input').setInputFiles(file('a.jpg', await turnedJpeg(page, 1)));
    await at('variant-photo-strip').locator('img').waitFor();
    // As on a tablet to which the records came, and not the photos.
    await page.evaluate(async () => {
      const db = await new Promise<IDBDatabase>((resolve, reject) => {
        const request = indexedDB.open('tallywright-demo-photos');
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
      const stores = [...db.objectStoreNames];
      const change = db.transaction(stores, 'readwrite');
      for (const name of stores) change.objectStore(name).clear();
      await new Promise((resolve) => {
        change.oncomplete = resolve;
      });
      db.close();
    });
    await goTo('#/shelf/listing');
    await close('list-now');
    await at('listing-missing').waitFor();
    expect(await at('listing-missing').textContent()).toContain('1 photo is not on this tablet');
    expect(await at('listing-missing').textContent()).toContain('Awl haft, plum, copper: 1 photo');
    expect(await accessibilityFaults(page)).toEqual([]);
    const files = await filesInZip(await saved(page, hands, 'listing-zip'));
    expect(files.map(({ name }) => name)).toEqual(['listing.csv']);
    expect(files[0]?.bytes.toString('utf8')).not.toContain('.jpg');
    await page.context().close();
  });
});

test('a sale on a phone is taken down with its price, and seen on the shelf after a reload', async () => {
  const { page, troubles, hands } = await onShelf('phone');
  const { at, close, figure, tap } = hands;
  const before = count(await figure('shelf-plum-copper-first-shelf'));
  await tap('shelf-move-plum-copper');
  await at('move-to-sold').click();
  await at('move-pieces').fill('2');
  await at('move-price').fill('26.50');
  expect(await accessibilityFaults(page)).toEqual([]);
  await close('move-save');
  await at('shelf-takings').filter({ hasText: '53.00' }).waitFor();
  await page.reload();
  await at('shelf-takings').filter({ hasText: '53.00' }).waitFor();
  expect(count(await figure('shelf-plum-copper-first-shelf'))).toBe(before - 2);
  expect(await figure('shelf-plum-copper-first-sold')).toBe('2');
  expect(await accessibilityFaults(page)).toEqual([]);
  expect(troubles).toEqual([]);
  await page.context().close();
});
