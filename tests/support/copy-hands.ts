/** Hands that save copies of a shop on one tablet and bring them back on another. */
import type { Browser, Page } from 'playwright-core';
import { inject } from 'vitest';
import { openPage, watchTroubles } from './browser.ts';
import { handedOut } from './handed-out.ts';
import { type Maker, maker } from './maker.ts';

export const passphrase = 'beech, plum and brass';

/** The bytes of the file that a press hands out. */
export async function saved(page: Page, press: () => Promise<void>): Promise<Buffer> {
  return (await handedOut(page, press)).bytes;
}

/** Saves a sealed copy from the files page; its bytes, and the twelve words that open it too. */
export async function saveSealed(here: Maker) {
  await here.at('seal-way').locator('summary').click();
  await here.at('passphrase').fill(passphrase);
  await here.at('passphrase-again').fill(passphrase);
  await here.tap('seal');
  await here.at('recovery-words').waitFor();
  const words = await here.at('recovery-words').locator('li').allInnerTexts();
  return { words, sealed: await saved(here.page, () => here.tap('words-written')) };
}

/** A tablet on which nothing was ever tapped. */
export async function emptyTablet(browser: Browser, prepare?: (page: Page) => Promise<unknown>) {
  const { page } = await openPage(browser, { url: 'about:blank' });
  await prepare?.(page);
  const troubles = watchTroubles(page, new URL(inject('appUrl')).origin);
  await page.goto(inject('appUrl'));
  const here = maker(page);
  await here.at('restore').waitFor();
  return { here, page, troubles };
}

/** A copy as a person chooses it. */
export const fileOf = (buffer: Buffer, name = 'copy.jsonl.gz') => ({
  ...{ name, mimeType: 'application/gzip', buffer },
});
