import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';

/** A moment longer than the bounce of a button, so that two taps on it are two. */
const betweenTaps = 140;
/** What ends something is deaf for 700 ms after it was pressed. */
const afterClosing = 720;

/** Hands that work the app as a maker does: by taps on what the screen shows. */
export function maker(page: Page) {
  const at = (id: string): Locator => page.locator(`[data-testid="${id}"]`);

  async function tap(id: string, times = 1): Promise<void> {
    for (let count = 0; count < times; count += 1) {
      await at(id).click();
      await page.waitForTimeout(betweenTaps);
    }
  }

  async function close(id: string): Promise<void> {
    await at(id).waitFor();
    // It may have just come into view: touches of a button's first moment do not count.
    await page.waitForTimeout(betweenTaps);
    await at(id).click();
    await page.waitForTimeout(afterClosing);
  }

  async function goTo(hash: string): Promise<void> {
    await page.evaluate((to) => {
      location.hash = to;
    }, hash);
    await page
      .waitForFunction(
        (to) => location.hash === to && document.querySelector('main:not([aria-busy=true])'),
        hash,
        { polling: 50 },
      )
      .catch(async (cause: unknown) => {
        const seen = page.evaluate(() => `${location.hash}: ${document.body.textContent.slice(0, 300)}`);
        throw new Error(`${hash} was not shown, but ${await seen}`, { cause });
      });
  }

  async function workOn(stage: string, code: string): Promise<void> {
    await goTo(`#/bench/${stage}`);
    await tap(`bench-tray-${code}`);
    await at('stage-screen').waitFor();
    // The screen has just come into view: touches of its first moment do not count.
    await page.waitForTimeout(betweenTaps);
  }

  async function flaw(reason: string, ...answers: readonly string[]): Promise<void> {
    await tap(`flaw-${reason}`);
    for (const answer of answers) await tap(answer);
    await at('saved-mark').filter({ hasText: 'Saved' }).waitFor();
  }

  /** The raw figure that an element carries, or its text. */
  async function figure(id: string, attribute?: string): Promise<string> {
    const element = at(id).first();
    await element.waitFor({ state: 'attached' });
    return attribute
      ? ((await element.getAttribute(attribute)) ?? '')
      : ((await element.textContent()) ?? '');
  }

  return {
    page,
    at,
    tap,
    close,
    goTo,
    workOn,
    flaw,
    left: async () => Number(await at('stage-left').locator('.figures').textContent()),
    async openTray(code: string): Promise<void> {
      await goTo('#/trays');
      await page.locator(`button:has([data-testid="tray-row-${code}"])`).click();
      await at('tray-code').waitFor();
    },
    figure,
    async expectFigures(figures: Readonly<Record<string, string>>): Promise<void> {
      const found: Record<string, string> = {};
      for (const key of Object.keys(figures)) {
        const [id = '', attribute] = key.split(' ');
        found[key] = await figure(id, attribute);
      }
      expect(found).toEqual(figures);
    },
  };
}

export type Maker = ReturnType<typeof maker>;
