/**
 * Before the browser tests and the chaos runs: a browser that starts, and the app built once for both and served under a path
 * as a shop's host might.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { serveBuild } from '../../.ci/serve-build.mjs';
import { buildApp } from '../../.ci/tools.mjs';
import { findBrowser } from './find-browser.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    /** The path of the browser to start. */
    browserPath: string;
    /** The folder of the built app, for tests that serve it themselves. */
    builtApp: string;
    /** Where the built app is served, with a slash at its end. */
    appUrl: string;
  }
}

interface ServedApp {
  readonly folder: string;
  readonly url: string;
  readonly close: () => Promise<void>;
}

/** Each project of a run loads this module for itself: what they share stands outside of it. */
const run = globalThis as typeof globalThis & { servedApp?: Promise<ServedApp> };

export async function setup({ provide }: TestProject) {
  provide('browserPath', await findBrowser());
  const isShared = run.servedApp !== undefined;
  run.servedApp ??= buildAndServe();
  const { folder, url, close } = await run.servedApp;
  provide('builtApp', folder);
  provide('appUrl', url);
  // Projects end together.
  return isShared ? undefined : close;
}

async function buildAndServe(): Promise<ServedApp> {
  const folder = mkdtempSync(join(tmpdir(), 'tallywright-'));
  buildApp(folder);
  const served = await serveBuild({ folder, under: '/shop/' });
  return {
    folder,
    url: served.url,
    async close() {
      await served.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
