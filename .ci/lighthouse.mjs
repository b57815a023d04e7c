/**
 * Holds every place of the demo shop to what Lighthouse finds of accessibility and best practices, which must be nothing, and
 * Bench and Yield to its score for performance, the median of five runs: `npm run lighthouse`. Exit code 1 below a bar.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { freePorts } from './hub/free-ports.mjs';
import { installWhatIsMissing } from './install.mjs';
import { serveBuild } from './serve-build.mjs';
import { buildApp } from './tools.mjs';

/** @typedef {'accessibility' | 'best-practices' | 'performance'} Category */
/** @typedef {{ score: number, misses: string[] }} Judged a score of 0 to 100, and the audits that are not met */

installWhatIsMissing();
const { chromium } = await import('playwright-core');
const { default: lighthouse } = await import('lighthouse');
const { findBrowser } = await import('../tests/support/find-browser.mjs');
const { browserFlags } = await import('../tests/support/browser-flags.mjs');

const places = ['bench', 'trays', 'stores', 'yield', 'plan', 'day', 'shelf', 'set-up'];
const timedPlaces = ['bench', 'yield'];
const runs = 5;
const bars = { accessibility: 100, 'best-practices': 100, performance: 95 };

/**
 * The phone that Lighthouse takes by itself, and so tall that the bar of places at its foot covers nothing that scrolling would
 * uncover: what lies half under the bar it takes for too small to be hit.
 */
const tall = { mobile: true, width: 412, height: 6000, deviceScaleFactor: 1, disabled: false };

/** How long the demo shop may take to be made (ms) on a busy machine. */
const longest = 240_000;

const folder = mkdtempSync(join(tmpdir(), 'tallywright-'));
const built = join(folder, 'built');
buildApp(built);
const served = await serveBuild({ folder: built, under: '/shop/' });
const [port = 0] = await freePorts(1);
const browser = await chromium.launchPersistentContext(join(folder, 'profile'), {
  executablePath: await findBrowser(),
  args: [...browserFlags, `--remote-debugging-port=${port}`],
  locale: 'en-GB',
});
/** @type {string[]} */
const missed = [];
try {
  await openDemo();
  for (const place of places) {
    const judged = await look(place, ['accessibility', 'best-practices']);
    say(place, 'accessibility', judged.accessibility);
    say(place, 'best-practices', judged['best-practices']);
  }
  for (const place of timedPlaces) {
    /** @type {Judged[]} */
    const all = [];
    while (all.length < runs) all.push((await look(place, ['performance'])).performance);
    const sorted = all.toSorted((one, other) => one.score - other.score);
    const scores = sorted.map(({ score }) => score).join(' ');
    say(place, 'performance', sorted[Math.floor(runs / 2)], `median of ${scores}`);
  }
} finally {
  await browser.close();
  await served.close();
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
}
for (const line of missed) console.log(line);
console.log(missed.length === 0 ? '\nAll scores meet their bars.' : `\n${missed.length} below their bars.`);
process.exitCode = missed.length === 0 ? 0 : 1;

/** Puts the demo shop on the tablet that Lighthouse then opens its pages on. */
async function openDemo() {
  const page = await browser.newPage();
  page.setDefaultTimeout(longest);
  await page.goto(served.url);
  await page.locator('[data-testid=open-demo]').click();
  await page.locator('[data-testid=stage-sand]').waitFor();
  // The app and a snapshot of the shop are kept a moment later: what is measured is a start like any other.
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.waitForTimeout(10_000);
  await page.close();
}

/**
 * @template {Category} Asked
 * @param {string} place
 * @param {Asked[]} categories
 * @returns {Promise<Record<Asked, Judged>>}
 * @throws {Error} when the place could not be looked at
 */
async function look(place, categories) {
  const settings = categories.some((category) => category === 'performance') ? {} : { screenEmulation: tall };
  const result = await lighthouse(`${served.url}#/${place}`, {
    ...{ port, logLevel: 'error', output: 'json', onlyCategories: categories, disableStorageReset: true },
    ...settings,
  });
  if (!result || result.lhr.runtimeError)
    throw new Error(`Lighthouse could not look at ${place}: ${result?.lhr.runtimeError?.message}`);
  const { lhr } = result;
  const judged = categories.map((category) => {
    const { score, auditRefs } = lhr.categories[category] ?? { score: null, auditRefs: [] };
    if (score === null) throw new Error(`Lighthouse gave no score for ${category} of ${place}`);
    const misses = auditRefs
      .filter(({ id, weight }) => weight > 0 && (lhr.audits[id]?.score ?? 1) < 1)
      .map(({ id }) => `${id}: ${lhr.audits[id]?.displayValue ?? lhr.audits[id]?.title}`);
    return [category, { score: Math.round(score * 100), misses }];
  });
  return Object.fromEntries(judged);
}

/**
 * Prints a row, and remembers what is below its bar.
 *
 * @param {string} place
 * @param {Category} category
 * @param {Judged | undefined} judged
 * @param {string} [more]
 */
function say(place, category, judged, more = '') {
  const { score, misses } = judged ?? { score: 0, misses: [] };
  console.log(`${place.padEnd(8)}${category.padEnd(16)}${String(score).padStart(4)}  ${more}`);
  if (score < bars[category])
    missed.push(`${place}: ${category} ${score} is below ${bars[category]}: ${misses.join('; ')}`);
}
