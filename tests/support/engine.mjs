/** The engine that the tests of the built app drive: Chromium, or the one that ENGINE names; and how it is started. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, firefox } from 'playwright-core';
import { browserFlags } from './browser-flags.mjs';

/** @typedef {'chromium' | 'firefox' | 'webkit'} Engine */
/** @typedef {import('playwright-core').Browser} Browser */

/** @param {string} [named] @returns {Engine} @throws {Error} for an engine that is not known */
function engineOf(named = 'chromium') {
  if (named === 'chromium' || named === 'firefox' || named === 'webkit') return named;
  throw new Error(`ENGINE is chromium, firefox or webkit, and not ${named}`);
}

export const engine = engineOf(process.env.ENGINE);

/** Where each Firefox puts what its pages hand out. @type {WeakMap<Browser, string>} */
const downloads = new WeakMap();

/** The folder in which `browser` puts what its pages hand out, where that is not told of by an event. @param {Browser} browser */
export const downloadsOf = (browser) => downloads.get(browser);

/**
 * Starts the browser at `path` with nothing remembered. Flags are Chromium's: another engine has no use for them.
 *
 * @param {string} path
 * @param {{ flags?: readonly string[], timeout?: number }} [options] `timeout` in ms
 * @returns {Promise<Browser>}
 */
export async function startBrowser(path, { flags = [], timeout = 180_000 } = {}) {
  if (engine !== 'firefox')
    return chromium.launch({ executablePath: path, args: [...browserFlags, ...flags], timeout });
  const folder = mkdtempSync(join(tmpdir(), 'tallywright-'));
  // The channel makes the driver speak WebDriver BiDi, as a Firefox that nobody patched does.
  const browser = await firefox.launch({
    channel: 'moz-firefox',
    executablePath: path,
    downloadsPath: folder,
    timeout,
  });
  downloads.set(browser, folder);
  browser.on('disconnected', () => rmSync(folder, { recursive: true, force: true }));
  return browser;
}
