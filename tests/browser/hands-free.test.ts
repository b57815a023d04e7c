/** Taps without fingers, what is heard, a screen that stays awake, and where a tablet opens: in the built app. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser, openDemo } from '../support/browser.ts';
import { demoTray } from '../support/demo-tray.ts';
import { type Maker, maker } from '../support/maker.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** The demo with a tray of ten at its first stage, and a hand that works it. */
async function demo(before: (page: Page) => Promise<void> = async () => {}) {
  const { page } = await openDemo(browser, { viewport: { width: 1280, height: 800 } });
  await before(page);
  const hand = maker(page);
  const code = await demoTray(hand);
  return { page, hand, code, atStage: () => hand.workOn('kit-parts', code) };
}

/** Teaches an act a key, as a maker does: tap the act, press the key. */
async function teach(hand: Maker, keys: Readonly<Record<string, string>>): Promise<void> {
  await hand.goTo('#/set-up/tablet');
  for (const [act, key] of Object.entries(keys)) {
    await hand.tap(`key-${act}`);
    await hand.page.keyboard.press(key);
    await hand.at(`key-${act}`).filter({ hasText: 'now does' }).waitFor();
  }
}

const saved = (hand: Maker) => hand.at('saved-mark').filter({ hasText: 'Saved' }).waitFor();

describe('a foot switch', () => {
  test('passes, takes back and goes to the next tray, a held one once', async () => {
    const { page, hand, atStage } = await demo();
    // The next tray is one of the same stage.
    await hand.goTo('#/trays');
    await hand.goTo('#/trays/new');
    await hand.tap('make-variant-plum-copper');
    await hand.close('make-save');
    await teach(hand, { pass: 'PageDown', undo: 'PageUp', next: 'Enter' });
    await atStage();
    const before = await hand.left();
    // It goes down and up at once, and once more as it bounces: in one step, for a busy machine would part the two.
    await page.evaluate(() => {
      for (const kind of ['keydown', 'keyup', 'keydown', 'keyup']) {
        document.body.dispatchEvent(
          new KeyboardEvent(kind, { key: 'PageDown', bubbles: true, cancelable: true }),
        );
      }
    });
    await saved(hand);
    expect(await hand.left()).toBe(before - 1);
    await page.waitForTimeout(150);
    await page.keyboard.down('PageDown');
    for (let repeat = 0; repeat < 5; repeat += 1) await page.keyboard.down('PageDown');
    await page.keyboard.up('PageDown');
    await hand
      .at('stage-left')
      .filter({ hasText: `${before - 2}` })
      .waitFor();
    await page.keyboard.press('PageUp');
    await hand.at('saved-mark').filter({ hasText: 'Taken back' }).waitFor();
    expect(await hand.left()).toBe(before - 1);
    const here = page.url();
    await page.keyboard.press('Enter');
    await page.waitForFunction((url) => location.href !== url, here);
    await hand.at('stage-screen').waitFor();
    await page.context().close();
  });

  test('that sends Enter does its act alone while a button has the focus; space still presses that button', async () => {
    const { page, hand, atStage } = await demo();
    await teach(hand, { pass: 'Enter' });
    await atStage();
    const before = await hand.left();
    await page.keyboard.press('Enter');
    await saved(hand);
    await hand.at('undo').focus();
    await page.waitForTimeout(150);
    await page.keyboard.press('Enter');
    await hand
      .at('stage-left')
      .filter({ hasText: `${before - 2}` })
      .waitFor();
    await page.waitForTimeout(150);
    await page.keyboard.press('Space');
    await hand.at('saved-mark').filter({ hasText: 'Taken back' }).waitFor();
    expect(await hand.left()).toBe(before - 1);
    await page.context().close();
  });
});

