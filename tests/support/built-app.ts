/** Before the browser tests: a browser that starts, and the app built once and served under a path as a shop's host might. */
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

export async function setup({ provide }: TestProject) {
  provide('browserPath', await findBrowser());
  const builtApp = mkdtempSync(join(tmpdir(), 'tallywright-'));
  buildApp(builtApp);
  const served = await serveBuild({ folder: builtApp, under: '/shop/' });
  provide('builtApp', builtApp);
  provide('appUrl', served.url);
  return async () => {
    await served.close();
    rmSync(builtApp, { recursive: true, force: true });
  };
}
