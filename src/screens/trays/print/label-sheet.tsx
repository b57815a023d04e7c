import { useMemo } from 'preact/hooks';
import { labelFrame, setTexts } from '../../../domain/label/label-layout.ts';
import { type PlacedLabel, pageInMm, type SizeInMm } from '../../../domain/label/label-size.ts';
import { qrSymbol, symbolPath } from '../../../domain/label/qr-symbol.ts';
import type { LabelSizeFact } from '../../../domain/set-up/facts.ts';
import { labelWords as words } from '../../../words/label-words.ts';
import { labelTexts, type TrayLabel } from './label-view.ts';
import type { TextMeasures } from './text-measures.ts';

/** Modules of the blank margin around a symbol (ISO/IEC 18004). */
const quiet = 4;

export interface LabelSheetProps {
  readonly size: LabelSizeFact;
  readonly labels: readonly PlacedLabel<TrayLabel>[];
  readonly measures: TextMeasures;
  /** Shows where each label ends; never printed. */
  readonly outlines?: boolean;
}

/** One page of labels at its true size: a unit of the drawing is a millimetre. */
export const LabelSheet = ({ size, labels, measures, outlines = false }: LabelSheetProps) => {
  const page = pageInMm(size);
  const label = { width: size.width / 100, height: size.height / 100 };
  return (
    <svg
      class="label-page"
      width={`${page.width}mm`}
      height={`${page.height}mm`}
      viewBox={`0 0 ${page.width} ${page.height}`}
      role="img"
      aria-label={labels.map(({ thing }) => words.label(thing.code)).join(', ')}
    >
      {labels.map(({ thing, x, y }) => (
        <svg
          key={thing.tray}
          class="label"
          aria-hidden="true"
          x={x}
          y={y}
          {...label}
          viewBox={`0 0 ${label.width} ${label.height}`}
        >
          {outlines && <rect class="label-outline" {...label} />}
          <LabelFace label={thing} size={label} measures={measures} />
        </svg>
      ))}
    </svg>
  );
};

const LabelFace = ({
  label,
  size,
  measures,
}: {
  label: TrayLabel;
  size: SizeInMm;
  measures: TextMeasures;
}) => {
  const frame = labelFrame(size, label.code.length);
  const lines = setTexts(labelTexts(label, measures), frame.texts);
  return (
    <>
      <text class="label-code" x={frame.code.x} y={frame.code.baseline} font-size={frame.code.size}>
        {label.code}
      </text>
      {label.symbol !== null && <QrSymbol text={label.symbol} {...frame.symbol} />}
      {lines.map(({ text, baseline, size: type, of }) => (
        <text
          key={`${of} ${baseline}`}
          class={of < 2 ? 'label-heavy' : 'label-plain'}
          x={frame.texts.x}
          y={baseline}
          font-size={type}
        >
          {text}
        </text>
      ))}
    </>
  );
};

/** A QR symbol with its blank margin in a square. */
export const QrSymbol = ({ text, x, y, side }: { text: string; x: number; y: number; side: number }) => {
  const { path, modules } = useMemo(() => {
    const symbol = qrSymbol(text);
    return { path: symbolPath(symbol), modules: symbol.length };
  }, [text]);
  const module = side / (modules + 2 * quiet);
  return (
    <path
      class="label-symbol"
      d={path}
      transform={`translate(${x + quiet * module} ${y + quiet * module}) scale(${module})`}
      shape-rendering="crispEdges"
    />
  );
};
