import { createHash } from 'node:crypto';
import { zipSync } from 'fflate';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { accessibilityFaults, launchBrowser, openDemo } from '../support/browser.ts';
import { demoTray } from '../support/demo-tray.ts';
import { handedOut } from '../support/handed-out.ts';
import { type Maker, maker } from '../support/maker.ts';
import {
  file,
  orientations,
  type PictureFile,
  png,
  quarters,
  secret,
  turnedJpeg,
  upright,
} from '../support/pictures.ts';
import { filesInZip } from '../support/zip-reader.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

async function onTrayPage() {
  const { page, troubles } = await openDemo(browser);
  const hands = maker(page);
  const code = await demoTray(hands);
  await hands.openTray(code);
  return { page, troubles, hands, code };
}

async function choose(hands: Maker, picture: PictureFile): Promise<string> {
  await hands.at('tray-photo-file-input').setInputFiles(picture);
  const said = hands.at('tray-photo-said');
  await said.filter({ hasNotText: 'Being kept' }).filter({ hasText: /./ }).waitFor({ timeout: 60_000 });
  return (await said.textContent()) ?? '';
}

/** Size, corners and text of every photo that the demo keeps, in the order of their bytes. */
function keptPhotos(page: Page) {
  return page.evaluate(async () => {
    const name = 'tallywright-demo-photos';
    if (!(await indexedDB.databases()).some((each) => each.name === name)) return [];
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open(name);
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    const all = await new Promise<Uint8Array<ArrayBuffer>[]>((resolve) => {
      const request = db.transaction('photos').objectStore('photos').getAll();
      request.onsuccess = () => resolve(request.result);
    });
    db.close();
    return Promise.all(
      all.map(async (bytes) => {
        const picture = await createImageBitmap(new Blob([bytes], { type: 'image/jpeg' }));
        const { width, height } = picture;
        const context = new OffscreenCanvas(width, height).getContext('2d');
        if (!context) throw new Error('no canvas');
        context.drawImage(picture, 0, 0);
        const at = (across: number, down: number) =>
          [...context.getImageData(Math.floor(across * width), Math.floor(down * height), 1, 1).data].slice(
            0,
            3,
          );
        return {
          ...{ width, height, text: [...bytes].map((byte) => String.fromCharCode(byte)).join('') },
          corners: [at(0.25, 0.25), at(0.75, 0.25), at(0.25, 0.75), at(0.75, 0.75)],
        };
      }),
    );
  });
}

test('a photo is kept upright however its camera held it, without a word of where it was taken', async () => {
  const { page, troubles, hands } = await onTrayPage();
  for (const orientation of orientations) {
    const jpeg = await turnedJpeg(page, orientation);
    expect(jpeg.toString('latin1')).toContain(secret);
    expect(await choose(hands, file('a.jpg', jpeg))).toContain('Kept');
    const photos = await keptPhotos(page);
    expect(photos.length).toBeGreaterThan(0);
    for (const { corners, text, ...size } of photos) {
      expect(size, `orientation ${orientation}`).toEqual(upright);
      for (const [at, colour] of quarters.entries()) {
        const off = colour.map((value, channel) => Math.abs(value - (corners[at]?.[channel] ?? -1000)));
        expect(Math.max(...off), `orientation ${orientation}, quarter ${at}`).toBeLessThan(12);
      }
      expect(text).not.toContain(secret);
      expect(text).not.toContain('Exif');
    }
  }
  expect(troubles).toEqual([]);
  await page.context().close();
});

describe('other files', () => {
  test('a PNG with alpha stands on white, and one of 12,000 pixels is made small', async () => {
    const { page, hands } = await onTrayPage();
    await choose(hands, file('clear.png', png({ width: 40, height: 40 }, { alpha: true }), 'image/png'));
    expect((await keptPhotos(page)).map(({ corners }) => corners[0])).toEqual([[255, 255, 255]]);
    expect(
      await choose(hands, file('wide.png', png({ width: 12_000, height: 5000 }), 'image/png')),
    ).toContain('Kept');
    const sizes = (await keptPhotos(page)).map(({ width, height }) => [width, height]);
    expect(sizes).toContainEqual([1600, 667]);
    await page.context().close();
  });

  const script =
    '<svg xmlns="http://www.w3.org/2000/svg"><script>document.title = "broken in"</script></svg>';
  const refused: readonly (readonly [string, PictureFile, string])[] = [
    ['a text that is called a JPEG', file('a.jpg', Buffer.from('no picture at all, only words')), 'no photo'],
    ['a drawing with a script in it', file('a.svg', Buffer.from(script), 'image/svg+xml'), 'no photo'],
    ['the same that is called a JPEG', file('a.jpg', Buffer.from(script)), 'no photo'],
    ['an empty file', file('a.jpg', Buffer.alloc(0)), 'no photo'],
    [
      'a JPEG that ends after its first bytes',
      file('a.jpg', Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16])),
      'no photo',
    ],
    [
      'a PNG whose pixels are broken',
      file('a.png', png({ width: 64, height: 64 }, { spoil: true })),
      'cannot be opened',
    ],
    ['a picture of 144 million pixels', file('a.png', png({ width: 12_000, height: 12_000 })), 'too large'],
  ];
  test('what is no picture, or too large a one, is refused with the reason, and nothing is kept', async () => {
    const { page, troubles, hands } = await onTrayPage();
    const title = await page.title();
    for (const [what, picture, why] of refused) expect(await choose(hands, picture), what).toContain(why);
    expect(await keptPhotos(page)).toEqual([]);
    expect(await hands.at('tray-photo-strip').count()).toBe(0);
    expect(await page.title()).toBe(title);
    expect(troubles).toEqual([]);
    await page.context().close();
  });
});

