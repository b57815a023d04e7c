import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { maker } from '../support/maker.ts';
import { launchProfile, processesOf } from '../support/persistent-browser.ts';
import { haveSystemCallTracer, traceFlushes } from '../support/trace-flushes.ts';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tallywright-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const taps = 30;

// System calls can be traced on Linux; the same browser code runs elsewhere.
test.runIf(process.platform === 'linux')(
  'each of thirty taps is flushed to the disk before it is called saved',
  async () => {
    haveSystemCallTracer();
    const context = await launchProfile({ browserPath: inject('browserPath'), folder });
    const page = context.pages()[0] ?? (await context.newPage());
    await page.goto(inject('appUrl'));
    const { at, close, goTo, tap } = maker(page);
    await close('open-demo');
    await at('stage-sand').waitFor();
    await goTo('#/bench/sand');
    await page.locator('[data-testid^=bench-tray-]').first().click();
    await at('stage-screen').waitFor();

    const [browser] = processesOf(folder);
    if (browser === undefined) throw new Error('The browser has no process.');
    const tracing = await traceFlushes(browser, join(folder, 'flushes.txt'));
    let flushed = 0;
    for (let done = 0; done < taps; done += 1) {
      // Each tap and its undo come back to where they began: any tray serves.
      const [act, mark] = done % 2 ? ['undo', 'Taken back'] : ['pass', 'Saved'];
      await tap(act);
      // The mark of this tap, and not that of the one before, which still stands for a moment.
      await at('saved-mark').filter({ hasText: mark }).waitFor();
      const flushes = () => tracing.flushesOf(/\.indexeddb\.leveldb\/\d+\.log/);
      // The tracer writes down what it saw a moment after it happened.
      await expect.poll(flushes, { message: `tap ${done + 1}`, timeout: 5000 }).toBeGreaterThan(flushed);
      flushed = flushes();
    }
    await tracing.stop();
    expect(flushed).toBeGreaterThanOrEqual(taps);
    await context.close();
  },
);
