import { createHash } from 'node:crypto';
import { gunzipSync } from 'node:zlib';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { accessibilityFaults, launchBrowser, openPage } from '../support/browser.ts';
import { emptyTablet, fileOf, passphrase, saved, saveSealed } from '../support/copy-hands.ts';
import { makeUpTrays, setUpShop } from '../support/first-ten-minutes.ts';
import { type Maker, maker } from '../support/maker.ts';
import { file, turnedJpeg } from '../support/pictures.ts';

let browser: Browser;
/** A shop with two photos, and its copies: with them, without, and sealed. */
let shop: Shop;

interface Shop {
  readonly tray: string;
  readonly photos: Readonly<Record<string, string>>;
  readonly whole: Buffer;
  readonly without: Buffer;
  readonly sealed: Buffer;
}

/** The photos that a tablet keeps: the name of each, and the SHA-256 of its bytes by node:crypto. */
async function keptPhotos(page: Page): Promise<Record<string, string>> {
  const kept = await page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open('tallywright-photos');
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    const store = db.transaction('photos').objectStore('photos');
    const all = <Item>(request: IDBRequest<Item[]>) =>
      new Promise<Item[]>((resolve) => {
        request.onsuccess = () => resolve(request.result);
      });
    const [keys, photos] = await Promise.all([all(store.getAllKeys()), all<Uint8Array>(store.getAll())]);
    db.close();
    return keys.map((key, at) => [String(key), [...(photos[at] ?? [])]] as const);
  });
  return Object.fromEntries(
    kept.map(([key, bytes]) => [key, createHash('sha256').update(Buffer.from(bytes)).digest('hex')]),
  );
}

async function aShop(): Promise<Shop> {
  const { page, troubles } = await openPage(browser);
  const here = maker(page);
  const { beech } = await makeUpTrays(here, await setUpShop(here));
  const [tray] = beech;
  await here.openTray(tray);
  for (const orientation of [1, 6] as const) {
    await here.at('tray-photo-file-input').setInputFiles(file('a.jpg', await turnedJpeg(page, orientation)));
    await here
      .at('tray-photo-strip')
      .locator('img')
      .nth(orientation === 1 ? 0 : 1)
      .waitFor();
  }
  await here.goTo('#/set-up/files');
  await here.at('photos-in-no-file').filter({ hasText: '2 photos are in no file' }).waitFor();
  await here.at('copy-photos-without').first().click();
  const without = await saved(page, () => here.tap('save-copy'));
  // A copy without them has told nothing of the photos.
  await here.at('photos-in-no-file').waitFor();
  await here.at('copy-photos-with').first().click();
  const whole = await saved(page, () => here.tap('save-copy'));
  await here.at('photos-in-no-file').waitFor({ state: 'detached' });
  expect(await accessibilityFaults(page)).toEqual([]);
  const { sealed } = await saveSealed(here);
  const photos = await keptPhotos(page);
  expect(troubles).toEqual([]);
  await page.context().close();
  return { tray, photos, whole, without, sealed };
}

beforeAll(async () => {
  browser = await launchBrowser();
  shop = await aShop();
});
afterAll(() => browser.close());

async function expectPhotosShown({ here, page }: { here: Maker; page: Page }): Promise<void> {
  await here.at('restored-photos').filter({ hasText: '2 photos were added.' }).waitFor();
  await here.tap('restored-good');
  await here.openTray(shop.tray);
  await here.at('tray-photo-strip').locator('img').nth(1).waitFor();
  const widths = await here
    .at('tray-photo-strip')
    .locator('img')
    .evaluateAll((images) => images.map((image) => (image as HTMLImageElement).naturalWidth));
  expect(Math.min(...widths)).toBeGreaterThan(0);
  expect(await keptPhotos(page)).toEqual(shop.photos);
}

test('one file has the shop and its photos: zlib opens it, and says the same lines as of one without', () => {
  expect(Object.entries(shop.photos).map(([name, sum]) => name === sum)).toEqual([true, true]);
  const lines = (copy: Buffer) => gunzipSync(copy).toString().trimEnd().split('\n');
  const [first = '', ...entries] = lines(shop.whole);
  const [firstWithout = '', ...entriesWithout] = lines(shop.without);
  expect(entries).toEqual(entriesWithout);
  expect(JSON.parse(first).photos).toMatchObject({ photos: 2, all: 2, volume: 1, volumes: 1 });
  expect(JSON.parse(firstWithout).photos).toBeUndefined();
  expect(shop.whole.length).toBeGreaterThan(shop.without.length + 1000);
});

test('it brings the photos to an empty tablet, which shows them, and brings none twice', async () => {
  const tablet = await emptyTablet(browser);
  const { here, page } = tablet;
  await here.close('restore');
  await here.at('restore-file').setInputFiles(fileOf(shop.whole));
  expect(await here.figure('offer-photos')).toBe('2');
  expect(await here.figure('offer-photos-damaged')).toBe('0');
  expect(await accessibilityFaults(page)).toEqual([]);
  await here.close('add-copy');
  await expectPhotosShown(tablet);
  await here.goTo('#/set-up/files');
  // They came from a file that a person has.
  await here.at('photos-held').filter({ hasText: '2 photos' }).waitFor();
  expect(await here.at('photos-in-no-file').count()).toBe(0);
  await here.close('restore');
  await here.at('restore-file').setInputFiles(fileOf(shop.whole));
  expect(await here.figure('offer-photos-here')).toBe('2');
  await here.at('nothing-to-add').waitFor();
  expect(tablet.troubles).toEqual([]);
  await page.context().close();
});

test('photos come later too: first a copy without, then one with them', async () => {
  const tablet = await emptyTablet(browser);
  const { here, page } = tablet;
  await here.close('restore');
  await here.at('restore-file').setInputFiles(fileOf(shop.without));
  await here.at('offer-adds').waitFor();
  expect(await here.at('offer-photos').count()).toBe(0);
  await here.close('add-copy');
  await here.tap('restored-good');
  await here.goTo('#/set-up/files');
  await here.close('restore');
  await here.at('restore-file').setInputFiles(fileOf(shop.whole));
  expect(await here.figure('offer-photos')).toBe('2');
  await here.close('add-copy');
  await expectPhotosShown(tablet);
  expect(tablet.troubles).toEqual([]);
  await page.context().close();
});

test('sealed, it does the same once it is opened', async () => {
  const tablet = await emptyTablet(browser);
  const { here, page } = tablet;
  await here.close('restore');
  await here.at('restore-file').setInputFiles(fileOf(shop.sealed, 'copy.sealed'));
  await here.at('secret').fill(passphrase);
  await here.tap('unseal');
  expect(await here.figure('offer-photos')).toBe('2');
  await here.close('add-copy');
  await expectPhotosShown(tablet);
  expect(tablet.troubles).toEqual([]);
  await page.context().close();
});

test('cut in its photos it still brings the shop, and says what is damaged', async () => {
  const tablet = await emptyTablet(browser);
  const { here, page } = tablet;
  await here.close('restore');
  await here.at('restore-file').setInputFiles(fileOf(shop.whole.subarray(0, shop.whole.length - 300)));
  await here.at('offer-damaged').waitFor();
  expect(Number(await here.figure('offer-photos-damaged'))).toBeGreaterThan(0);
  await here.close('add-copy');
  await here.at('restored-photos').filter({ hasText: 'Damaged in the copy' }).waitFor();
  await here.tap('restored-good');
  await here.openTray(shop.tray);
  await here.at('tray-photo-strip').waitFor();
  expect(tablet.troubles).toEqual([]);
  await page.context().close();
});
