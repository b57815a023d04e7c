/** Picture files for tests, each made here byte by byte or by the browser's own canvas. */
import { deflateSync, crc32 as zlibCrc } from 'node:zlib';
import type { Page } from 'playwright-core';

/** What `setInputFiles` takes. */
export interface PictureFile {
  readonly name: string;
  readonly mimeType: string;
  readonly buffer: Buffer;
}

export const file = (name: string, buffer: Buffer, mimeType = 'image/jpeg'): PictureFile => ({
  name,
  mimeType,
  buffer,
});

/** Colours of the four quarters of a picture that is held upright: top left, top right, bottom left, bottom right. */
export const quarters = [
  [220, 30, 30],
  [30, 160, 30],
  [30, 30, 220],
  [240, 220, 40],
] as const;
export const upright = { width: 96, height: 64 } as const;

/**
 * Where row 0 and column 0 of the stored picture are on the upright one, by the value of the tag Orientation (CIPA DC-008,
 * Exif 2.32, tag 0x0112).
 */
const sides = [
  ['top', 'left'],
  ['top', 'right'],
  ['bottom', 'right'],
  ['bottom', 'left'],
  ['left', 'top'],
  ['right', 'top'],
  ['right', 'bottom'],
  ['left', 'bottom'],
] as const;
export const orientations = [1, 2, 3, 4, 5, 6, 7, 8] as const;

/** The upright picture of four quarters as a JPEG that is stored turned, and says so in its EXIF. */
export async function turnedJpeg(page: Page, orientation: (typeof orientations)[number]): Promise<Buffer> {
  const [row0, column0] = sides[orientation - 1] ?? ['top', 'left'];
  const isTurned = row0 === 'left' || row0 === 'right';
  const { width: w, height: h } = upright;
  const [width, height] = isTurned ? [h, w] : [w, h];
  const pixels: number[] = [];
  for (let row = 0; row < height; row += 1) {
    for (let column = 0; column < width; column += 1) {
      const down = isTurned
        ? column0 === 'top'
          ? column
          : h - 1 - column
        : row0 === 'top'
          ? row
          : h - 1 - row;
      const across = isTurned
        ? row0 === 'left'
          ? row
          : w - 1 - row
        : column0 === 'left'
          ? column
          : w - 1 - column;
      pixels.push(...(quarters[(down < h / 2 ? 0 : 2) + (across < w / 2 ? 0 : 1)] ?? []), 255);
    }
  }
  const plain = await page.evaluate(
    async ({ data, size }) => {
      const canvas = new OffscreenCanvas(size[0] ?? 0, size[1] ?? 0);
      canvas
        .getContext('2d')
        ?.putImageData(new ImageData(new Uint8ClampedArray(data), canvas.width, canvas.height), 0, 0);
      const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.95 });
      return [...new Uint8Array(await blob.arrayBuffer())];
    },
    { data: pixels, size: [width, height] },
  );
  return withOrientation(Buffer.from(plain), orientation);
}

/** Puts an APP1 segment with one tag, and a place where it was taken, behind the first marker of a JPEG. */
function withOrientation(jpeg: Buffer, orientation: number): Buffer {
  const tiff = Buffer.alloc(38);
  tiff.write('MM', 0, 'latin1');
  tiff.writeUInt16BE(42, 2);
  tiff.writeUInt32BE(8, 4);
  tiff.writeUInt16BE(2, 8);
  tiff.writeUInt16BE(0x0112, 10);
  tiff.writeUInt16BE(3, 12);
  tiff.writeUInt32BE(1, 14);
  tiff.writeUInt16BE(orientation, 18);
  // ImageDescription, as text behind the tags.
  tiff.writeUInt16BE(0x010e, 22);
  tiff.writeUInt16BE(2, 24);
  tiff.writeUInt32BE(secret.length + 1, 26);
  tiff.writeUInt32BE(38, 30);
  const body = Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), tiff, Buffer.from(`${secret}\0`, 'latin1')]);
  const head = Buffer.alloc(4);
  head.writeUInt16BE(0xffe1, 0);
  head.writeUInt16BE(body.length + 2, 2);
  return Buffer.concat([jpeg.subarray(0, 2), head, body, jpeg.subarray(2)]);
}

/** Stands in the EXIF of a turned JPEG: nothing of it may be kept. */
export const secret = 'taken behind the house at the mill';

/** A PNG (ISO/IEC 15948) of one shade, 8 bits a pixel, with alpha where it is asked for; `spoil` breaks its pixels. */
export function png(
  { width, height }: { readonly width: number; readonly height: number },
  { alpha = false, spoil = false }: { readonly alpha?: boolean; readonly spoil?: boolean } = {},
): Buffer {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, alpha ? 4 : 0, 0, 0, 0], 8);
  const pixels = deflateSync(Buffer.alloc((width * (alpha ? 2 : 1) + 1) * height));
  if (spoil) pixels.fill(0xff, 2);
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', head),
    chunk('IDAT', pixels),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(type: string, data: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const frame = Buffer.alloc(4);
  frame.writeUInt32BE(data.length);
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(zlibCrc(named));
  return Buffer.concat([frame, named, sum]);
}
