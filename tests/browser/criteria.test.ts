import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { accessibilityFaults, launchBrowser, openDemo } from '../support/browser.ts';
import { demoTray } from '../support/demo-tray.ts';
import { type Maker, maker } from '../support/maker.ts';
import { file, turnedJpeg } from '../support/pictures.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** What passes, in words and with a picture of each verdict, as a maker sets it up; kitting becomes a check. */
async function setUpCriterion({ at, tap, close, goTo, page }: Maker): Promise<void> {
  await goTo('#/set-up/stages');
  await tap('stage-kit-parts');
  await tap('stage-kind-check');
  await close('stage-save');
  await goTo('#/set-up/reasons');
  await tap('reason-part-faulty');
  await at('reason-passes').fill('No dent that a thumb nail catches in');
  for (const verdict of ['good', 'bad'] as const) {
    const picture = file(`${verdict}.jpg`, await turnedJpeg(page, verdict === 'good' ? 1 : 3));
    await at(`criterion-photo-${verdict}-file-input`).setInputFiles(picture);
    await at(`criterion-${verdict}`).locator('img').waitFor();
  }
  expect(await accessibilityFaults(page)).toEqual([]);
  await close('reason-save');
}

test('a criterion stands with its pictures beside the pass button; who fails by it is counted, with a photo behind', async () => {
  const { page, troubles } = await openDemo(browser);
  const hands = maker(page);
  const { at, tap, workOn, openTray, goTo } = hands;
  await setUpCriterion(hands);
  const code = await demoTray(hands);
  await workOn('kit-parts', code);

  const button = at('flaw-part-faulty');
  await button.locator('img[data-verdict=bad]').waitFor();
  expect(await button.textContent()).toContain('No dent that a thumb nail catches in');
  expect(await button.locator('img').evaluateAll((all) => all.map((img) => img.getAttribute('alt')))).toEqual(
    ['Passes', 'Does not pass'],
  );
  // The pictures are drawn, and stand where the eye is when the finger is on pass: on one screen, without scrolling.
  expect(
    await button
      .locator('img')
      .evaluateAll((all) => all.every((img) => img instanceof HTMLImageElement && img.naturalWidth > 0)),
  ).toBe(true);
  const [pass, standard] = [await at('pass').boundingBox(), await button.boundingBox()];
  if (!pass || !standard) throw new Error('both are on the screen');
  const height = page.viewportSize()?.height ?? 0;
  for (const box of [pass, standard]) expect(box.y + box.height).toBeLessThanOrEqual(height);
  const apart = Math.max(standard.x - (pass.x + pass.width), standard.y - (pass.y + pass.height));
  expect(apart).toBeLessThan(64);
  expect(await accessibilityFaults(page)).toEqual([]);

  await tap('flaw-part-faulty');
  await at('standard-good').locator('img').waitFor();
  await at('standard-bad').locator('img').waitFor();
  await at('flaw-photo-input').setInputFiles(file('flaw.jpg', await turnedJpeg(page, 1)));
  await at('flaw-photo').filter({ hasText: 'Photo taken' }).waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  const before = await hands.left();
  await tap('outcome-second');
  await at('saved-mark').filter({ hasText: 'Saved' }).waitFor();
  expect(await hands.left()).toBe(before - 1);

  await goTo('#/yield/flaws');
  await page.getByRole('button', { name: /^Plum at Kit parts/ }).click();
  await at('flaw-photos').locator('img').waitFor();
  await openTray(code);
  await at('tray-photo-strip').locator('img').waitFor();
  expect(await at('tray-photo-strip').textContent()).toContain('Faulty part at Kit parts');
  expect(troubles).toEqual([]);
  await page.context().close();
});

test('a second that was reworked is raised where it is in the hand, and lowered again with one tap', async () => {
  const { page, troubles } = await openDemo(browser);
  const hands = maker(page);
  const { at, tap, close, workOn, openTray } = hands;
  const code = await demoTray(hands);
  await workOn('kit-parts', code);
  await hands.flaw('part-faulty', 'outcome-second');
  await tap('pass');
  await workOn('cut-and-bore', code);
  expect(await at('bench-raise').count()).toBe(0);
  await tap('stage-grade-second');
  await at('bench-raise').waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  await tap('bench-raise');
  await at('raise-sheet').waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.waitForTimeout(400);
  const gone = at('raise-gone-part-faulty');
  if ((await gone.getAttribute('aria-pressed')) !== 'true') await tap('raise-gone-part-faulty');
  await close('raise-save');
  await at('raise-sheet').waitFor({ state: 'detached' });
  expect(await hands.left()).toBe(2);
  expect(await at('last-act').textContent()).toContain('raised to firsts, gone: Faulty part');
  await tap('undo');
  await at('stage-grade').waitFor();
  expect(await hands.left()).toBe(1);
  // Undo, put back, raise and what leaves the tray stand in one row.
  await at('put-back').waitFor();
  await at('bench-raise').waitFor();
  expect(await page.evaluate(() => document.documentElement.scrollHeight - innerHeight)).toBeLessThanOrEqual(
    0,
  );

  await openTray(code);
  await tap('raise-open');
  await at('raise-sheet').waitFor();
  expect(await at('raise-where').textContent()).toContain('1 second-grade');
  expect(troubles).toEqual([]);
  await page.context().close();
});
