/**
 * Holds the statistics to simulated shops whose truth is known, writes calibration-results.json and prints the table:
 * `npm run calibrate`, or `npm run calibrate -- yield` for some. The same SEED (20260301 when none is given) gives the same
 * figures. Exit code 1 when one lies outside its band.
 */
import { readdirSync, writeFileSync } from 'node:fs';
import { installWhatIsMissing } from './install.mjs';
import { root } from './tools.mjs';

/** @typedef {import('../tests/calibration/row.ts').CalibrationRow} Row */
/** @typedef {{ calibrate: (simulation: import('../tests/calibration/row.ts').Simulation) => readonly Row[] }} Calibration */

installWhatIsMissing();
const { runnerImport } = await import('vite');

const wanted = process.argv.slice(2);
const files = readdirSync(`${root}tests/calibration`)
  .filter((name) => name.endsWith('.calibration.ts'))
  .filter((name) => wanted.length === 0 || wanted.some((word) => name.startsWith(word)))
  .sort();
if (files.length === 0) throw new Error(`No calibration is named like ${wanted.join(' or ')}`);

const seed = Number(process.env.SEED ?? 20260301);
const shops = 500;
/** @type {Row[]} */
const rows = [];
for (const name of files) {
  const { module } = await runnerImport(`${root}tests/calibration/${name}`, {
    root,
    configFile: false,
    logLevel: 'error',
  });
  for (const row of /** @type {Calibration} */ (module).calibrate({ seed, shops })) {
    rows.push(row);
    const verdict = row.band === null ? '' : row.ok ? 'ok' : 'OUTSIDE';
    const band = row.band === null ? '' : `${row.band[0]} to ${row.band[1]}`;
    console.log(
      `${row.id.padEnd(30)} ${String(Number(row.value.toPrecision(4))).padEnd(10)} ${band.padEnd(14)} ${verdict}`,
    );
    console.log(`  ${row.what} (${row.shops} shops)`);
  }
}

writeFileSync(`${root}calibration-results.json`, `${JSON.stringify(rows, undefined, 2)}\n`);
const outside = rows.filter(({ ok }) => !ok);
console.log(
  outside.length === 0
    ? `All ${rows.length} figures, seed ${seed}, are as they ought to be.`
    : `Outside: ${outside.map(({ id }) => id).join(', ')}.`,
);
process.exitCode = outside.length === 0 ? 0 : 1;
