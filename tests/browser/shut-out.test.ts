/** A tablet is lost, and shut out by a new key as the guide for the hub says: by its command, and by the screens of the tablets. */
import { createHash, X509Certificate } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, expect, inject, test } from 'vitest';
import { filesIn } from '../../.ci/hub/data-folder.mjs';
import { launchBrowser } from '../support/browser.ts';
import { hubSettings, runningIn, sayToHub, startHubCommand } from '../support/hub-command.ts';
import { aFolder } from '../support/hub-folder.ts';
import { joinedTablet, leftOn, shopWithOneTray, standing, untilSame } from '../support/joined-tablets.ts';

const data = join(aFolder(), 'data');
const files = filesIn(data);
let browser: Browser | undefined;
afterAll(() => browser?.close());

/** Stands for the root certificate in the tablet's store: Chromium looks for this key among those that signed the page's. */
function launchTrusting(): Promise<Browser> {
  const signing = new X509Certificate(readFileSync(join(files.root, '..', 'intermediate.crt')));
  const key = createHash('sha256').update(signing.publicKey.export({ type: 'spki', format: 'der' }));
  return launchBrowser({ flags: [`--ignore-certificate-errors-spki-list=${key.digest('base64')}`] });
}

/** What the picture says that a person points the tablet's camera at. */
const invitation = () => /href="([^"]*#\/join\/[^"]*)"/.exec(readFileSync(files.joining, 'utf8'))?.[1] ?? '';

test('of three tablets one is lost: with the new key two meet again with all taps, and the lost one is refused and works alone', async () => {
  const env = await hubSettings({ data, built: inject('builtApp') });
  await startHubCommand(env).says(/joining\.html/);
  const tablets = await launchTrusting();
  browser = tablets;
  const url = `https://127.0.0.1:${env.HUB_PORT}/`;
  let code = '';
  const prepare = async (hand: Parameters<typeof shopWithOneTray>[0]) => {
    code = await shopWithOneTray(hand, 24);
  };
  const first = await joinedTablet(tablets, { url, link: invitation(), prepare });
  const second = await joinedTablet(tablets, { url, link: invitation() });
  const lost = await joinedTablet(tablets, { url, link: invitation() });
  for (const { hand } of [first, second, lost]) {
    await hand.workOn('kit-parts', code);
    await hand.tap('pass');
  }
  const before = await untilSame([first, second, lost]);
  const [oldLink, oldShop] = [invitation(), runningIn(data).shop];

  expect(sayToHub(env, 'new-key')).toContain(`key of ${oldShop}`);
  await expect.poll(() => invitation(), { timeout: 60_000 }).not.toBe(oldLink);
  await expect.poll(() => runningIn(data).shop, { timeout: 60_000 }).not.toBe(oldShop);

  // Nobody gets in; everybody taps on, and is told.
  for (const { hand } of [first, second, lost]) {
    await hand.tap('pass');
    expect(await leftOn({ hand })).toBe('20');
    await hand.goTo('#/set-up/tablets');
    await hand.tap('replica-again');
    await hand.at('replica-refused').waitFor();
  }

  // One points its camera at the new picture, which opens the app with the new link; the other leaves and enters it.
  await first.page.evaluate((to) => location.assign(to), invitation());
  await first.page.reload();
  await first.hand.tap('join-anew-go');
  await first.hand.tap('join-go');
  await standing(first, 'up-to-date').waitFor();
  expect(first.page.url()).not.toContain('join/');
  await second.hand.tap('leave');
  await second.hand.tap('leave-now');
  await second.hand.at('join-link').fill(invitation());
  await second.hand.tap('join-go');
  await standing(second, 'up-to-date').waitFor();
  const after = await untilSame([first, second], (entries) => entries >= before + 2);
  for (const tablet of [first, second]) {
    await tablet.hand.workOn('kit-parts', code);
    await expect.poll(() => leftOn(tablet), { timeout: 60_000 }).toBe('19');
  }
  for (const { hand } of [first, second]) await hand.tap('pass');
  await untilSame([first, second], (entries) => entries >= after + 2);

  // The lost one stays outside, tries as it may, and says so; nothing of the others reaches it, and its taps are its own.
  await lost.hand.tap('replica-again');
  await standing(lost, 'refused').waitFor();
  const said = await lost.hand.at('replica-refused').textContent();
  expect(said).toContain('does not know this key');
  expect(said).toContain('works on by itself');
  await lost.hand.workOn('kit-parts', code);
  await lost.hand.tap('pass', 2);
  expect(await leftOn(lost)).toBe('18');
  await lost.hand.goTo('#/bench');
  await lost.hand.at('replica-sign').filter({ hasText: 'Refused by the PC' }).waitFor();
});
