/**
 * Runs the tests of the built app in other engines than Chromium: `npm run test:engines`, `npm run test:engines -- firefox` for
 * one, and `npm run test:engines -- firefox tests/browser/plan` for some of its files. Installs what is missing.
 */
import { installWhatIsMissing } from './install.mjs';
import { quoted, run } from './tools.mjs';

installWhatIsMissing();

/** Which project of the tests each engine is put through. */
const projects = { firefox: 'browser', webkit: 'webkit' };

const asked = process.argv.slice(2);
const files = asked.filter((word) => !(word in projects));
const engines = Object.entries(projects).filter(
  ([name]) => asked.length === files.length || asked.includes(name),
);

/** @type {string[]} */
const failed = [];
for (const [ENGINE, project] of engines) {
  console.log(`\n── ${ENGINE}`);
  // A path of another engine's browser says nothing of this one's.
  const named = { ENGINE, BROWSER_PATH: '', CHROME_PATH: '' };
  if (run(`vitest run --project ${project} --reporter verbose ${quoted(files)}`, named) !== 0)
    failed.push(ENGINE);
}
console.log(failed.length === 0 ? '' : `\nFailed: ${failed.join(', ')}.`);
process.exitCode = failed.length === 0 ? 0 : 1;
