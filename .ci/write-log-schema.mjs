/** Writes shared/log.schema.json from the schema that the app reads events with. Run it when an event has changed. */
import { writeFileSync } from 'node:fs';
import { runnerImport } from 'vite';
import { root, run } from './tools.mjs';

const { module } = await runnerImport(`${root}tests/domain/log/log-json-schema.ts`);
const file = 'shared/log.schema.json';
writeFileSync(`${root}${file}`, JSON.stringify(module.logJsonSchema(), null, 2));
process.exitCode = run(`biome format --write ${file}`);
