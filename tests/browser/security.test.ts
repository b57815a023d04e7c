import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { contentSecurityPolicy, rescuePolicy, securityHeaders } from '../../.ci/content-security-policy.mjs';
import { launchBrowser, openPage, watchTroubles } from '../support/browser.ts';
import { makeUpTrays, setUpShop } from '../support/first-ten-minutes.ts';
import { maker } from '../support/maker.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser.close());

const builtText = (path: string) => readFileSync(join(inject('builtApp'), path), 'utf8');
const builtFiles = () => readdirSync(inject('builtApp'), { recursive: true, encoding: 'utf8' });
const pages = ['index.html', 'rescue.html'] as const;

describe('what the host sends', () => {
  test.each(['', 'rescue.html', 'sw.js', 'manifest.webmanifest', 'not-there'])(
    'every answer carries the policy and its companions (%s)',
    async (path) => {
      const { headers } = await fetch(`${inject('appUrl')}${path}`);
      for (const [name, value] of Object.entries(securityHeaders))
        expect(headers.get(name), name).toBe(value);
      expect(headers.get('Content-Security-Policy')).toContain("frame-ancestors 'none'");
      expect(headers.has('Clear-Site-Data')).toBe(false);
    },
  );

  test('files that are named by their content are kept for ever, all else is asked for anew', async () => {
    const script = readdirSync(join(inject('builtApp'), 'assets')).find((name) => name.endsWith('.js'));
    const kept = async (path: string) =>
      (await fetch(`${inject('appUrl')}${path}`)).headers.get('Cache-Control');
    expect(await kept(`assets/${script}`)).toContain('immutable');
    for (const path of ['', 'sw.js', 'rescue.html', 'rescue.js'])
      expect(await kept(path), path).toBe('no-cache');
  });

  test('no other page can hold the app in a frame', async () => {
    const { page } = await openPage(browser, { url: 'about:blank' });
    const frame = `${new URL(inject('appUrl')).origin}/frame`;
    await page.route(frame, (route) =>
      route.fulfill({ contentType: 'text/html', body: `<iframe src="${inject('appUrl')}"></iframe>` }),
    );
    await page.goto(frame);
    await page.waitForTimeout(500);
    const inside = page.frames().find((each) => each !== page.mainFrame());
    expect(await inside?.evaluate(() => document.getElementById('app')).catch(() => null)).toBeNull();
    await page.context().close();
  });
});

describe('what is built', () => {
  test.each([
    ['index.html', contentSecurityPolicy],
    ['rescue.html', rescuePolicy],
  ])('%s says the policy itself, for hosts that send no headers', (page, its) => {
    const policy = /http-equiv="Content-Security-Policy"\s+content="([^"]*)"/.exec(builtText(page))?.[1];
    expect(policy?.replaceAll('&#39;', "'")).toBe(its);
  });

  test.each(pages)('%s has no script, style or handler in it', (page) => {
    const text = builtText(page);
    expect(text).not.toMatch(/<script(?![^>]*\ssrc=)/);
    expect(text).not.toMatch(/<style|\sstyle=|\son[a-z]+=|javascript:/);
  });

  test('no file names an address of another host but in the names of standards and in one warning', () => {
    const hosts = new Set<string>();
    for (const path of builtFiles().filter((name) => /[.](js|css|html|svg|webmanifest)$/.test(name))) {
      for (const [, host] of builtText(path).matchAll(/https?:\/\/([\w.-]+)/g)) if (host) hosts.add(host);
    }
    // The one is where Workbox's warning about a missing digest points to; nothing asks it for anything.
    expect([...hosts].sort()).toEqual(['bit.ly', 'www.w3.org']);
  });

  test('the rescue page is on its own: its script imports nothing, and it is kept with the app', () => {
    expect(builtText('rescue.js')).not.toMatch(/\bimport\b/);
    for (const file of ['rescue.html', 'rescue.js', 'rescue.css']) {
      expect(builtText('sw.js')).toMatch(
        new RegExp(`"integrity":"sha256-[^"]+","revision":"[^"]+","url":"${file}"`),
      );
    }
  });

  test('every part of the app is kept on the tablet, workers included', () => {
    const worker = builtText('sw.js');
    const parts = builtFiles().filter(
      (name) => /[.](js|css|woff2|wasm)$/.test(name) && !/^sw[.]m?js$/.test(name),
    );
    expect(parts.length).toBeGreaterThan(20);
    for (const part of parts) expect(worker).toContain(`"url":"${part.replaceAll('\\', '/')}"`);
  });
});