test('while the screen is wiped neither keys nor fingers do anything', async () => {
  const { page, hand } = await demo();
  await hand.goTo('#/bench');
  await hand.at('stage-sand').focus();
  await hand.tap('wipe');
  await page.getByRole('alertdialog').waitFor();
  const here = page.url();
  for (const key of ['Enter', 'Space', 'Tab', 'Enter', '1', 'Escape']) await page.keyboard.press(key);
  await page.mouse.click(400, 400, { button: 'right' });
  for (const [x, y] of [
    [200, 300],
    [600, 400],
    [1100, 700],
  ] as const)
    await page.touchscreen.tap(x, y);
  expect(page.url()).toBe(here);
  expect(await page.getByRole('alertdialog').count()).toBe(1);
  await page.context().close();
});

describe('counts', () => {
  /** A platform whose voices are known, and which writes down what it is to say. */
  const voices = (localService: boolean) => async (page: Page) => {
    await page.addInitScript((isLocal) => {
      const said: string[] = [];
      const voice = { name: 'near', lang: 'en-GB', localService: isLocal, default: true, voiceURI: 'near' };
      Object.defineProperty(globalThis, 'speechSynthesis', {
        value: {
          getVoices: () => [voice],
          speak: ({ text }: { text: string }) => said.push(text),
          cancel: () => said.push('cut'),
          addEventListener: () => undefined,
          removeEventListener: () => undefined,
        },
      });
      Object.assign(globalThis, {
        said,
        SpeechSynthesisUtterance: class {
          readonly text: string;
          constructor(text: string) {
            this.text = text;
          }
        },
      });
    }, localService);
    await page.reload();
  };
  const said = (page: Page) =>
    page.evaluate(() => (globalThis as unknown as { said: string[] }).said.filter((text) => text !== 'cut'));

  test('are spoken once they are asked for, only of what is saved', async () => {
    const { page, hand, atStage } = await demo(voices(true));
    await atStage();
    await hand.tap('pass');
    await saved(hand);
    await hand.goTo('#/set-up/tablet');
    await hand.at('speak-on').click();
    await atStage();
    await hand.tap('pass');
    await page.waitForFunction(() =>
      (globalThis as unknown as { said: string[] }).said.includes('2, 8 left'),
    );
    await hand.tap('undo');
    await page.waitForFunction(() =>
      (globalThis as unknown as { said: string[] }).said.includes('taken back, 9 left'),
    );
    expect(await said(page)).toEqual(['2, 8 left', 'taken back, 9 left']);
    await page.context().close();
  });

  test('stay off where no voice speaks without a network, and Set-up says so', async () => {
    const { page, hand } = await demo(voices(false));
    await hand.goTo('#/set-up/tablet');
    await hand.at('speak-on').click();
    await hand.at('speak').filter({ hasText: 'no English voice' }).waitFor();
    expect(await hand.at('speak-off').locator('input').isChecked()).toBe(true);
    await page.context().close();
  });
});

