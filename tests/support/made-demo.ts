/**
 * Before the browser tests: the demo shop, made once by the app itself and kept with all that lies on its tablet. To make it
 * takes a window longer than most that is tested on it.
 */
import type { BrowserContext } from 'playwright-core';
import type { TestProject } from 'vitest/node';
import { place } from './browser.ts';
import { startBrowser } from './engine.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    /** What lies on a tablet that is in the demo; `openDemo` opens a page on it. */
    demoTablet: Awaited<ReturnType<BrowserContext['storageState']>>;
  }
}

/** It is waited for (ms) on a busy machine, too. */
const longest = 240_000;

export async function setup(project: TestProject) {
  const { browserPath, appUrl } = project.getProvidedContext();
  const browser = await startBrowser(browserPath);
  try {
    const context = await browser.newContext({ ...place, serviceWorkers: 'block' });
    context.setDefaultTimeout(longest);
    const page = await context.newPage();
    await page.goto(appUrl);
    await page.locator('[data-testid=open-demo]').click();
    await page.locator('[data-testid=stage-sand]').waitFor();
    // Kept a moment later: without its snapshot every start would add up the whole log.
    await page.waitForFunction(hasSnapshot, 'tallywright-demo', { polling: 200 });
    project.provide('demoTablet', await context.storageState({ indexedDB: true }));
  } finally {
    await browser.close();
  }
}

/** Runs in the page. */
function hasSnapshot(name: string): Promise<boolean> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open(name);
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const counting = opening.result.transaction('snapshots').objectStore('snapshots').count();
      counting.onerror = () => reject(counting.error);
      counting.onsuccess = () => {
        opening.result.close();
        resolve(counting.result > 0);
      };
    };
  });
}
