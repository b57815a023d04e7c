/**
 * Runs every tests/bench/*.bench.ts in real Chromium, writes what they measure to bench-results.json and prints it:
 * `npm run bench`, or `npm run bench -- fold read` for some. Exit code 1 when a row misses its bar.
 */
import { readdirSync, writeFileSync } from 'node:fs';
import { installWhatIsMissing } from './install.mjs';
import { root } from './tools.mjs';

/** @typedef {import('../tests/bench/harness/row.ts').Row} Row */
/** @typedef {import('../tests/bench/harness/row.ts').Measured} Measured */
/** @typedef {import('../tests/bench/harness/bench.ts').Bench} Bench */

installWhatIsMissing();
const { runnerImport } = await import('vite');

/** @template Module @param {string} path @returns {Promise<Module>} */
async function load(path) {
  const imported = await runnerImport(`${root}tests/bench/${path}`, {
    root,
    configFile: false,
    logLevel: 'error',
  });
  return /** @type {Module} */ (imported.module);
}

const wanted = process.argv.slice(2);
const files = readdirSync(`${root}tests/bench`)
  .filter((name) => name.endsWith('.bench.ts'))
  .filter((name) => wanted.length === 0 || wanted.some((word) => name.startsWith(word)))
  .sort();
if (files.length === 0) throw new Error(`No bench is named like ${wanted.join(' or ')}`);

process.env.NODE_ENV = 'production';
/** @type {typeof import('../tests/bench/harness/bench.ts')} */
const { openBench } = await load('harness/bench.ts');
/** @type {typeof import('../tests/bench/harness/row.ts')} */
const { rowOf } = await load('harness/row.ts');
/** @type {typeof import('../tests/bench/harness/table.ts')} */
const { linesOf } = await load('harness/table.ts');

/** @type {Row[]} */
const rows = [];
/** @type {string[]} */
const broken = [];
const bench = await openBench({ rounds: 3 });
try {
  for (const name of files) {
    console.log(name);
    const { measure } = await load(name);
    try {
      rows.push(.../** @type {Measured[]} */ (await measure(bench)).map(rowOf));
    } catch (error) {
      // What others take an hour to measure is not lost with it.
      console.error(error);
      broken.push(name);
    }
    writeFileSync(`${root}bench-results.json`, `${JSON.stringify(rows, undefined, 2)}\n`);
  }
} finally {
  await bench.close();
}

for (const row of rows) console.log(linesOf(row).join('\n'));
const missed = rows.filter(({ ok }) => !ok);
for (const { id, missed: bars } of missed) console.log(`${id} misses its bar: ${bars.join('; ')}`);
for (const name of broken) console.log(`${name} broke off`);
if (missed.length + broken.length === 0) console.log(`All ${rows.length} rows meet their bars.`);
process.exitCode = missed.length + broken.length === 0 ? 0 : 1;
