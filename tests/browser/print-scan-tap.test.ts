/** From paper to the tally and back, with the host gone: a label is printed, shown to the camera, tapped, and undone by foot. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { serveBuild } from '../../.ci/serve-build.mjs';
import { placeOnPage } from '../../src/domain/label/label-size.ts';
import { labelSizes } from '../../src/domain/label/label-sizes.ts';
import { readSymbol } from '../../src/domain/label/symbol-text.ts';
import { emptyShop } from '../../src/domain/shop/shop.ts';
import { launchBrowser, makeReadyOffline, openDemo, withServiceWorker } from '../support/browser.ts';
import { cameraFilm } from '../support/camera-film.ts';
import { type LabelFace, type LabelLook, printedFace } from '../support/label-frames.ts';
import { maker } from '../support/maker.ts';
import { printed } from '../support/printed-page.ts';
import { demoTrays } from '../support/scanned-shop.ts';

const aBusyMachine = { timeout: 60_000 };
const camera = cameraFilm();
let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser({ flags: [...camera.flags, '--use-fake-ui-for-media-stream'] });
});
afterAll(async () => {
  await browser.close();
  camera.remove();
});

/** Turned, at three distances, with blur, noise and dust. */
const looks: readonly Partial<LabelLook>[] = [
  { module: 4, turn: 27, blur: 0.6, noise: 15, specks: 4 },
  { module: 6, turn: 184, blur: 1.2, noise: 30, specks: 8 },
  { module: 9, turn: 305, blur: 2, noise: 20, specks: 8, contrast: 0.6 },
];

const size = labelSizes(emptyShop().registers).find(({ id }) => id === 'a4-3x8')?.fact;
if (!size) throw new Error('no sheet of 24 labels');

test('a printed label is scanned, tapped and undone by foot, offline', async () => {
  const served = await serveBuild({ folder: inject('builtApp'), under: '/shop/' });
  const { page, troubles } = await openDemo(browser, { url: served.url, ...withServiceWorker });
  await makeReadyOffline(page);
  await served.close();
  await page.reload();
  const { at, goTo, left, tap } = maker(page);
  const codes = await demoTrays(maker(page));
  await goTo('#/set-up/tablet');
  await tap('key-undo');
  await page.keyboard.press('PageUp');
  await at('key-undo').filter({ hasText: 'now does' }).waitFor();

  await goTo('#/trays/labels');
  await tap('print-all');
  await at('print-size').selectOption('a4-3x8');
  const labels = new Map<string, LabelFace>();
  for (const sheet of await printed(page))
    for (let place = 0; place < 24; place += 1) {
      const label = { ...placeOnPage(size, place), width: size.width / 100, height: size.height / 100 };
      const symbol = sheet.symbolIn(label);
      if (!symbol) continue;
      const told = readSymbol(symbol.text);
      if (told.kind === 'tray') labels.set(told.code, printedFace(sheet, label, symbol));
    }

  for (const [index, look] of looks.entries()) {
    const code = codes[index % codes.length] ?? '';
    const label = labels.get(code);
    if (!label) throw new Error(`no label of ${code} was printed`);
    await goTo('#/bench/kit-parts');
    camera.show([label], look);
    await tap('scan-at-bench');
    await at('stage-screen').waitFor(aBusyMachine);
    expect((await at('stage-code').textContent())?.replaceAll(/\s/g, '')).toContain(code);
    const before = await left();
    await page.waitForTimeout(140);
    await tap('pass');
    await at('saved-mark').filter({ hasText: 'Saved' }).waitFor();
    expect(await left()).toBe(before - 1);
    await page.keyboard.press('PageUp');
    await at('saved-mark').filter({ hasText: 'Taken back' }).waitFor();
    expect(await left()).toBe(before);
  }
  expect(troubles).toEqual([]);
  await page.context().close();
});