/** Breaches of the policy on a page, from its start. */
async function watchBreaches(page: Page): Promise<() => Promise<readonly string[]>> {
  await page.addInitScript(() => {
    const seen: string[] = [];
    Object.assign(globalThis, { breaches: seen });
    addEventListener('securitypolicyviolation', (event) => {
      seen.push(`${event.violatedDirective}: ${event.blockedURI} ${event.sample}`);
    });
  });
  return () => page.evaluate(() => Reflect.get(globalThis, 'breaches') as string[]);
}

test('a text never becomes markup or code, and no other host is asked for anything', async () => {
  const { page } = await openPage(browser);
  const refused = await page.evaluate(() => {
    const tries = {
      markup: () => {
        document.createElement('div').innerHTML = '<img src=x onerror=alert(1)>';
      },
      code: () => void new Function('return 1')(),
      script: () => {
        document.createElement('script').src = 'https://other.example/x.js';
      },
      worker: () => void new Worker('https://other.example/x.js'),
    };
    const refusals = () =>
      Object.entries(tries).flatMap(([name, attempt]) => {
        try {
          attempt();
          return [];
        } catch {
          return [name];
        }
      });
    // In a turn of the page's own: what a test evaluates is let off the policy for code.
    return new Promise<readonly string[]>((resolve) => setTimeout(() => resolve(refusals())));
  });
  expect(refused).toEqual(['markup', 'code', 'script', 'worker']);
  await expect(page.evaluate(() => fetch('https://other.example/').then(() => 'had'))).rejects.toThrow();
  await page.context().close();
});

test('WebAssembly may be compiled, for what reads labels, and a text still becomes no code', async () => {
  const { page } = await openPage(browser);
  // The shortest module: magic and version (WebAssembly Core, 5.5.16).
  const compiled = page.evaluate(() =>
    WebAssembly.compile(new Uint8Array([0, 0x61, 0x73, 0x6d, 1, 0, 0, 0])).then(() => 'compiled'),
  );
  expect(await compiled).toBe('compiled');
  expect(contentSecurityPolicy).toContain("script-src 'self' 'wasm-unsafe-eval';");
  expect(contentSecurityPolicy).not.toContain("'unsafe-eval'");
  await page.context().close();
});

const image = '<img src=x onerror="document.title=1">';
const hostile = [
  image,
  '"><script>document.title=1</script>',
  '__proto__',
  'constructor',
  `a\u202Egnp.exe`,
  'javascript:alert(1)',
];

