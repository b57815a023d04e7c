import type { FlowPart, FlowStage } from '../flow/flow-strip.tsx';
import { type DrawnBody, type PictureBody, type Tools, textSize } from './picture.ts';
import { boxPath, type Stroke } from './strokes.ts';

const partHeight = 30;
const rowHeight = 64;
const gap = 6;

/** What stands at each stage of a route: grained blocks side by side, as long as they are many, with their numbers below. */
export const flowBody = (
  { stages, nothing }: Extract<PictureBody, { kind: 'flow' }>,
  { width, looks, widthOf }: Tools,
): DrawnBody => {
  const nameOf = ({ name, note }: FlowStage) => (note ? `${name}, ${note}` : name);
  const side = 84 + Math.ceil(Math.max(0, ...stages.map((stage) => widthOf(nameOf(stage), textSize, 600))));
  const wordsOf = ({ count, label }: FlowPart) => `${count} ${label}`;
  const least = (part: FlowPart) => widthOf(wordsOf(part), textSize, 600) + 8;
  const room = width - side;
  const lengths = (perPiece: number) => (part: FlowPart) =>
    Math.max(least(part), Math.max(0, part.count) * perPiece);
  const rowLength = (stage: FlowStage, perPiece: number) =>
    stage.parts.map(lengths(perPiece)).reduce((sum, length) => sum + length + gap, 0);
  // As long as the fullest stage allows; a short block is as long as its words, so that lengths are told by numbers there.
  const perPiece =
    Array.from({ length: 60 }, (_, nth) => 30 - nth / 2).find((length) =>
      stages.every((stage) => rowLength(stage, length) <= room),
    ) ?? 0;
  const wide = side + Math.max(room, ...stages.map((stage) => rowLength(stage, perPiece)));
  const text = { kind: 'text', fill: looks.ink, size: textSize, at: 'start' } as const;
  const strokes = stages.flatMap((stage, nth): Stroke[] => {
    const top = nth * rowHeight;
    let left = side;
    const blocks = stage.parts.flatMap((part): Stroke[] => {
      const length = lengths(perPiece)(part);
      const block = { left, top: top + 8, width: length, height: partHeight };
      const drawn: Stroke[] = [
        { kind: 'path', d: boxPath(block), grain: part, line: looks.ink, width: 2 },
        { ...text, x: left, y: top + 56, text: wordsOf(part), weight: 600 },
      ];
      left += length + gap;
      return drawn;
    });
    return [
      { kind: 'path', d: `M0 ${top}H${wide}`, line: looks.ink, width: nth === 0 ? 3 : 1 },
      { ...text, x: 52, y: top + 38, text: String(stage.total), size: 26, weight: 700, at: 'end' },
      { ...text, x: 68, y: top + 36, text: nameOf(stage), weight: 600 },
      ...(blocks.length > 0
        ? blocks
        : [{ ...text, x: side, y: top + 36, text: nothing, weight: 400 } as const]),
    ];
  });
  return {
    ...{ width: wide, height: rowHeight * stages.length, strokes },
    said: stages.map((stage) => `${nameOf(stage)}: ${stage.parts.map(wordsOf).join(', ') || nothing}`),
  };
};
