/** What the pictures of the README and of the manual show; `take-pictures.mjs` takes them. */

/**
 * @typedef {object} Shot
 * @property {string} name
 * @property {{ width: number, height: number }} viewport
 * @property {string} hash where in the app it is, or which page beside it
 * @property {readonly string[]} [taps] what is tapped there, one after another
 * @property {string} [settled] what is waited for
 * @property {'demo' | 'shop' | 'nothing'} [on] a tablet in the demo, one with a new shop, or one without; the demo if left out
 * @property {string} [of] of the manual: the picture begins at the top of this; of the screen if left out
 * @property {number} [above] so many CSS pixels further up
 */

const wide = { width: 1280, height: 800 };
const upright = { width: 800, height: 1280 };

/** @type {readonly Shot[]} */
export const readmePictures = [
  {
    name: 'stage-screen',
    viewport: wide,
    hash: '#/bench/sand',
    taps: ['[data-testid^=bench-tray-]', '[data-testid=pass]'],
  },
  {
    name: 'flaw',
    viewport: wide,
    hash: '#/bench/sand',
    taps: ['[data-testid^=bench-tray-]', '[data-testid=flaw-scratch]'],
  },
  { name: 'yield', viewport: upright, hash: '#/yield' },
  {
    name: 'signals',
    viewport: wide,
    hash: '#/yield/signals',
    taps: ['[data-testid=signal-0-chart]', '[data-testid=series-chart] .u-over'],
  },
  { name: 'day', viewport: upright, hash: '#/day' },
];

/** All pictures of the manual, in pixels; `chapters.ts` says the same. */
export const manualSize = { width: 800, height: 600 };

/** So tall that the bar of places covers nothing of what is shown. */
const column = { width: 640, height: 2400 };
/** A whole screen. */
const tablet = { width: 1280, height: 960 };
/** For a form that wants a little more room. */
const broad = { width: 800, height: 1000 };

/** @type {readonly Shot[]} */
export const manualPictures = [
  {
    name: 'start',
    viewport: { width: 960, height: 720 },
    hash: '#/bench',
    on: 'nothing',
    settled: '[data-testid=to-manual]',
  },
  { name: 'variants', viewport: column, hash: '#/set-up/variants', of: '.set-up-head', above: 12 },
  {
    name: 'trays',
    viewport: column,
    hash: '#/trays/new',
    taps: [
      '[data-testid^=make-variant-]',
      '[data-testid=make-count-more]',
      '[data-testid=make-count-more]',
      '[data-testid=make-save]',
    ],
    settled: '[data-testid=made-code]',
    of: '.panel',
    above: 12,
  },
  {
    name: 'bench',
    viewport: tablet,
    hash: '#/bench/sand',
    taps: ['[data-testid^=bench-tray-]', '[data-testid=pass]'],
  },
  {
    name: 'flaws',
    viewport: tablet,
    hash: '#/bench/sand',
    taps: ['[data-testid^=bench-tray-]', '[data-testid=flaw-scratch]'],
  },
  { name: 'curing', viewport: tablet, hash: '#/bench/curing', settled: '[data-testid=curing-warmth]' },
  {
    name: 'check',
    viewport: broad,
    hash: '#/shelf/ash-copper',
    taps: ['[data-testid=shelf-raise]'],
    of: '[data-testid=raise-sheet]',
  },
  {
    name: 'counts',
    viewport: broad,
    hash: '#/trays',
    taps: ['button:has([data-testid=tray-row-A35J])', '[data-testid=recount-open]'],
    of: '[data-testid=recount-sheet]',
  },
  { name: 'stores', viewport: column, hash: '#/stores', of: '.panel', above: 12 },
  { name: 'yield', viewport: column, hash: '#/yield', of: '.panel', above: 12 },
  {
    name: 'plan',
    viewport: column,
    hash: '#/plan/forecast',
    settled: '[data-testid=forecast-promise]',
    of: '.panel',
    above: 12,
  },
  { name: 'shelf', viewport: column, hash: '#/shelf', of: '.panel', above: 12 },
  {
    name: 'copies',
    viewport: column,
    hash: '#/set-up/files',
    on: 'shop',
    of: '[data-testid=outside-panel]',
    above: 12,
  },
  { name: 'trouble', viewport: broad, hash: 'rescue.html', settled: 'body[data-read=all]' },
];
