/**
 * Checks the imports against layers.mjs, and that none escaped: without a readable compiler the checker finds no
 * module at all and calls that a success.
 */
import { readdirSync } from 'node:fs';
import { cruise, format } from 'dependency-cruiser';
import extractTSConfig from 'dependency-cruiser/config-utl/extract-ts-config';
import rules from './layers.mjs';
import { root } from './tools.mjs';

process.chdir(root);

const { forbidden = [], options } = rules;
const folders = ['src', 'shared', 'tests'];
const { output } = await cruise(
  folders,
  { ...options, ruleSet: { forbidden }, validate: true },
  {},
  { tsConfig: extractTSConfig('tsconfig.json') },
);
if (typeof output === 'string') throw new Error('The checker gave text where its findings were asked for.');
const report = await format(output, { outputType: 'err' });
console.log(report.output);

const seen = new Set(output.modules.map(({ source }) => source));
const unseen = folders
  .flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((path) => `${folder}/${path}`),
  )
  .map((path) => path.replaceAll('\\', '/'))
  .filter((path) => /[.]tsx?$/.test(path) && !seen.has(path));
if (seen.size === 0 || unseen.length > 0) console.error(`Not looked at: ${unseen.join(', ') || 'anything'}`);

process.exitCode = report.exitCode || (seen.size === 0 || unseen.length > 0 ? 1 : 0);
