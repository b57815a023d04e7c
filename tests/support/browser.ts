/** What a browser test needs: a browser, a page that tells of its troubles, and the app made ready to work offline. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { inject } from 'vitest';
import { engine, startBrowser } from './engine.mjs';

/** The sizes that every screen is looked at in, in CSS pixels. */
const sizes = {
  phone: { width: 390, height: 844 },
  tablet: { width: 1280, height: 800 },
  desk: { width: 1920, height: 1080 },
} as const;
export type Size = keyof typeof sizes;

/** A shop in Britain; Chromium on a bare machine may have a locale that Intl refuses. */
export const place = { locale: 'en-GB', timezoneId: 'Europe/London' };

/**
 * Without a service worker unless one is asked for: to put the app on a tablet takes as long as many a test. What it does is
 * seen where it is asked for: in the first ten minutes, offline, in updates, on the rescue page, and in all chaos runs.
 */
function contextOptions(size: Size, more: BrowserContextOptions): BrowserContextOptions {
  return {
    ...place,
    viewport: sizes[size],
    hasTouch: size !== 'desk',
    serviceWorkers: 'block',
    // The hub's certificate stands for one that the tablet trusts: Chromium is told so by a flag with its key.
    ignoreHTTPSErrors: engine === 'firefox',
    ...more,
  };
}

/** A browser with nothing remembered. Close it in `afterAll`. */
export function launchBrowser({ flags = [] }: { flags?: readonly string[] } = {}): Promise<Browser> {
  return startBrowser(inject('browserPath'), { flags });
}

/** For a page whose app is to be put on the tablet. */
export const withServiceWorker = { serviceWorkers: 'allow' } as const;

export interface OpenPage {
  readonly page: Page;
  /** Errors so far: uncaught ones, those on the console (a breach of the policy among them), requests to other hosts. */
  readonly troubles: readonly string[];
}

type PageOptions = { readonly size?: Size; readonly url?: string } & BrowserContextOptions;

/** A page in a context of its own, on `url` (the served app if left out). Its context closes with the browser. */
export async function openPage(
  browser: Browser,
  { size = 'tablet', url = inject('appUrl'), ...more }: PageOptions = {},
): Promise<OpenPage> {
  const context = await browser.newContext(contextOptions(size, more));
  const page = await context.newPage();
  const troubles = watchTroubles(page, new URL(url).origin);
  await page.goto(url);
  return { page, troubles };
}

/**
 * A page on the bench of the demo shop, on a tablet of its own that was in the demo before: it was made once for all tests
 * (`made-demo.ts`). That it can be made and left is tested in `demo-shop.test.ts`.
 */
export async function openDemo(
  browser: Browser,
  { url = inject('appUrl'), ...more }: PageOptions = {},
): Promise<OpenPage> {
  const { cookies, origins } = inject('demoTablet');
  const { origin } = new URL(url);
  const storageState = { cookies, origins: origins.map((kept) => ({ ...kept, origin })) };
  const opened = await openPage(browser, { url, storageState, ...more });
  await opened.page.locator('[data-testid=stage-sand]').waitFor();
  return opened;
}

/** Collects what goes wrong on `page` from now on; only `origin` may be asked for anything. */
export function watchTroubles(page: Page, origin: string): readonly string[] {
  const troubles: string[] = [];
  page.on('pageerror', (error) => troubles.push(`uncaught: ${error.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error') troubles.push(`console: ${message.text()}`);
  });
  page.on('request', (request) => {
    const { protocol, origin: asked } = new URL(request.url());
    if (protocol.startsWith('http') && asked !== origin)
      troubles.push(`asked another host: ${request.url()}`);
  });
  return troubles;
}

/**
 * Waits until the whole app is kept on the device, then loads the page anew, so that the service worker serves it. The page
 * was opened with `withServiceWorker`.
 */
export async function makeReadyOffline(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await page.reload();
  await page.waitForFunction(
    () => navigator.serviceWorker.controller !== null && document.querySelector('main:not([aria-busy=true])'),
  );
}

const wcag = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** Faults against WCAG 2.2 A and AA that a machine can find, one line each: the rule, and where. */
export async function accessibilityFaults(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page })
    // For pages without frames of other hosts: the other way opens a window more for each look, to add frames up in.
    .setLegacyMode()
    // No place of all that is well is told of, which would take as long as to find what is not.
    .options({ runOnly: { type: 'tag', values: wcag }, resultTypes: ['violations'] })
    .analyze();
  return violations.flatMap(({ id, help, nodes }) =>
    nodes.map(({ target }) => `${id}: ${help} (${target.join(' ')})`),
  );
}
