/**
 * What a built page may load: its own files and nothing else. Text never becomes script: the page makes the addresses
 * of its workers by a policy that lets only its own files through (src/worker/own-scripts.ts), and nothing else.
 *
 * @param {string} scripts where scripts may come from
 */
const policy = (scripts) =>
  [
    "default-src 'none'",
    `script-src ${scripts}`,
    "style-src 'self'",
    "img-src 'self' blob: data:",
    "font-src 'self'",
    "connect-src 'self'",
    "manifest-src 'self'",
    "worker-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
    "object-src 'none'",
    "require-trusted-types-for 'script'",
    'trusted-types default',
  ].join('; ');

/**
 * `wasm-unsafe-eval` lets WebAssembly be compiled, and no text run as script: what reads labels in the picture of a
 * camera is WebAssembly, of the app's own files as everything is that it can fetch.
 */
export const contentSecurityPolicy = policy("'self' 'wasm-unsafe-eval'");
/** The rescue page has no use for it. */
export const rescuePolicy = policy("'self'");

/** What the app never asks of a tablet; the camera and the clipboard only from its own page. */
const permissions = [
  'camera=(self)',
  'clipboard-write=(self)',
  ...[
    'accelerometer',
    'browsing-topics',
    'clipboard-read',
    'display-capture',
    'encrypted-media',
    'geolocation',
    'gyroscope',
    'hid',
    'idle-detection',
    'local-fonts',
    'magnetometer',
    'microphone',
    'midi',
    'payment',
    'picture-in-picture',
    'publickey-credentials-get',
    'serial',
    'usb',
    'xr-spatial-tracking',
  ].map((feature) => `${feature}=()`),
].join(', ');

/** What a host sends with every answer. Browsers heed `frame-ancestors` in a header only, so the page cannot say it itself. */
export const securityHeaders = {
  'Content-Security-Policy': `${contentSecurityPolicy}; frame-ancestors 'none'`,
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Permissions-Policy': permissions,
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
};
