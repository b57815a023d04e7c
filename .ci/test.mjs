/** Runs the tests: `npm test`, or `npm test -- tests/domain` for some. Installs what is missing, a browser included. */
import { installWhatIsMissing } from './install.mjs';
import { quoted, run } from './tools.mjs';

installWhatIsMissing();

const { findBrowser } = await import('../tests/support/find-browser.mjs');
const BROWSER_PATH = await findBrowser();
console.log(`Browser: ${BROWSER_PATH}`);

process.exitCode = run(`vitest run ${quoted(process.argv.slice(2))}`, { BROWSER_PATH });
