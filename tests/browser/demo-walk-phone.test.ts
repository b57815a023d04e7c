import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser } from '../support/browser.ts';
import { walkDemo } from '../support/walk-demo.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

/** Every place is looked at by a machine, one after the other: minutes where much else runs (ms). */
const aLongWalk = 480_000;

test(
  'on a phone no place has a fault that a machine can find, nor scrolls sideways',
  async () => {
    expect(await walkDemo(browser, 'phone')).toEqual({ faults: [], troubles: [] });
  },
  aLongWalk,
);
