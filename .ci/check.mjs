/** Every gate but the tests, in one go: all are run, so that one look shows all that is wrong. */
import { installWhatIsMissing } from './install.mjs';
import { run } from './tools.mjs';

installWhatIsMissing();

const gates = {
  types: 'tsc -b',
  'lint and format': 'biome check --error-on-warnings .',
  layers: 'node .ci/check-layers.mjs',
  'unused code': 'knip --config .ci/knip.json',
  build: 'vite build --logLevel warn',
  parts: 'node .ci/check-parts.mjs',
  size: 'size-limit --config .ci/size-limit.mjs',
};

const failed = [];
for (const [gate, command] of Object.entries(gates)) {
  console.log(`\n── ${gate}: ${command}`);
  if (run(command, { NODE_ENV: 'production' }) !== 0) failed.push(gate);
}
console.log(failed.length === 0 ? '\nAll gates passed.' : `\nFailed: ${failed.join(', ')}.`);
process.exitCode = failed.length === 0 ? 0 : 1;
