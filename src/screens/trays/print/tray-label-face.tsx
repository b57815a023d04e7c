import { labelFrame, setTexts } from '../../../domain/label/label-layout.ts';
import type { SizeInMm } from '../../../domain/label/label-size.ts';
import { QrSymbol } from './label-sheet.tsx';
import { labelTexts, type TrayLabel } from './label-view.ts';
import { SetLines } from './set-lines.tsx';
import type { TextMeasures } from './text-measures.ts';

export interface TrayLabelFaceProps {
  readonly label: TrayLabel;
  readonly size: SizeInMm;
  readonly measures: TextMeasures;
}

/** The label of a tray: its code, its symbol, and in words what it bears. */
export const TrayLabelFace = ({ label, size, measures }: TrayLabelFaceProps) => {
  const frame = labelFrame(size, label.code.length);
  return (
    <>
      <text class="label-code" x={frame.code.x} y={frame.code.baseline} font-size={frame.code.size}>
        {label.code}
      </text>
      {label.symbol !== null && <QrSymbol text={label.symbol} {...frame.symbol} />}
      <SetLines x={frame.texts.x} lines={setTexts(labelTexts(label, measures), frame.texts)} heavy={2} />
    </>
  );
};
