import { heatOf } from '../chart/heat-of.ts';
import { type DrawnBody, type PictureBody, type Tools, textSize } from './picture.ts';
import { boxPath, type Stroke } from './strokes.ts';

const small = 15;
const rowHeight = 62;
const headHeight = 40;

/** Shares where rows and columns meet: washed the deeper the larger they are, with a bar at the foot of each. */
export const tableBody = (
  { table }: Extract<PictureBody, { kind: 'table' }>,
  { width: least, looks, widthOf }: Tools,
): DrawnBody => {
  const { corner, rows, cols, cell, most } = table;
  const colour = looks[table.tone ?? 'flaw'];
  const widest = (texts: readonly string[], size: number) =>
    Math.max(0, ...texts.map((text) => widthOf(text, size, 600)));
  const side = Math.ceil(widest([corner, ...rows.map(({ label }) => label)], textSize)) + 16;
  const cells = rows.flatMap((row, down) =>
    cols.flatMap((col, across) => {
      const one = cell(row.id, col.id);
      return one ? [{ ...one, down, across }] : [];
    }),
  );
  const needed = Math.max(
    widest(
      cols.map(({ label }) => label),
      small,
    ),
    widest(
      cells.map(({ shown }) => shown),
      textSize,
    ),
    widest(
      cells.map(({ detail }) => detail ?? ''),
      small,
    ),
  );
  const column = Math.max(needed + 20, cols.length > 0 ? (least - side) / cols.length : 0);
  const width = side + column * cols.length;
  const text = { kind: 'text', fill: looks.ink } as const;
  const height = headHeight + rowHeight * rows.length;
  const strokes: Stroke[] = [
    { ...text, x: 0, y: 26, text: corner, size: textSize, weight: 700, at: 'start' },
    ...cols.map(
      ({ label }, across): Stroke => ({
        ...{ ...text, x: side + column * (across + 0.5), y: 26, text: label },
        ...{ size: small, weight: 700, at: 'middle' },
      }),
    ),
    ...rows.flatMap(({ label }, down): Stroke[] => {
      const top = headHeight + down * rowHeight;
      return [
        { kind: 'path', d: `M0 ${top}H${width}`, line: looks.ink, width: down === 0 ? 3 : 1 },
        { ...text, x: 0, y: top + 36, text: label, size: textSize, weight: 600, at: 'start' },
      ];
    }),
  ];
  for (const { share, shown, detail, down, across } of cells) {
    const left = side + column * across + 3;
    const top = headHeight + down * rowHeight + 3;
    const inner = { left, top, width: column - 6, height: rowHeight - 6 };
    const length = most > 0 ? inner.width * Math.min(1, Math.max(0, share / most)) : 0;
    const middle = left + inner.width / 2;
    strokes.push(
      { kind: 'path', d: boxPath(inner), fill: colour, cover: 0.06 * heatOf(share, most) },
      { kind: 'path', d: boxPath({ ...inner, top: top + 48, width: length, height: 8 }), fill: colour },
      {
        ...{ ...text, x: middle, y: top + (detail ? 20 : 30), text: shown },
        ...{ size: textSize, weight: 700, at: 'middle' },
      },
    );
    if (detail)
      strokes.push({ ...text, x: middle, y: top + 40, text: detail, size: small, weight: 400, at: 'middle' });
  }
  return { width, height, strokes, said: cells.map(({ name }) => name) };
};
