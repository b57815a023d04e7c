import { barsBody } from './bars-body.ts';
import { chartBody } from './chart-body.ts';
import { flowBody } from './flow-body.ts';
import { type DrawnBody, type Picture, type PictureBody, type Tools, textSize } from './picture.ts';
import { type Drawing, inLines, type Stroke } from './strokes.ts';
import { tableBody } from './table-body.ts';

/** Width of what is drawn, and the blank around it, px. */
const usualWidth = 960;
const margin = 32;
const titleSize = 28;

const bodyOf = (body: PictureBody, tools: Tools): DrawnBody => {
  switch (body.kind) {
    case 'chart':
      return chartBody(body.chart, tools);
    case 'bars':
      return barsBody(body, tools);
    case 'table':
      return tableBody(body, tools);
    case 'flow':
      return flowBody(body, tools);
  }
};

/** A picture with its title above and whose it is below. */
export const drawingOf = (picture: Picture, { looks, widthOf }: Omit<Tools, 'width'>): Drawing => {
  const body = bodyOf(picture.body, { width: usualWidth, looks, widthOf });
  const linesOf = (text: string, size: number, weight: 400 | 700) =>
    inLines(text, { width: body.width, widthOf: (words) => widthOf(words, size, weight) });
  const words: Stroke[] = [];
  let y = margin;
  const write = (text: string, size: number, weight: 400 | 700) => {
    for (const line of linesOf(text, size, weight)) {
      y += 1.3 * size;
      words.push({
        ...{ kind: 'text', x: margin, y: y - 0.3 * size, text: line },
        ...{ size, weight, fill: looks.ink, at: 'start' },
      });
    }
  };
  write(picture.title, titleSize, 700);
  if (picture.lead) write(picture.lead, textSize, 400);
  y += textSize;
  const top = y;
  y += body.height + textSize;
  write(picture.foot, textSize - 2, 400);
  return {
    title: picture.title,
    description: [picture.lead, picture.foot, ...body.said].filter(Boolean).join('\n'),
    width: Math.ceil(body.width + 2 * margin),
    height: Math.ceil(y + margin),
    paper: looks.paper,
    family: looks.family,
    parts: [
      { left: 0, top: 0, strokes: words },
      { left: margin, top, strokes: body.strokes },
    ],
  };
};
