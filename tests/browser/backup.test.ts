import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { accessibilityFaults, launchBrowser, openPage } from '../support/browser.ts';
import { emptyTablet, fileOf, passphrase, saved, saveSealed } from '../support/copy-hands.ts';
import { cutAndBore, kitParts, makeUpTrays, setUpShop } from '../support/first-ten-minutes.ts';
import { type Maker, maker } from '../support/maker.ts';

let browser: Browser;
/** A morning's work, and what was saved of it: early with nothing but set-up and trays, then whole, then sealed. */
let morning: Morning;

interface Morning {
  readonly figures: Readonly<Record<string, string>>;
  readonly early: Buffer;
  readonly whole: Buffer;
  readonly sealed: Buffer;
  readonly words: readonly string[];
}

const shown = ['day-passed-kit-parts', 'day-passed-cut-and-bore', 'day-scrapped', 'day-made'] as const;

async function figuresOf(here: Maker): Promise<Record<string, string>> {
  await here.goTo('#/day');
  await here.at('day-passed-kit-parts').first().waitFor();
  const figures: Record<string, string> = {};
  for (const id of shown) figures[id] = await here.figure(id, 'data-day');
  return figures;
}

async function aMorning(): Promise<Morning> {
  const { page } = await openPage(browser);
  const here = maker(page);
  const trays = await makeUpTrays(here, await setUpShop(here));
  await here.goTo('#/set-up/files');
  const early = await saved(page, () => here.tap('save-copy'));
  await kitParts(here, trays);
  await cutAndBore(here, trays);
  const figures = await figuresOf(here);
  const whole = await saved(page, () => here.tap('save-copy'));
  await here.goTo('#/set-up/files');
  const { sealed, words } = await saveSealed(here);
  await page.context().close();
  return { figures, early, whole, sealed, words };
}

beforeAll(async () => {
  browser = await launchBrowser();
  morning = await aMorning();
});
afterAll(() => browser.close());

async function look({ here }: { here: Maker }, file: ReturnType<typeof fileOf>): Promise<void> {
  if (!(await here.at('restore-sheet').isVisible())) await here.close('restore');
  await here.at('restore-file').setInputFiles(file);
}

async function addWhatIsOffered(here: Maker): Promise<string> {
  await here.close('add-copy');
  // A tablet without a place for copies asks before it adds to a shop of which it can make none.
  const goOn = here.at('go-on');
  await here.at('restored').or(goOn).waitFor();
  if (await goOn.isVisible()) await here.close('go-on');
  await here.at('restored').waitFor();
  const said = await here.figure('restored');
  await here.tap('restored-good');
  return said;
}

const count = async (here: Maker, id: string) => Number((await here.figure(id)).replaceAll(',', ''));

describe('a saved file brings the whole shop to an empty tablet', () => {
  test('with the same figures, and a second time adds nothing', async () => {
    const tablet = await emptyTablet(browser);
    const { here } = tablet;
    await look(tablet, fileOf(morning.whole));
    const adds = await count(here, 'offer-adds');
    expect(adds).toBeGreaterThan(60);
    expect(await accessibilityFaults(tablet.page)).toEqual([]);
    expect(await addWhatIsOffered(here)).toContain(`Added ${adds}; 0 were here already.`);
    expect(await figuresOf(here)).toEqual(morning.figures);
    await here.goTo('#/set-up/files');
    await look(tablet, fileOf(morning.whole));
    expect(await here.figure('nothing-to-add')).toBe('All of it is here already.');
    await here.tap('restore-again');
    await look(tablet, fileOf(morning.early));
    expect(await here.figure('nothing-to-add')).toBe('All of it is here already.');
    await tablet.page.keyboard.press('Escape');
    expect(await figuresOf(here)).toEqual(morning.figures);
    // The restored tablet goes on under a letter of its own.
    await here.goTo('#/trays/new');
    await tablet.page.locator('[data-testid^=make-variant-]').first().waitFor();
    expect(tablet.troubles).toEqual([]);
    await tablet.page.context().close();
  });

  test('an older file first and the newer one after it come to the same', async () => {
    const tablet = await emptyTablet(browser);
    const { here } = tablet;
    await look(tablet, fileOf(morning.early));
    const early = await count(here, 'offer-adds');
    await addWhatIsOffered(here);
    await here.goTo('#/set-up/files');
    await look(tablet, fileOf(morning.whole));
    expect(await count(here, 'offer-here')).toBe(early);
    await addWhatIsOffered(here);
    expect(await figuresOf(here)).toEqual(morning.figures);
    expect(tablet.troubles).toEqual([]);
    await tablet.page.context().close();
  });

  test('sealed, by its passphrase or its twelve words, and not by a wrong one', async () => {
    const tablet = await emptyTablet(browser);
    const { here } = tablet;
    await look(tablet, fileOf(morning.sealed, 'copy.sealed'));
    await here.at('secret').fill('beech, plum and bras');
    await here.tap('unseal');
    await here.at('restore-sheet').getByText('This does not open it.').waitFor();
    expect(await accessibilityFaults(tablet.page)).toEqual([]);
    await here.at('open-by-words').click();
    await here.at('secret').fill(morning.words.join(' '));
    await here.tap('unseal');
    await here.at('offer-adds').waitFor();
    await here.tap('restore-again');
    await look(tablet, fileOf(morning.sealed, 'copy.sealed'));
    await here.at('secret').fill(passphrase);
    await here.tap('unseal');
    await here.at('offer-adds').waitFor();
    await addWhatIsOffered(here);
    expect(await figuresOf(here)).toEqual(morning.figures);
    expect(tablet.troubles).toEqual([]);
    await tablet.page.context().close();
  });
});

