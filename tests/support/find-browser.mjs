/** Finds a browser to test with, and as a last resort fetches one; a run without a browser is an error, never a skip. */
import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { installFromDebian } from '../../.ci/debian.mjs';
import { findWebKit } from '../engines/find-webkit.mjs';
import { engine, startBrowser } from './engine.mjs';

const chromiums = [installedBrowsers, playwrightBrowser, debianBrowser, packagedBrowser];
const firefoxes = [installedFirefoxes, debianFirefox];

const lastResort = { name: '@sparticuz/chromium', version: '143.0.4' };

/**
 * The path of a browser that was seen to start. BROWSER_PATH or CHROME_PATH, if set, is the only one tried.
 *
 * @throws {Error} when the named browser does not start, or when none can be found or fetched
 * @returns {Promise<string>}
 */
export async function findBrowser() {
  if (engine === 'webkit') return findWebKit().browser;
  const named = process.env.BROWSER_PATH || process.env.CHROME_PATH;
  if (named) {
    const failure = await failureToStart(named);
    if (failure)
      throw new Error(`BROWSER_PATH or CHROME_PATH names ${named}, which does not start: ${failure}`);
    return named;
  }
  const tried = [];
  for (const source of engine === 'firefox' ? firefoxes : chromiums) {
    for (const path of await source()) {
      const failure = await failureToStart(path);
      if (!failure) return path;
      tried.push(`${path}: ${failure}`);
    }
  }
  throw new Error(
    [
      engine === 'firefox'
        ? 'No Firefox to test with. Install one, or name it: BROWSER_PATH=/path/to/firefox'
        : 'No browser to test with. Install Chromium, or name one: BROWSER_PATH=/path/to/chromium npm test',
      ...tried,
    ].join('\n  '),
  );
}

/** Why the browser at `path` cannot be used, in one line; undefined if it opens a page. @param {string} path */
async function failureToStart(path) {
  if (!existsSync(path)) return 'there is no such file';
  try {
    const browser = await startBrowser(path, { timeout: 60_000 });
    try {
      await browser.newPage();
    } finally {
      await browser.close();
    }
    return undefined;
  } catch (error) {
    return String(error).split('\n', 1)[0];
  }
}

function installedBrowsers() {
  /** @type {Partial<Record<NodeJS.Platform, string[]>>} */
  const known = {
    linux: [
      '/usr/bin/chromium',
      '/usr/bin/chromium-browser',
      '/usr/bin/google-chrome-stable',
      '/usr/bin/google-chrome',
      '/usr/bin/microsoft-edge-stable',
      '/snap/bin/chromium',
    ],
    darwin: ['Google Chrome', 'Chromium', 'Microsoft Edge'].map(
      (app) => `/Applications/${app}.app/Contents/MacOS/${app}`,
    ),
    win32: [process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)'], process.env.LOCALAPPDATA]
      .filter((folder) => folder !== undefined)
      .flatMap((folder) => [
        join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe'),
        join(folder, 'Microsoft', 'Edge', 'Application', 'msedge.exe'),
      ]),
  };
  return (known[process.platform] ?? []).filter(existsSync);
}

/** Playwright's own download, if someone has made it. */
function playwrightBrowser() {
  const path = chromium.executablePath();
  return path && existsSync(path) ? [path] : [];
}

/** On Debian as root, where it is wanted (CI or INSTALL_BROWSER=1). Ubuntu's package is only a pointer to snap. */
function debianBrowser() {
  const wanted = process.env.CI || process.env.INSTALL_BROWSER === '1';
  if (!wanted) return [];
  installFromDebian(['chromium']);
  return ['/usr/bin/chromium'].filter(existsSync);
}

function installedFirefoxes() {
  return [
    '/usr/bin/firefox-esr',
    '/usr/bin/firefox',
    '/Applications/Firefox.app/Contents/MacOS/firefox',
  ].filter(existsSync);
}

function debianFirefox() {
  installFromDebian(['firefox-esr']);
  return ['/usr/bin/firefox-esr'].filter(existsSync);
}

/** A browser from the package registry, for Linux on x64 only; kept out of package.json because of its 64 MB. */
async function packagedBrowser() {
  if (process.platform !== 'linux' || process.arch !== 'x64') return [];
  const { name, version } = lastResort;
  // Makes it unpack the system libraries that it brings along, wherever it runs.
  process.env.AWS_LAMBDA_JS_RUNTIME ??= 'nodejs22.x';
  try {
    if (!existsSync(new URL(`../../node_modules/${name}/package.json`, import.meta.url))) {
      console.log(`Installing ${name} ${version} …`);
      execFileSync('npm', ['install', '--no-save', '--no-package-lock', `${name}@${version}`], {
        stdio: 'inherit',
      });
    }
    const { default: packaged } = await import(name);
    return [await packaged.executablePath()];
  } catch (error) {
    console.log(`${name} cannot be had: ${String(error).split('\n', 1)[0]}`);
    return [];
  }
}
