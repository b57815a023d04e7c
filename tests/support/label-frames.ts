/** Pictures of a label's symbol as a camera in a workshop sees it: turned, far off, blurred, in bad light, under dust. */
import type { Random } from '../../src/domain/chance/seeded-random.ts';
import { qrSymbol } from '../../src/domain/label/qr-symbol.ts';
import type { BoxInMm, PrintedPage, PrintedSymbol } from './printed-page.ts';

/** How a label lies before the camera. Lengths in pixels of the picture. */
export interface LabelLook {
  readonly width: number;
  readonly height: number;
  /** Side of one module. */
  readonly module: number;
  /** Degrees. */
  readonly turn: number;
  /** Standard deviation of the blur. */
  readonly blur: number;
  /** Most that a pixel is off, of 255. */
  readonly noise: number;
  /** How many flecks of dust lie on it, each up to a module and a half across. */
  readonly specks: number;
  /** Of paper to print: 1 is black on white. */
  readonly contrast: number;
}

export const cleanLook: LabelLook = {
  width: 640,
  height: 480,
  module: 8,
  turn: 0,
  blur: 0,
  noise: 0,
  specks: 0,
  contrast: 1,
};

/** Brightness of each pixel, row by row. */
export type Picture = Uint8ClampedArray<ArrayBuffer>;

/** Modules of white around a symbol (ISO/IEC 18004: four). */
const quietZone = 4;
const bench = 120;
const samples = [0.25, 0.75];

/** How light a label is, 0 (print) to 1 (paper), by the way from the middle of its symbol in modules; undefined beside it. */
export type LabelFace = (column: number, row: number) => number | undefined;

/** The app's symbol of a text on a scrap of paper no larger than it needs. */
export function symbolFace(text: string): LabelFace {
  const modules = qrSymbol(text);
  const middle = modules.length / 2;
  return (column, row) => {
    if (Math.max(Math.abs(column), Math.abs(row)) > middle + quietZone) return undefined;
    return modules[Math.floor(row + middle)]?.[Math.floor(column + middle)] ? 0 : 1;
  };
}

/** A label as it was printed, cut out of its page. */
export function printedFace(page: PrintedPage, label: BoxInMm, symbol: PrintedSymbol): LabelFace {
  const module = symbol.box.width / symbol.modules;
  const middle = { x: symbol.box.x + symbol.box.width / 2, y: symbol.box.y + symbol.box.height / 2 };
  return (column, row) => {
    const [x, y] = [middle.x + column * module, middle.y + row * module];
    const beside = x < label.x || x > label.x + label.width || y < label.y || y > label.y + label.height;
    return beside ? undefined : page.lightAt(x, y);
  };
}

/** A label; a bare bench when there is none. The same numbers of chance give the same picture. */
export function labelPicture(face: LabelFace | null, look: LabelLook, random: Random): Picture {
  const { width, height, noise } = look;
  const drawn = face === null ? new Float32Array(width * height).fill(bench) : drawnLabel(face, look);
  if (face !== null) strewDust(drawn, look, random);
  const seen = blurred(drawn, look);
  return Uint8ClampedArray.from(seen, (light) => light + noise * (2 * random() - 1));
}

function drawnLabel(face: LabelFace, { width, height, module, turn, contrast }: LabelLook): Float32Array {
  const [dark, light] = [127.5 * (1 - contrast), 127.5 * (1 + contrast)];
  const [sin, cos] = [Math.sin((turn * Math.PI) / 180), Math.cos((turn * Math.PI) / 180)];
  const lightAt = (x: number, y: number): number => {
    const [dx, dy] = [(x - width / 2) / module, (y - height / 2) / module];
    const [column, row] = [dx * cos + dy * sin, dy * cos - dx * sin];
    const seen = face(column, row);
    return seen === undefined ? bench : dark + seen * (light - dark);
  };
  return Float32Array.from({ length: width * height }, (_, at) => {
    const [x, y] = [at % width, Math.floor(at / width)];
    let sum = 0;
    for (const dx of samples) for (const dy of samples) sum += lightAt(x + dx, y + dy);
    return sum / samples.length ** 2;
  });
}

/** Wood dust is lighter than print and darker than paper; finish and ink are dark. */
const dusts = [200, 150, 40];

function strewDust(
  picture: Float32Array,
  { width, height, module, specks }: LabelLook,
  random: Random,
): void {
  for (let speck = 0; speck < specks; speck += 1) {
    const reach = 15 * module;
    const [x, y] = [width / 2 + reach * (2 * random() - 1), height / 2 + reach * (2 * random() - 1)];
    const radius = (0.25 + 0.5 * random()) * module;
    const light = dusts[Math.floor(random() * dusts.length)] ?? bench;
    for (let row = Math.ceil(y - radius); row <= y + radius; row += 1)
      for (let column = Math.ceil(x - radius); column <= x + radius; column += 1)
        if ((column - x) ** 2 + (row - y) ** 2 <= radius ** 2) picture[row * width + column] = light;
  }
}

/** A Gaussian blur, along rows and then along columns. */
function blurred(picture: Float32Array, { width, height, blur }: LabelLook): Float32Array {
  if (blur === 0) return picture;
  const reach = Math.ceil(3 * blur);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, at) =>
    Math.exp(-((at - reach) ** 2) / (2 * blur ** 2)),
  );
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  const along = (from: Float32Array, { step, length }: { step: number; length: number }) =>
    Float32Array.from(from, (_, at) => {
      const place = Math.floor(at / step) % length;
      let sum = 0;
      for (const [index, weight] of weights.entries()) {
        const near = Math.min(length - 1, Math.max(0, place + index - reach));
        sum += weight * (from[at + (near - place) * step] ?? 0);
      }
      return sum / whole;
    });
  return along(along(picture, { step: 1, length: width }), { step: width, length: height });
}

/** A film for Chromium's camera of tests: YUV4MPEG2 without colour. */
export function filmOf(
  pictures: readonly Picture[],
  { width, height }: Pick<LabelLook, 'width' | 'height'>,
): Uint8Array {
  const text = new TextEncoder();
  const grey = new Uint8Array((width * height) / 2).fill(128);
  const parts = [
    text.encode(`YUV4MPEG2 W${width} H${height} F15:1 Ip A1:1 C420jpeg\n`),
    ...pictures.flatMap((picture) => [text.encode('FRAME\n'), new Uint8Array(picture), grey]),
  ];
  const film = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    film.set(part, at);
    at += part.length;
  }
  return film;
}

/** A look by chance, within what a maker's hand, lamp and dust do; `specks` is the most flecks of dust that lie on it. */
export function spoiltLook(random: Random, { specks }: { specks: number }): LabelLook {
  const module = [4, 5, 7][Math.floor(random() * 3)] ?? 5;
  return {
    ...cleanLook,
    module,
    turn: 360 * random(),
    blur: 0.3 * module * random(),
    noise: 50 * random(),
    specks: Math.floor((specks + 1) * random()),
    contrast: 0.4 + 0.6 * random(),
  };
}