describe('the screen', () => {
  const locks = (agrees: boolean) => async (page: Page) => {
    await page.addInitScript((isGranted) => {
      const asked = { times: 0, held: 0 };
      Object.assign(globalThis, { asked });
      Object.defineProperty(navigator, 'wakeLock', {
        value: {
          async request() {
            asked.times += 1;
            if (!isGranted) throw new DOMException('battery is low', 'NotAllowedError');
            asked.held += 1;
            const lock = new EventTarget();
            return Object.assign(lock, {
              release: async () => {
                asked.held -= 1;
              },
            });
          },
        },
      });
    }, agrees);
    await page.reload();
  };
  const asked = (page: Page) =>
    page.evaluate(() => ({ ...(globalThis as unknown as { asked: { times: number; held: number } }).asked }));

  test('is kept awake at a stage and nowhere else', async () => {
    const { page, hand, atStage } = await demo(locks(true));
    expect(await asked(page)).toEqual({ times: 0, held: 0 });
    await atStage();
    await page.locator('[data-waking=kept]').waitFor({ state: 'attached' });
    expect(await asked(page)).toEqual({ times: 1, held: 1 });
    await hand.goTo('#/day');
    await page.waitForFunction(() => (globalThis as unknown as { asked: { held: number } }).asked.held === 0);
    await page.context().close();
  });

  test('that the platform does not keep awake is told of by a small sign, which moves nothing', async () => {
    const { page, hand, atStage } = await demo(locks(false));
    await atStage();
    await hand.at('stage-signs').filter({ hasText: 'Screen may go dark' }).waitFor();
    const beyond = await page.evaluate(() => document.documentElement.scrollHeight - innerHeight);
    expect(beyond).toBeLessThanOrEqual(0);
    const box = await hand.at('stage-signs').boundingBox();
    expect(box && box.y >= 800 - 40).toBe(true);
    await page.context().close();
  });

  // WCAG 2.2, success criterion 1.4.6 (contrast enhanced): 7:1, 4.5:1 for large text.
  test.each(['light', 'dark', 'glare'])('can be read in the look “%s”, at 7:1 or more', async (theme) => {
    const { page, hand, atStage } = await demo();
    await hand.goTo('#/set-up/tablet');
    await hand.at(`theme-${theme}`).click();
    await atStage();
    expect(await page.evaluate(() => document.documentElement.dataset.theme)).toBe(theme);
    await hand.tap('pass');
    await saved(hand);
    const { violations } = await new AxeBuilder({ page })
      .setLegacyMode()
      .options({ runOnly: ['color-contrast-enhanced', 'color-contrast'], resultTypes: ['violations'] })
      .analyze();
    expect(violations.flatMap(({ nodes }) => nodes.map(({ html }) => html))).toEqual([]);
    expect(await leastContrast(page)).toBeGreaterThanOrEqual(7);
    await page.context().close();
  });
});

/** The least contrast of a text of the stage screen with the ground behind it, whatever its size (WCAG 2.2, relative luminance). */
function leastContrast(page: Page): Promise<number> {
  return page.locator('[data-testid=stage-screen]').evaluate((screen) => {
    const light = (colour: string) => {
      const [r = 0, g = 0, b = 0] = (colour.match(/[\d.]+/g) ?? []).map((part) => {
        const share = Number(part) / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const groundOf = (element: Element | null): string => {
      if (!element) return getComputedStyle(document.documentElement).backgroundColor;
      const { backgroundColor } = getComputedStyle(element);
      return /rgba\(.*, 0\)|transparent/.test(backgroundColor)
        ? groundOf(element.parentElement)
        : backgroundColor;
    };
    const texts = [...screen.querySelectorAll('*')].filter(
      (element) =>
        element.checkVisibility() &&
        [...element.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim()),
    );
    const ratios = texts.map((element) => {
      const [a, b] = [light(getComputedStyle(element).color), light(groundOf(element))];
      return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    });
    return Math.min(...ratios);
  });
}

describe('a tablet that has a usual stage', () => {
  test('opens at its trays, and lets the maker leave; a link to elsewhere goes there', async () => {
    const { page, hand } = await demo();
    await hand.goTo('#/set-up/tablet');
    await hand.at('tablet-stage').selectOption('rough-turn');
    await page.waitForTimeout(200);
    const bare = page.url().split('#')[0] ?? '';
    await page.goto('about:blank');
    await page.goto(bare);
    await page.waitForFunction(() => location.hash === '#/bench/rough-turn');
    await page.locator('main h1').waitFor();
    await hand.goTo('#/bench');
    await hand.at('stage-sand').waitFor();
    expect(await page.evaluate(() => location.hash)).toBe('#/bench');
    await page.goto('about:blank');
    await page.goto(`${bare}#/day`);
    await page.locator('main:not([aria-busy=true])').waitFor();
    expect(await page.evaluate(() => location.hash)).toBe('#/day');
    await page.context().close();
  });
});
