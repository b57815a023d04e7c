import { grains } from '../flow/grain-patterns.ts';
import { boxPath, type Drawing, type DrawnPath, rimWidth, type Stroke } from './strokes.ts';

/** Two pixels to one of the drawing: sharp on paper and on close screens. */
const ratio = 2;

const canvasOf = (width: number, height: number): CanvasRenderingContext2D => {
  const canvas = document.createElement('canvas');
  canvas.width = Math.ceil(width * ratio);
  canvas.height = Math.ceil(height * ratio);
  const ink = canvas.getContext('2d');
  if (!ink) throw new Error('This browser draws on no canvas.');
  ink.scale(ratio, ratio);
  return ink;
};

const grainFill = (ink: CanvasRenderingContext2D, { pattern, tones }: NonNullable<DrawnPath['grain']>) => {
  const tile = canvasOf(24, 24);
  const { lines, spots, width } = grains[pattern];
  tile.fillStyle = tones.ground;
  tile.fillRect(0, 0, 24, 24);
  tile.strokeStyle = tones.line;
  tile.fillStyle = tones.line;
  tile.lineWidth = width;
  if (lines) tile.stroke(new Path2D(lines));
  if (spots) tile.fill(new Path2D(spots));
  const fill = ink.createPattern(tile.canvas, 'repeat');
  // The tile has as many pixels as the canvas; laid in the drawing's own measure it would be as much too large.
  fill?.setTransform(new DOMMatrix().scale(1 / ratio));
  return fill ?? tones.ground;
};

const put = (ink: CanvasRenderingContext2D, stroke: Stroke, family: string): void => {
  if (stroke.kind === 'text') {
    ink.font = `${stroke.weight} ${stroke.size}px ${family}`;
    ink.textAlign = stroke.at === 'middle' ? 'center' : stroke.at;
    ink.fillStyle = stroke.fill;
    if (stroke.rim) {
      ink.strokeStyle = stroke.rim;
      ink.lineWidth = rimWidth;
      ink.lineJoin = 'round';
      ink.setLineDash([]);
      ink.strokeText(stroke.text, stroke.x, stroke.y);
    }
    ink.fillText(stroke.text, stroke.x, stroke.y);
    return;
  }
  const path = new Path2D(stroke.d);
  ink.save();
  if (stroke.within) ink.clip(new Path2D(boxPath(stroke.within)));
  if (stroke.fill || stroke.grain) {
    ink.globalAlpha = stroke.cover ?? 1;
    ink.fillStyle = stroke.grain ? grainFill(ink, stroke.grain) : (stroke.fill ?? '');
    ink.fill(path);
    ink.globalAlpha = 1;
  }
  if (stroke.line) {
    ink.strokeStyle = stroke.line;
    ink.lineWidth = stroke.width ?? 1;
    ink.setLineDash([...(stroke.dash ?? [])]);
    ink.lineJoin = 'round';
    ink.stroke(path);
  }
  ink.restore();
};

/**
 * A drawing as a PNG, of the same strokes as its SVG: a picture of the SVG would know none of the page's faces. The
 * faces must be there by now. Rejects where there is no canvas, or none so large.
 */
export const pngOf = (drawing: Drawing): Promise<Blob> => {
  const ink = canvasOf(drawing.width, drawing.height);
  ink.fillStyle = drawing.paper;
  ink.fillRect(0, 0, drawing.width, drawing.height);
  for (const { left, top, strokes } of drawing.parts) {
    ink.save();
    ink.translate(left, top);
    for (const stroke of strokes) put(ink, stroke, drawing.family);
    ink.restore();
  }
  return new Promise((done, fail) =>
    ink.canvas.toBlob(
      (blob) => (blob ? done(blob) : fail(new Error('The canvas gave no picture.'))),
      'image/png',
    ),
  );
};
