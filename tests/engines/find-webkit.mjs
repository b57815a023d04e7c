/** Finds WebKitGTK, its driver and a screen without glass to show it on, and installs them from Debian where they are missing. */
import { existsSync } from 'node:fs';
import { installFromDebian } from '../../.ci/debian.mjs';

/** @typedef {{ browser: string, driver: string, screen: string }} WebKit paths */

const folders = ['x86_64-linux-gnu', 'aarch64-linux-gnu'].map((machine) => `/usr/lib/${machine}`);
const places = {
  browser: folders.map((folder) => `${folder}/webkit2gtk-4.1/MiniBrowser`),
  driver: [
    '/usr/bin/WebKitWebDriver',
    ...folders.map((folder) => `${folder}/webkit2gtk-4.1/WebKitWebDriver`),
  ],
  screen: ['/usr/bin/Xvfb'],
};

/** @throws {Error} that says what is missing @returns {WebKit} */
export function findWebKit() {
  if (!present()) installFromDebian(['webkit2gtk-driver', 'xvfb']);
  const found = present();
  if (found) return found;
  throw new Error('No WebKit to test with. On Debian or Ubuntu: sudo apt-get install webkit2gtk-driver xvfb');
}

/** @returns {WebKit | undefined} */
function present() {
  const [browser, driver, screen] = [places.browser, places.driver, places.screen].map((paths) =>
    paths.find(existsSync),
  );
  return browser && driver && screen ? { browser, driver, screen } : undefined;
}
