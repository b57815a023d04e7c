/** Makes a picture as a file of its own: loaded on demand. */
import { looksOf } from '../chart/chart-looks.ts';
import type { ChartLooks } from '../chart/chart-props.ts';
import { drawingOf } from './drawing.ts';
import { pngOf } from './paint.ts';
import type { Picture } from './picture.ts';
import type { Measure } from './strokes.ts';
import { svgOf } from './svg.ts';

export type PictureKind = 'svg' | 'png';

/** The colours of the light theme, whatever the screen shows now: a picture goes where it is light. */
const lightLooks = (): ChartLooks => {
  const place = document.createElement('div');
  place.dataset.theme = 'light';
  document.body.append(place);
  try {
    return looksOf(place, false);
  } finally {
    place.remove();
  }
};

/** How wide texts are in the faces of the page. */
const measureIn = (family: string): Measure => {
  const ink = document.createElement('canvas').getContext('2d');
  if (!ink) throw new Error('This browser draws on no canvas.');
  return (text, size, weight) => {
    ink.font = `${weight} ${size}px ${family}`;
    return ink.measureText(text).width;
  };
};

/** A picture as a file of this name. Rejects where the browser has no canvas, or the picture is too large for it. */
export const pictureFile = async (picture: Picture, kind: PictureKind, name: string): Promise<File> => {
  const looks = lightLooks();
  // What is written before a face has come is written in another. A face that cannot be had has its stand-in.
  await Promise.allSettled([400, 700].map((weight) => document.fonts.load(`${weight} 18px ${looks.family}`)));
  const drawing = drawingOf(picture, { looks, widthOf: measureIn(looks.family) });
  return kind === 'svg'
    ? new File([svgOf(drawing)], name, { type: 'image/svg+xml' })
    : new File([await pngOf(drawing)], name, { type: 'image/png' });
};
