/**
 * Breaks browser, files, disk, windows and updates under a tapping hand, as often as the plan in tests/chaos says, and
 * writes what was lost or doubled to chaos-results.json: `npm run chaos`, `npm run chaos -- kill corrupt` for some
 * kinds, `npm run chaos -- --short` for the few runs that `npm test` makes. Fails when anything was lost or doubled.
 */
import { installWhatIsMissing } from './install.mjs';
import { quoted, root, run } from './tools.mjs';

installWhatIsMissing();

const { findBrowser } = await import('../tests/support/find-browser.mjs');
const BROWSER_PATH = await findBrowser();
console.log(`Browser: ${BROWSER_PATH}`);

const asked = process.argv.slice(2);
const kinds = asked.filter((word) => word !== '--short').map((kind) => `tests/chaos/${kind}`);
process.exitCode = run(`vitest run --project chaos ${quoted(kinds)}`, {
  BROWSER_PATH,
  CHAOS: asked.includes('--short') ? 'short' : 'full',
  CHAOS_RESULTS: `${root}chaos-results.json`,
});
