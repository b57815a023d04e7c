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

/** How every browser of the tests is started: no sandbox for containers, no graphics card, no calls home. */
export const browserFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  `--disable-features=${unwanted.join(',')}`,
];
