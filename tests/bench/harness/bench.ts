/** What a bench file is given: the app, pages that run its modules in the browser, profiles that last from start to start. */
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { buildApp } from '../../../.ci/tools.mjs';
import { benchFlags } from '../../support/browser-flags.mjs';
import { findBrowser } from '../../support/find-browser.mjs';
import { browserGone, copyProfile, launchProfile } from '../../support/persistent-browser.ts';
import { openBenchHost } from './bench-host.ts';
import { buildPageModule } from './page-modules.ts';

declare global {
  /** Put there by the page, see `bench-host.ts`. */
  var callModule: (call: unknown[]) => Promise<unknown>;
}

/** A module of tests/bench/in-page, in a page of its own. */
export interface PageModule {
  readonly page: Page;
  /** Calls what the module exports under that name with one argument (plain data), and gives what it returns. */
  readonly call: <Result>(name: string, argument?: unknown) => Promise<Result>;
}

export interface Bench {
  /** How often each work is measured; its median counts. */
  readonly rounds: number;
  /** The folder of the built app. */
  readonly built: () => string;
  /** Where the built app is served, with a slash at its end; pages of the bench are of the same origin. */
  readonly appUrl: () => string;
  /** A page of a few words, kept by a small service worker; see tests/bench/static-page. */
  readonly staticUrl: string;
  /** A folder that is not there yet, for a new profile. */
  readonly newProfile: () => string;
  /** The same for a copy of a profile whose browser is closed. */
  readonly copyOf: (profile: string) => string;
  /** Starts a browser on a profile, and closes it once `use` is done. */
  readonly inBrowser: <Result>(
    profile: string,
    use: (context: BrowserContext) => Promise<Result>,
  ) => Promise<Result>;
  /** Opens a fresh page with the module `in-page/<name>.ts` loaded. Modules are built once a run. */
  readonly openModule: (context: BrowserContext, name: string) => Promise<PageModule>;
  /** Starts a browser on the profile, opens the module, and closes the browser: what is read in it is read cold. */
  readonly inPage: <Result>(
    where: { readonly profile: string; readonly module: string },
    use: (module: PageModule) => Promise<Result>,
  ) => Promise<Result>;
  /** Makes what is costly once a run, whoever asks for it by this name. */
  readonly once: <Made>(name: string, make: () => Promise<Made>) => Promise<Made>;
  readonly close: () => Promise<void>;
}

export async function openBench({ rounds }: { rounds: number }): Promise<Bench> {
  const folder = mkdtempSync(join(tmpdir(), 'tallywright-bench-'));
  const [app, pages] = [join(folder, 'app'), join(folder, 'pages')];
  for (const path of [app, pages]) mkdirSync(path);
  const browserPath = await findBrowser();
  const host = await openBenchHost({ app, pages });
  const made = new Map<string, Promise<unknown>>();
  let [profiles, appBuilt] = [0, false];

  const once: Bench['once'] = <Made>(name: string, make: () => Promise<Made>) => {
    const known = made.get(name) ?? make();
    made.set(name, known);
    return known as Promise<Made>;
  };

  function builtApp(): void {
    if (!appBuilt) buildApp(app);
    appBuilt = true;
  }

  function newProfile(): string {
    profiles += 1;
    return join(folder, `profile-${profiles}`);
  }

  const inBrowser: Bench['inBrowser'] = async (profile, use) => {
    const context = await launchProfile({ browserPath, folder: profile, flags: benchFlags });
    try {
      return await use(context);
    } finally {
      await context.close();
      await browserGone(profile);
    }
  };

  const openModule: Bench['openModule'] = async (context, name) => {
    await once(`module ${name}`, () => buildPageModule(name, pages));
    const page = await context.newPage();
    await page.goto(host.pagesUrl);
    const url = `${host.pagesUrl}${name}/${name}.js`;
    const callModule = <Result>(name = '', argument?: unknown) =>
      page.evaluate(([...what]) => globalThis.callModule(what), [url, name, argument]) as Promise<Result>;
    await callModule();
    return {
      page,
      call: callModule,
    };
  };

  return {
    rounds,
    built() {
      builtApp();
      return app;
    },
    appUrl() {
      builtApp();
      return host.appUrl;
    },
    staticUrl: host.staticUrl,
    newProfile,
    copyOf(profile) {
      const copy = newProfile();
      copyProfile(profile, copy);
      return copy;
    },
    inBrowser,
    openModule,
    once,
    inPage: ({ profile, module }, use) =>
      inBrowser(profile, async (context) => use(await openModule(context, module))),
    async close() {
      await host.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