test('a flaw photographed at the bench stands on its tray and behind its field of the heat table', async () => {
  const { page, troubles, hands, code } = await onTrayPage();
  const jpeg = await turnedJpeg(page, 1);
  await hands.workOn('kit-parts', code);
  await hands.tap('flaw-part-faulty');
  await hands.at('flaw-photo-input').setInputFiles(file('flaw.jpg', jpeg));
  await hands.at('flaw-photo').filter({ hasText: 'Photo taken' }).waitFor();
  await hands.tap('outcome-mended');
  await hands.openTray(code);
  await hands.at('tray-photo-strip').locator('img').waitFor();
  expect(await hands.at('tray-photo-strip').textContent()).toContain('Faulty part at Kit parts');
  expect(await accessibilityFaults(page)).toEqual([]);

  await page.reload();
  await hands.at('tray-photo-strip').locator('img').waitFor();
  await hands.goTo('#/yield/flaws');
  await page.getByRole('button', { name: /^Plum at Kit parts/ }).click();
  const behind = hands.at('flaw-photos');
  await behind.locator('img').waitFor();
  await behind.getByRole('button').click();
  await hands.at('photo-large').locator('img').waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  await hands.close('photo-take-back');
  await behind.waitFor({ state: 'detached' });
  expect(troubles).toEqual([]);
  await page.context().close();
});

test('photos go out of one tablet as a file and into another, which then shows them', async () => {
  const { page, hands } = await onTrayPage();
  await choose(hands, file('a.jpg', await turnedJpeg(page, 6)));
  await hands.goTo('#/set-up/files');
  await hands.at('photos-held').filter({ hasText: '1 photo' }).waitFor();
  await hands.at('photos-in-no-file').filter({ hasText: '1 photo is in no file yet' }).waitFor();
  const { bytes: saved } = await handedOut(page, () => hands.tap('save-photos-1'));
  await hands.at('photos-in-no-file').waitFor({ state: 'detached' });
  const [kept] = await keptPhotos(page);
  const [zipped] = await filesInZip(saved);
  expect(zipped?.bytes.toString('latin1')).toBe(kept?.text);
  expect(zipped?.name).toBe(
    `${createHash('sha256')
      .update(zipped?.bytes ?? '')
      .digest('hex')}.jpg`,
  );
  await page.context().close();

  const other = await openDemo(browser);
  const there = maker(other.page);
  await there.goTo('#/set-up/files');
  const takeIn = async (zip: Buffer) => {
    await there.at('take-photos-in-input').setInputFiles(file('photos.zip', zip, 'application/zip'));
    const said = there.at('take-photos-in-said');
    await said.filter({ hasNotText: 'Being taken' }).filter({ hasText: /./ }).waitFor();
    return said.textContent();
  };
  expect(await takeIn(saved)).toContain('1 photo was taken in');
  expect((await keptPhotos(other.page)).map(({ corners }) => corners)).toEqual([kept?.corners]);
  expect(await takeIn(saved)).toContain('Already here: 1.');
  expect(await takeIn(Buffer.from('no zip'))).toContain('no file with photos');
  const forged = zipSync({ [`${'a'.repeat(64)}.jpg`]: zipped?.bytes ?? new Uint8Array() });
  expect(await takeIn(Buffer.from(forged))).toContain('Not photos of a tablet: 1.');
  expect(await keptPhotos(other.page)).toHaveLength(1);
  expect(await accessibilityFaults(other.page)).toEqual([]);
  expect(other.troubles).toEqual([]);
  await other.page.context().close();
});
