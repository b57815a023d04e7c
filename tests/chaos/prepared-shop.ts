/** Before the chaos runs: a shop with one great tray in a profile of its own, to be copied by each run. */
import type { BrowserContext } from 'playwright-core';
import { makeReadyOffline } from '../support/browser.ts';
import { setUpShop } from '../support/first-ten-minutes.ts';
import { maker } from '../support/maker.ts';

/** As many as one tray is made up with, and how many such trays are joined into the great one. */
const [perTray, traysJoined] = [999, 4];
/** More pieces than any run taps off. */
export const piecesOnTray = perTray * traysJoined;
const stage = 'kit-parts';

/** Sets the shop up in an empty profile; returns the hash address of the great tray at its first stage. */
export async function prepareShop(context: BrowserContext, url: string): Promise<string> {
  const page = context.pages()[0] ?? (await context.newPage());
  await page.goto(url);
  await makeReadyOffline(page);
  const hands = maker(page);
  const { plum } = await setUpShop(hands);
  const { at, tap, close, goTo, openTray, workOn } = hands;
  await goTo('#/trays/new');
  await tap(plum);
  await at('make-batch').selectOption({ label: 'Spring' });
  await at('make-pieces').fill(String(perTray));
  await at('make-count').fill(String(traysJoined));
  await close('make-save');
  await at('made-code').first().waitFor();
  const [great = '', ...others] = await page.locator('[data-testid=made-code]').allInnerTexts();
  await close('made-done');
  for (const code of others) {
    await openTray(code);
    await tap('join-open');
    await at('join-choice').locator(`input[value="${great}"]`).check({ force: true });
    await close('join-save');
  }
  await workOn(stage, great);
  // Asked for by the app when the shop was begun.
  if (!(await page.evaluate(() => navigator.storage.persisted())))
    throw new Error('The app has not asked the browser to keep what it stores.');
  return page.evaluate(() => location.hash);
}
