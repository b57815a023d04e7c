/**
 * Draws the app's icons into public: an awl haft as it sits in the lathe, with a tally of five scored across it.
 * Run after a change of the drawing and commit what it writes: `node .ci/render-icons.mjs`.
 */
import { writeFileSync } from 'node:fs';
import { chromium } from 'playwright-core';
import { browserFlags } from '../tests/support/browser-flags.mjs';
import { findBrowser } from '../tests/support/find-browser.mjs';

const walnut = '#3b2a1e';
const beech = '#e9d3ae';
const copper = '#b4632d';
/** The middle of the 512 × 512 drawing that no launcher's mask cuts away, as a share of its width. */
const safeShare = 0.8;

const body =
  'M0 256C0 178 56 138 128 138C206 138 228 190 306 192V320C228 322 206 374 128 374C56 374 0 334 0 256Z';
const ferrule = 'M316 196L372 208V304L316 316Z';
const blade = 'M382 234L512 256L382 278Z';
const strokes = 'M66 208V304M110 198V314M154 198V314M198 208V304';
const fifth = 'M34 306L232 202';

const colour = `
    <path fill="${beech}" d="${body}${blade}"/>
    <path fill="${copper}" d="${ferrule}"/>
    <path fill="none" stroke="${walnut}" stroke-width="22" stroke-linecap="round" d="${strokes}"/>
    <path fill="none" stroke="${copper}" stroke-width="24" stroke-linecap="round" d="${fifth}"/>`;

/** The drawing lies along the lathe's axis; the icon shows it aslant, as a hand holds it. @param {string} haft */
const aslant = (haft, share = 1) => `
  <g transform="translate(256 256) rotate(45) scale(${share}) translate(-256 -256)">${haft}
  </g>`;

/** @param {string} inside */
const svg = (inside) =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="512" height="512" viewBox="0 0 512 512">${inside}\n</svg>\n`;

const rounded = svg(`
  <rect width="512" height="512" rx="96" fill="${walnut}"/>${aslant(colour, 0.98)}`);

const fullBleed = svg(`
  <rect width="512" height="512" fill="${walnut}"/>${aslant(colour, safeShare)}`);

// Only the opacity of a monochrome icon counts, so the tally is cut out of the haft.
const monochrome = svg(`
  <mask id="tally">
    <rect width="512" height="512" fill="#fff"/>
    <path fill="none" stroke="#000" stroke-width="22" stroke-linecap="round" d="${strokes}${fifth}"/>
  </mask>${aslant(
    `
    <path mask="url(#tally)" d="${body}"/>
    <path d="${ferrule}${blade}"/>`,
    safeShare,
  )}`);

/** @param {string} name */
const inPublic = (name) => new URL(`../public/${name}`, import.meta.url);

writeFileSync(inPublic('favicon.svg'), rounded);
writeFileSync(inPublic('monochrome.svg'), monochrome);

const browser = await chromium.launch({ executablePath: await findBrowser(), args: browserFlags });
try {
  for (const [name, drawing, size] of /** @type {const} */ ([
    ['icon-192.png', rounded, 192],
    ['icon-512.png', rounded, 512],
    ['maskable-512.png', fullBleed, 512],
  ])) {
    const page = await browser.newPage({ viewport: { width: size, height: size } });
    await page.setContent(
      `<style>body{margin:0}svg{display:block;width:100vw;height:100vh}</style>${drawing}`,
    );
    writeFileSync(inPublic(name), await page.screenshot({ omitBackground: true }));
    await page.close();
  }
} finally {
  await browser.close();
}
