import { boxFrame } from '../../../domain/label/box-layout.ts';
import { setTexts } from '../../../domain/label/label-layout.ts';
import type { SizeInMm } from '../../../domain/label/label-size.ts';
import { type BoxSheet, boxLabelTexts } from './box-view.ts';
import { SetLines } from './set-lines.tsx';
import type { TextMeasures } from './text-measures.ts';

export interface BoxFaceProps {
  readonly sheet: BoxSheet;
  readonly size: SizeInMm;
  readonly measures: TextMeasures;
}

/** The sheet for the box: what the piece is, how to keep it, what to beware of; at the foot where it came from. */
export const BoxFace = ({ sheet, size, measures }: BoxFaceProps) => {
  const { texts, foot } = boxFrame(size);
  const from = { text: sheet.foot, largest: foot.type, least: foot.type, measure: measures.plain };
  return (
    <>
      <SetLines x={texts.x} lines={setTexts(boxLabelTexts(sheet, measures), texts)} heavy={1} />
      <SetLines x={foot.x} lines={setTexts([from], foot)} heavy={0} />
    </>
  );
};
