/** Reads pictures of labels with the app's own decoder, as the scan screen does. */
import { openSymbolReader, type SymbolReader } from '../../../src/app/symbol-reader.ts';
import { seededRandom } from '../../../src/domain/chance/seeded-random.ts';
import { shopSign } from '../../../src/domain/label/shop-sign.ts';
import { symbolText } from '../../../src/domain/label/symbol-text.ts';
import { codeLetters } from '../../../src/domain/tray/code-alphabet.ts';
import { trayCode } from '../../../src/domain/tray/tray-code.ts';
import {
  cleanLook,
  type LabelLook,
  labelPicture,
  type Picture,
  spoiltLook,
  symbolFace,
} from '../../support/label-frames.ts';

interface WasScanned {
  /** Labels whose text did not come out. */
  readonly missed: number;
  /** Labels that came out as another text, which must never be. */
  readonly wrong: number;
  /** Milliseconds for each picture, from the picture to its texts. */
  readonly took: readonly number[];
}

let reader: Promise<SymbolReader> | undefined;

/** Reads `frames` labels, spoilt, under thick dust or clean, or as many pictures of a bare bench. The same seed draws the same ones. */
export async function scan({
  frames,
  seed,
  look: how,
  size,
}: {
  frames: number;
  seed: number;
  look: 'clean' | 'spoilt' | 'dusty' | 'bare';
  size: Pick<LabelLook, 'width' | 'height'>;
}): Promise<WasScanned> {
  const random = seededRandom(seed);
  reader ??= openSymbolReader();
  const { read } = await reader;
  const took: number[] = [];
  let [missed, wrong] = [0, 0];
  for (let frame = 0; frame < frames; frame += 1) {
    const text = someLabel(random);
    const look = {
      ...(how === 'clean' ? cleanLook : spoiltLook(random, { specks: how === 'dusty' ? 30 : 10 })),
      ...size,
    };
    const picture = labelPicture(how === 'bare' ? null : symbolFace(text), look, random);
    const bitmap = await createImageBitmap(imageOf(picture, look));
    const began = performance.now();
    const texts = await read(bitmap);
    took.push(performance.now() - began);
    if (!texts.includes(text)) missed += 1;
    if (texts.some((each) => each !== text)) wrong += 1;
  }
  return { missed, wrong, took };
}

function someLabel(random: () => number): string {
  const letter = codeLetters.charAt(Math.floor(random() * codeLetters.length));
  const code = trayCode(letter, 1 + Math.floor(random() * 999));
  return symbolText({
    code,
    sign: shopSign([random, random, random, random].map((draw) => Math.floor(256 * draw()))),
  });
}

function imageOf(picture: Picture, { width, height }: LabelLook): ImageData {
  const image = new ImageData(width, height);
  for (const [at, light] of picture.entries()) image.data.set([light, light, light, 255], 4 * at);
  return image;
}
