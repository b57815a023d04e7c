/** Pictures of screens in a few colours: sharp, and a fraction of the bytes. */

/**
 * @param {import('playwright-core').Page} page any page: it lends its canvas
 * @param {string} png in base64
 * @returns {Promise<Buffer>} WebP without loss, of 16 colours at most
 */
export async function inFewColours(page, png) {
  return Buffer.from(await page.evaluate(repaint, { png, most: 16 }), 'base64');
}

/**
 * Runs in the page. The commonest colours stand for those that are like them; what is rare but unlike, such as a
 * green mark, is among them.
 *
 * @param {{ png: string, most: number }} what
 */
async function repaint({ png, most }) {
  const bytes = Uint8Array.from(atob(png), (each) => each.charCodeAt(0));
  const picture = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
  const { width, height } = picture;
  const canvas = new OffscreenCanvas(width, height);
  const brush = canvas.getContext('2d');
  if (!brush) throw new Error('no canvas to paint on');
  brush.drawImage(picture, 0, 0);
  const image = brush.getImageData(0, 0, width, height);
  const pixels = new Uint32Array(image.data.buffer);

  /** How unlike two colours are: the square of their distance. @param {number} one @param {number} other */
  const apart = (one, other) =>
    [0, 8, 16].reduce((sum, at) => sum + (((one >> at) & 255) - ((other >> at) & 255)) ** 2, 0);
  /** @type {Map<number, number>} */
  const counts = new Map();
  for (const pixel of pixels) counts.set(pixel, (counts.get(pixel) ?? 0) + 1);
  /** @type {number[]} */
  const kept = [];
  for (const [colour] of [...counts].sort(([, a], [, b]) => b - a))
    if (kept.length < most && kept.every((each) => apart(each, colour) > 24 ** 2)) kept.push(colour);

  const nearest = new Map(
    [...counts.keys()].map((colour) => [
      colour,
      kept.reduce((best, each) => (apart(each, colour) < apart(best, colour) ? each : best)),
    ]),
  );
  pixels.forEach((pixel, at) => {
    pixels[at] = nearest.get(pixel) ?? pixel;
  });
  brush.putImageData(image, 0, 0);
  // Chromium writes WebP of the best quality without loss.
  const blob = await canvas.convertToBlob({ type: 'image/webp', quality: 1 });
  return btoa(
    [...new Uint8Array(await blob.arrayBuffer())].map((byte) => String.fromCharCode(byte)).join(''),
  );
}
