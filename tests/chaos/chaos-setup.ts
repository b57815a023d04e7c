/** Before the chaos runs: one prepared profile for all of them; after them: what they found, as a table and as a file. */
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { allowToKeep, launchProfile } from '../support/persistent-browser.ts';
import { isFull } from './chaos-plan.ts';
import type { KindFigures } from './kind-figures.ts';
import { prepareShop } from './prepared-shop.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** A folder for the profiles and figures of this run. */
    chaosFolder: string;
    /** The profile of a shop with one great tray, and where that tray is worked on. */
    preparedProfile: string;
    preparedHash: string;
  }
}

export async function setup(project: TestProject) {
  const { browserPath, appUrl } = project.getProvidedContext();
  const started = new Date().toISOString();
  const folder = mkdtempSync(join(tmpdir(), 'tallywright-chaos-'));
  const profile = join(folder, 'prepared');
  mkdirSync(join(folder, 'figures'));
  const context = await launchProfile({ browserPath, folder: profile });
  const browser = context.browser()?.version() ?? 'unknown';
  project.provide('chaosFolder', folder);
  project.provide('preparedProfile', profile);
  try {
    await allowToKeep(context);
    project.provide('preparedHash', await prepareShop(context, appUrl));
  } finally {
    await context.close();
  }
  return async () => {
    const kinds = readFigures(join(folder, 'figures'));
    console.table(kinds.map(({ notes, ...row }) => ({ ...row, notes: notes.length })));
    for (const { kind, notes } of kinds) for (const note of notes) console.log(`${kind}: ${note}`);
    const results = {
      seed: Number(project.config.env.SEED),
      started,
      run: isFull ? 'full' : 'short',
      browser,
      kinds,
    };
    const file = process.env.CHAOS_RESULTS;
    if (file) writeFileSync(file, `${JSON.stringify(results, undefined, 2)}\n`);
    rmSync(folder, { recursive: true, force: true });
  };
}

function readFigures(folder: string): readonly KindFigures[] {
  return readdirSync(folder)
    .sort()
    .map((name): KindFigures => JSON.parse(readFileSync(join(folder, name), 'utf8')));
}