describe('a file that is not whole', () => {
  test('offers what is sound when it was cut, and changes nothing before the word', async () => {
    const tablet = await emptyTablet(browser);
    const { here } = tablet;
    await look(tablet, fileOf(morning.whole.subarray(0, morning.whole.length - 400)));
    expect(await here.figure('offer-damaged')).toContain('cut short');
    const adds = await count(here, 'offer-adds');
    await tablet.page.keyboard.press('Escape');
    await here.at('new-shop').waitFor();
    await look(tablet, fileOf(morning.whole.subarray(0, morning.whole.length - 400)));
    expect(await addWhatIsOffered(here)).toContain(`Added ${adds};`);
    await here.goTo('#/set-up/files');
    await look(tablet, fileOf(morning.whole));
    await addWhatIsOffered(here);
    expect(await figuresOf(here)).toEqual(morning.figures);
    await tablet.page.context().close();
  });

  test('is told from a sound one when a bit was flipped', async () => {
    const tablet = await emptyTablet(browser);
    const flipped = Buffer.from(morning.whole);
    const at = Math.floor(flipped.length * 0.7);
    flipped[at] = (flipped[at] ?? 0) ^ 4;
    await look(tablet, fileOf(flipped));
    await tablet.here.at('offer-damaged').waitFor();
    await tablet.page.context().close();
  });

  test.each([
    ['a shopping list', Buffer.from('milk, eggs'), 'not a copy of a shop'],
    ['nothing', Buffer.alloc(0), 'nothing in this file'],
    ['a picture', Buffer.from('89504e470d0a1a0a0000000d49484452', 'hex'), 'not a copy of a shop'],
  ])('is refused when it is %s', async (_name, bytes, why) => {
    const tablet = await emptyTablet(browser);
    await look(tablet, fileOf(bytes, '<b>list</b>.txt'));
    const said = await tablet.here.figure('restore-refused');
    expect(said).toContain(why);
    expect(said).toContain('<b>list</b>.txt');
    await tablet.here.tap('restore-again');
    await tablet.page.keyboard.press('Escape');
    await tablet.here.at('new-shop').waitFor();
    expect(tablet.troubles).toEqual([]);
    await tablet.page.context().close();
  });
});

test('a file of another shop is pointed out, and left alone at a tap', async () => {
  const tablet = await emptyTablet(browser);
  const { here } = tablet;
  await here.close('new-shop');
  await here.at('copy-age').waitFor();
  await here.goTo('#/set-up/files');
  await look(tablet, fileOf(morning.whole));
  expect(await here.figure('offer-foreign')).toContain('shares nothing with the shop on this tablet');
  await here.tap('restore-again');
  await tablet.page.keyboard.press('Escape');
  await here.goTo('#/day');
  await here.at('day-copies').waitFor();
  expect(await here.at('day-passed-kit-parts').count()).toBe(0);
  await tablet.page.context().close();
});

