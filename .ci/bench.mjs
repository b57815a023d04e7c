/**
 * Runs every tests/bench/*.bench.ts and writes what they measure to bench-results.json: `npm run bench`, or
 * `npm run bench -- build-size` for some. A bench file exports `measure`, which gives rows of {id, ours, unit}.
 */
import { readdirSync, writeFileSync } from 'node:fs';
import { installWhatIsMissing } from './install.mjs';
import { root } from './tools.mjs';

/** @typedef {{ id: string, ours: number, unit: string }} Row */

installWhatIsMissing();
const { runnerImport } = await import('vite');

const wanted = process.argv.slice(2);
const files = readdirSync(`${root}tests/bench`)
  .filter((name) => name.endsWith('.bench.ts'))
  .filter((name) => wanted.length === 0 || wanted.some((word) => name.includes(word)))
  .sort();
if (files.length === 0) throw new Error(`No bench is named like ${wanted.join(' or ')}`);

/** @type {Row[]} */
const rows = [];
for (const name of files) {
  const { module } = await runnerImport(`${root}tests/bench/${name}`, {
    root,
    configFile: false,
    logLevel: 'warn',
  });
  const { measure } = /** @type {{ measure: () => Promise<Row[]> }} */ (module);
  rows.push(...(await measure()));
}

writeFileSync(`${root}bench-results.json`, `${JSON.stringify(rows, undefined, 2)}\n`);
console.table(rows);
