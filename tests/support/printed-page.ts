/**
 * What a printer would get of a page, measured in mm. The PDF that Chromium makes is drawn by another program (PDFium), and
 * its symbols are read by a decoder that knows nothing of the encoder (jsQR).
 */
import { PDFiumLibrary } from '@hyzyla/pdfium';
import jsQR from 'jsqr';
import type { Page } from 'playwright-core';

const pointsInMm = 25.4 / 72;
/** Finer than a printer of 203 dots to the inch. */
const dotsPerMm = 8;

export interface BoxInMm {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface PrintedSymbol {
  readonly text: string;
  /** The dark square, without its blank margin. */
  readonly box: BoxInMm;
  readonly modules: number;
}

export interface PrintedPage {
  /** Of the page, in mm. */
  readonly width: number;
  readonly height: number;
  readonly text: string;
  /** The least box around all that is printed within a box; undefined where nothing is. */
  readonly inkIn: (box: BoxInMm) => BoxInMm | undefined;
  /** The symbol within a box; undefined where none can be read. */
  readonly symbolIn: (box: BoxInMm) => PrintedSymbol | undefined;
  /** How light the page is at a place in mm: 0 is print, 1 is paper. */
  readonly lightAt: (x: number, y: number) => number;
}

/** Prints a page as the browser would at 100 %, on the paper that its style sheet asks for. */
export async function printed(page: Page): Promise<readonly PrintedPage[]> {
  const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: false });
  const library = await PDFiumLibrary.init();
  const document = await library.loadDocument(new Uint8Array(pdf));
  const pages: PrintedPage[] = [];
  for (const each of document.pages()) {
    const text = each.getText();
    const { originalWidth, originalHeight } = each.getOriginalSize();
    const drawn = await each.render({ scale: dotsPerMm * pointsInMm, render: 'bitmap' });
    const size = { width: originalWidth * pointsInMm, height: originalHeight * pointsInMm };
    pages.push({ ...size, text, ...readingOf(drawn) });
  }
  document.destroy();
  library.destroy();
  return pages;
}

interface Bitmap {
  readonly width: number;
  readonly height: number;
  /** Four bytes for each dot. */
  readonly data: Uint8Array;
}

function readingOf(page: Bitmap): Pick<PrintedPage, 'inkIn' | 'symbolIn' | 'lightAt'> {
  return {
    lightAt: (x, y) =>
      (page.data[4 * (Math.floor(y * dotsPerMm) * page.width + Math.floor(x * dotsPerMm))] ?? 255) / 255,
    inkIn(box) {
      const { left, top, part } = cut(page, box);
      const [xs, ys] = [new Set<number>(), new Set<number>()];
      for (let y = 0; y < part.height; y += 1)
        for (let x = 0; x < part.width; x += 1)
          if ((part.data[4 * (y * part.width + x)] ?? 255) < 128) {
            xs.add(x);
            ys.add(y);
          }
      if (xs.size === 0) return undefined;
      const [x, y] = [Math.min(...xs), Math.min(...ys)];
      return inMm({
        x: left + x,
        y: top + y,
        width: Math.max(...xs) - x + 1,
        height: Math.max(...ys) - y + 1,
      });
    },
    symbolIn(box) {
      const { left, top, part } = cut(page, box);
      const found = jsQR(new Uint8ClampedArray(part.data), part.width, part.height);
      if (!found) return undefined;
      const { topLeftCorner, topRightCorner, bottomLeftCorner } = found.location;
      const corner = { x: left + topLeftCorner.x, y: top + topLeftCorner.y };
      const width = topRightCorner.x - topLeftCorner.x;
      const height = bottomLeftCorner.y - topLeftCorner.y;
      return { text: found.data, box: inMm({ ...corner, width, height }), modules: 17 + 4 * found.version };
    },
  };
}

function inMm({ x, y, width, height }: BoxInMm): BoxInMm {
  return { x: x / dotsPerMm, y: y / dotsPerMm, width: width / dotsPerMm, height: height / dotsPerMm };
}

/** The part of a page that lies in a box, in dots. */
function cut(page: Bitmap, box: BoxInMm): { left: number; top: number; part: Bitmap } {
  const left = Math.max(0, Math.round(box.x * dotsPerMm));
  const top = Math.max(0, Math.round(box.y * dotsPerMm));
  const width = Math.min(page.width - left, Math.round(box.width * dotsPerMm));
  const height = Math.min(page.height - top, Math.round(box.height * dotsPerMm));
  const data = new Uint8Array(4 * width * height);
  for (let y = 0; y < height; y += 1) {
    const from = 4 * ((top + y) * page.width + left);
    data.set(page.data.subarray(from, from + 4 * width), 4 * y * width);
  }
  return { left, top, part: { width, height, data } };
}
