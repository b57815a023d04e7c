/**
 * What the driver turns off by itself, which a list of one's own would turn on again, and the pages that Chromium draws its
 * address bar's suggestions with: it loads two of them for every window, at a second of a core.
 */
const unwanted = [
  ...['AvoidUnnecessaryBeforeUnloadCheckSync', 'BlockOriginHeaderModificationOnRedirect', 'PaintHolding'],
  ...['AvoidCorsURLLoaderRestartOnRedirect', 'DestroyProfileOnBrowserClose', 'ThirdPartyStoragePartitioning'],
  ...['DialMediaRouteProvider', 'GlobalMediaControls', 'MediaRouter', 'NetworkTimeServiceQuerying'],
  ...['HttpsUpgrades', 'LensOverlay', 'OptimizationHints', 'Translate', 'AimEnabled'],
  ...['WebUIOmniboxPopup', 'WebUIOmniboxAimPopup', 'WebUIOmniboxFullPopup'],
];

/** @param {readonly string[]} features that are turned off */
const flagsWithout = (features) => [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  `--disable-features=${features.join(',')}`,
];

/** How a browser is started whose work is measured: no sandbox for containers, no graphics card, no calls home. */
export const benchFlags = flagsWithout(unwanted);

/**
 * How every other browser of the tests is started: without the process, too, that Chromium holds ready for the page that may
 * be opened next, at half a second of a core for each that is.
 */
export const browserFlags = flagsWithout([...unwanted, 'SpareRendererForSitePerProcess']);
