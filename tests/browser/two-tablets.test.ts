/** Two tablets that were set up apart and then merged: one letter each, and trays of one code told apart. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser, openPage } from '../support/browser.ts';
import { setUpShop } from '../support/first-ten-minutes.ts';
import { handedOut } from '../support/handed-out.ts';
import { type Maker, maker } from '../support/maker.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** A tablet with a shop of its own and one tray in it. */
async function tabletApart(): Promise<{ hand: Maker; code: string; beech: string }> {
  const { page } = await openPage(browser);
  const hand = maker(page);
  const { beech } = await setUpShop(hand);
  return { hand, beech, code: await makeTray(hand, beech) };
}

async function makeTray(hand: Maker, variant: string): Promise<string> {
  await hand.goTo('#/trays');
  await hand.goTo('#/trays/new');
  await hand.tap(variant);
  await hand.close('make-save');
  return hand.figure('made-code');
}

test('the later one takes another letter, and says so once; a code of both shows two trays', async () => {
  const first = await tabletApart();
  const second = await tabletApart();
  expect(second.code).toBe(first.code);

  await first.hand.goTo('#/set-up/files');
  const copy = await handedOut(first.hand.page, () => first.hand.tap('save-copy'));
  const { hand, beech, code } = second;
  await hand.goTo('#/set-up/files');
  await hand.close('restore');
  await hand.at('restore-file').setInputFiles({
    name: copy.name,
    mimeType: 'application/gzip',
    buffer: copy.bytes,
  });
  await hand.close('add-copy');
  await hand.at('restored').or(hand.at('go-on')).waitFor();
  if (await hand.at('go-on').isVisible()) await hand.close('go-on');
  await hand.tap('restored-good');

  await hand.at('letter-notice').filter({ hasText: 'begin with C' }).waitFor();
  await hand.close('letter-put-away');
  await hand.page.reload();
  await hand.at('copy-age').waitFor();
  expect(await hand.at('letter-notice').count()).toBe(0);
  expect((await makeTray(hand, beech))[0]).toBe('C');

  await hand.goTo('#/trays');
  await hand
    .at('shared-codes')
    .filter({ hasText: `Two trays carry ${code}.` })
    .waitFor();
  await hand.page.keyboard.type(code);
  await hand.page.keyboard.press('Enter');
  await hand.at('same-code').waitFor();
  expect(await hand.page.locator('[data-testid^=same-code-]').count()).toBe(2);
  await hand.close('recode');
  expect((await hand.figure('new-code'))[5]).toBe('C');
  await hand.page.keyboard.press('Escape');
  await hand.at('shared-codes').waitFor({ state: 'detached' });
});