test('hostile names of woods, parts, batches, people and the shop are text on every place, in the title and in print', async () => {
  const context = await browser.newContext({ locale: 'en-GB', timezoneId: 'Europe/London' });
  const page = await context.newPage();
  const breaches = await watchBreaches(page);
  const troubles = watchTroubles(page, new URL(inject('appUrl')).origin);
  await page.goto(inject('appUrl'));
  const hands = maker(page);
  const { at, tap, close, goTo } = hands;
  await makeUpTrays(hands, await setUpShop(hands));

  for (const name of hostile) {
    await goTo('#/set-up/woods');
    await tap('add-wood');
    await tap('wood-own');
    await at('wood-name').fill(name);
    await close('wood-save');
  }
  await goTo('#/set-up/parts');
  await tap('add-part');
  await at('part-name').fill(image);
  await at('part-sort').locator('input[value=ferrule]').check({ force: true });
  await close('part-save');
  await goTo('#/set-up/batches');
  await tap('add-batch');
  await at('batch-name').fill(image);
  await close('batch-save');
  await goTo('#/set-up/variants');
  await tap('add-variant');
  await at('variant-wood').selectOption({ label: image });
  await close('variant-save');
  await goTo('#/set-up/tablet');
  await at('shop-name').fill(image);
  await close('shop-save');
  // A tray of the hostile wood goes through the places.
  await goTo('#/trays/new');
  await page.locator('[data-testid^=make-variant-]').last().click();
  await close('make-prized');
  const code = (await at('made-code').first().textContent()) ?? '';
  await hands.workOn('kit-parts', code);
  await tap('pass');

  const addresses = [
    '#/bench',
    '#/trays',
    '#/yield',
    '#/plan',
    '#/plan/starts',
    '#/day',
    '#/set-up',
    '#/set-up/woods',
    '#/set-up/batches',
  ];
  for (const media of ['screen', 'print'] as const) {
    await page.emulateMedia({ media });
    for (const address of [...addresses, `#/bench/kit-parts`, '#/set-up/tablet']) {
      await goTo(address);
      expect(await page.locator('img[src=x], script:not([src])').count(), address).toBe(0);
      expect(await page.title(), address).toBe('Tallywright');
    }
  }
  await page.emulateMedia({ media: 'screen' });
  await goTo('#/set-up/woods');
  await page.getByText(image, { exact: true }).first().waitFor();
  await page.getByText('__proto__', { exact: true }).first().waitFor();
  // The control that turns the reading direction is not shown.
  expect(await page.locator('main').textContent()).not.toContain('\u202E');
  await hands.openTray(code);
  expect(await page.locator('img[src=x]').count()).toBe(0);
  await page.reload();
  await goTo('#/set-up/woods');
  await page.getByText(image, { exact: true }).first().waitFor();
  expect(await breaches()).toEqual([]);
  expect(troubles).toEqual([]);
  await context.close();
});

describe('a window without storage', () => {
  const missing: Record<string, { readonly without: string[]; readonly banner: string | undefined }> = {
    'no settings, no locks, no channel, no service worker, no storage manager': {
      without: ['localStorage', 'sessionStorage', 'BroadcastChannel', 'locks', 'storage', 'serviceWorker'],
      banner: 'even settings',
    },
    'no database either': {
      without: [
        'indexedDB',
        'localStorage',
        'sessionStorage',
        'BroadcastChannel',
        'locks',
        'storage',
        'serviceWorker',
      ],
      banner: 'everything is gone',
    },
    'no locks and no channel alone': { without: ['BroadcastChannel', 'locks'], banner: undefined },
  };

  test.each(Object.entries(missing))(
    '%s: the app runs and says what it forgets',
    async (_, { without, banner }) => {
      const context = await browser.newContext({ locale: 'en-GB' });
      const page = await context.newPage();
      const troubles = watchTroubles(page, new URL(inject('appUrl')).origin);
      await page.addInitScript((names) => {
        for (const name of names) {
          const where = name in Navigator.prototype ? Navigator.prototype : globalThis;
          if (name.endsWith('Storage') && where === globalThis) {
            const get = () => {
              throw new DOMException('refused', 'SecurityError');
            };
            Object.defineProperty(where, name, { get, configurable: true });
          } else if (where === Navigator.prototype) Reflect.deleteProperty(where, name);
          else Object.defineProperty(where, name, { value: undefined, configurable: true });
        }
      }, without);
      await page.goto(inject('appUrl'));
      const hands = maker(page);
      const { at, goTo } = hands;
      await at('new-shop').waitFor();
      const says = at('forgets-banner');
      if (banner) await says.filter({ hasText: banner }).waitFor();
      const trays = await makeUpTrays(hands, await setUpShop(hands));
      await hands.workOn('kit-parts', trays.beech[0]);
      await hands.tap('pass', 2);
      expect(await hands.left()).toBe(8);
      for (const address of ['#/yield', '#/day', '#/trays', '#/set-up/tablet', '#/bench']) {
        await goTo(address);
        expect(await at('place-broken').count(), address).toBe(0);
        expect(await says.count(), address).toBe(banner ? 1 : 0);
      }
      await page.goto(`${inject('appUrl')}rescue.html`);
      await page.waitForFunction(() => document.body.dataset.read === 'all');
      expect(troubles).toEqual([]);
      await context.close();
    },
    120_000,
  );
});