describe('a browser without', () => {
  test('downloads and sharing gives the copy as text, which another tablet takes', async () => {
    const withoutWays = (page: Page) =>
      page.addInitScript(() => {
        Reflect.deleteProperty(HTMLAnchorElement.prototype, 'download');
        Reflect.deleteProperty(Navigator.prototype, 'canShare');
        Reflect.deleteProperty(Navigator.prototype, 'share');
      });
    const from = await emptyTablet(browser, withoutWays);
    await from.here.close('new-shop');
    await from.here.at('copy-age').waitFor();
    await from.here.goTo('#/set-up/files');
    await from.here.tap('save-copy');
    const text = await from.here.at('copy-text').inputValue();
    await from.here.tap('copy-text-all');
    expect(await from.here.figure('copy-age')).toContain('today');
    const to = await emptyTablet(browser, withoutWays);
    await to.here.close('restore');
    await to.here.at('paste-way').locator('summary').click();
    await to.here.at('paste-text').fill(text);
    await to.here.tap('paste-read');
    await to.here.at('offer-adds').waitFor();
    await addWhatIsOffered(to.here);
    await to.here.at('stage-kit-parts').waitFor();
    expect([...from.troubles, ...to.troubles]).toEqual([]);
    await from.page.context().close();
    await to.page.context().close();
  });

  test('workers, locks and folders still copies and restores', async () => {
    const tablet = await emptyTablet(browser, (page) =>
      page.addInitScript(() => {
        for (const name of ['Worker', 'showDirectoryPicker']) Reflect.deleteProperty(globalThis, name);
        Reflect.deleteProperty(Navigator.prototype, 'locks');
      }),
    );
    await look(tablet, fileOf(morning.whole));
    await tablet.here.at('offer-adds').waitFor();
    await addWhatIsOffered(tablet.here);
    expect(await figuresOf(tablet.here)).toEqual(morning.figures);
    await tablet.here.goTo('#/set-up/files');
    expect(await tablet.here.at('choose-folder').count()).toBe(0);
    const again = await saved(tablet.page, () => tablet.here.tap('save-copy'));
    expect(again.length).toBeGreaterThan(1000);
    expect(tablet.troubles).toEqual([]);
    await tablet.page.context().close();
  });
});

test('a folder chosen once gets a copy at once and later ones by themselves, and is known after a restart', async () => {
  const tablet = await emptyTablet(browser, (page) =>
    page.addInitScript(() => {
      // No person is here to choose one: a folder of the page's own file system stands in.
      const root = () => navigator.storage.getDirectory();
      const pick = async () => (await root()).getDirectoryHandle('Shared', { create: true });
      Object.assign(globalThis, { showDirectoryPicker: pick });
    }),
  );
  const { here, page } = tablet;
  await here.close('new-shop');
  await here.at('copy-age').waitFor();
  await here.goTo('#/set-up/files');
  await here.tap('choose-folder');
  await here.at('folder-said').getByText('Written, read back and counted.').waitFor();
  expect(await here.figure('outside-state')).toContain('into the folder');
  const names = () =>
    page.evaluate(async () => {
      const shared = await (await navigator.storage.getDirectory()).getDirectoryHandle('Shared');
      const found: string[] = [];
      for await (const name of shared.keys()) found.push(name);
      return found;
    });
  expect(await names()).toEqual([expect.stringMatching(/^tallywright-my-shop-\d{4}-\d\d-\d\d\.jsonl\.gz$/)]);
  await page.reload();
  await here.at('write-folder').waitFor();
  expect(await here.figure('folder-state')).toContain('Copies go into “Shared” by themselves.');
  expect(tablet.troubles).toEqual([]);
  await page.context().close();
});

test('the tablet copies its log by itself, tells of it on Day, and offers its own copies for a restore', async () => {
  const tablet = await emptyTablet(browser);
  const { here, page } = tablet;
  await here.close('new-shop');
  await here.at('copy-age').waitFor();
  await here.goTo('#/day');
  const kept = here.at('kept-state').getByText(/^Last: today/);
  await kept.waitFor({ timeout: 60_000 });
  await here.tap('keep-copy');
  await here.at('keep-copy-said').getByText('Copied, read back and counted.').waitFor();
  await here.goTo('#/set-up/files');
  await here.close('restore');
  await here.at('look-2').waitFor();
  const rows = await page.locator('.files-shelf > li').allInnerTexts();
  expect(rows[0]).toMatch(/: \d+ entries/);
  await here.tap('look-2');
  expect(await here.figure('nothing-to-add')).toBe('All of it is here already.');
  expect(await count(here, 'offer-here')).toBeGreaterThan(20);
  await page.keyboard.press('Escape');
  await page.reload();
  await here.goTo('#/day');
  await kept.waitFor();
  expect(tablet.troubles).toEqual([]);
  await page.context().close();
});

test.each(['phone', 'tablet'] as const)(
  'nothing on the screens of copies is hard to reach or scrolls sideways (%s)',
  async (size) => {
    const { page } = await openPage(browser, { size });
    const here = maker(page);
    await here.at('restore').waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    await here.close('restore');
    await here.at('choose-file').waitFor();
    await here.at('paste-way').locator('summary').click();
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await here.close('new-shop');
    await here.at('copy-age').waitFor();
    for (const place of ['#/set-up/files', '#/day']) {
      await here.goTo(place);
      await here.at('save-copy').waitFor();
      for (const summary of await page.locator('main summary').all()) await summary.click();
      expect(await accessibilityFaults(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
    }
    await page.context().close();
  },
);
