import { type DrawnBody, type PictureBar, type PictureBody, type Tools, textSize } from './picture.ts';
import { boxPath, inLines, type Stroke } from './strokes.ts';

const barHeight = 22;
const lineHeight = 1.35 * textSize;

/** Where a value ends along the bars, px. */
const lengthOf = (value: number, most: number, width: number): number =>
  most > 0 ? width * Math.min(1, Math.max(0, value / most)) : 0;

const barStrokes = (
  bar: PictureBar,
  top: number,
  { most, ofWhole }: { most: number; ofWhole: boolean },
  { width, looks, widthOf }: Tools,
): { strokes: Stroke[]; height: number } => {
  const text = { kind: 'text', size: textSize, fill: looks.ink } as const;
  const shownWidth = widthOf(bar.shown, textSize, 700);
  const name = bar.detail ? `${bar.label} ${bar.detail}` : bar.label;
  const lines = inLines(name, {
    width: width - shownWidth - 24,
    widthOf: (words) => widthOf(words, textSize, 600),
  });
  const named = Math.max(1, lines.length) * lineHeight;
  const y = top + named + 4;
  const strokes: Stroke[] = [
    ...lines.map(
      (line, nth): Stroke => ({
        ...{ ...text, x: 0, y: top + (nth + 0.8) * lineHeight, text: line, weight: 600, at: 'start' },
      }),
    ),
    { ...text, x: width, y: top + 0.8 * lineHeight, text: bar.shown, weight: 700, at: 'end' },
  ];
  if (ofWhole)
    strokes.push({
      ...{ kind: 'path', d: boxPath({ left: 1.5, top: y + 1.5, width: width - 3, height: barHeight - 3 }) },
      ...{ line: looks.rule, width: 3 },
    });
  strokes.push({
    kind: 'path',
    d: boxPath({ left: 0, top: y, width: lengthOf(bar.value, most, width), height: barHeight }),
    fill: looks[bar.tone ?? 'plain'],
  });
  // Where nothing ends and something begins.
  strokes.push({ kind: 'path', d: `M1.5 ${y - 4}V${y + barHeight + 4}`, line: looks.ink, width: 3 });
  let foot = y + barHeight;
  if (bar.interval) {
    const [low, high] = bar.interval.map((end) => lengthOf(end, most, width - 4) + 2);
    const at = foot + 10;
    strokes.push({
      ...{ kind: 'path', d: `M${low} ${at - 6}v12M${low} ${at}H${high}M${high} ${at - 6}v12` },
      ...{ line: looks.copper, width: 4 },
    });
    foot += 18;
  }
  if (bar.running) {
    const at = foot + 14;
    const end = lengthOf(bar.running.share, 1, width - 20) + 10;
    strokes.push(
      { kind: 'path', d: `M0 ${at}H${width}`, line: looks.ink, width: 2, dash: [3, 6] },
      { kind: 'path', d: `M0 ${at}H${end}`, line: looks.copper, width: 4 },
      {
        ...{ kind: 'path', d: `M${end - 8} ${at}a8 8 0 1 0 16 0a8 8 0 1 0 -16 0Z`, fill: looks.paper },
        ...{ line: looks.copper, width: 4 },
      },
      { ...text, x: width, y: at + 1.5 * textSize, text: bar.running.shown, weight: 400, at: 'end' },
    );
    foot = at + 1.8 * textSize;
  }
  return { strokes, height: foot - top + textSize };
};

/** Bars with their words, one under the other. */
export const barsBody = (body: Extract<PictureBody, { kind: 'bars' }>, tools: Tools): DrawnBody => {
  const strokes: Stroke[] = [];
  let height = 0;
  for (const bar of body.bars) {
    const drawn = barStrokes(bar, height, body, tools);
    strokes.push(...drawn.strokes);
    height += drawn.height;
  }
  const said = body.bars.map(({ label, detail, shown, running }) =>
    [label, detail, shown, running?.shown].filter(Boolean).join(', '),
  );
  return { width: tools.width, height, strokes, said };
};
