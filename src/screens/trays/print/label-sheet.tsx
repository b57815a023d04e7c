import type { ComponentChildren } from 'preact';
import { useMemo } from 'preact/hooks';
import { type PlacedLabel, pageInMm, type SizeInMm } from '../../../domain/label/label-size.ts';
import { qrSymbol, symbolPath } from '../../../domain/label/qr-symbol.ts';
import type { LabelSizeFact } from '../../../domain/set-up/facts.ts';

/** Modules of the blank margin around a symbol (ISO/IEC 18004). */
const quiet = 4;

/** Anything that a label can be printed of. */
export interface LabelThing {
  /** Another for each label. */
  readonly key: string;
  /** For those who cannot see the label. */
  readonly name: string;
}

/** What stands on a label; a unit of the drawing is a millimetre. */
export type LabelFace<Thing> = (thing: Thing, size: SizeInMm) => ComponentChildren;

export interface LabelSheetProps<Thing extends LabelThing> {
  readonly size: LabelSizeFact;
  readonly labels: readonly PlacedLabel<Thing>[];
  readonly face: LabelFace<Thing>;
  /** Shows where each label ends; never printed. */
  readonly outlines?: boolean;
}

export const sizeOf = ({ width, height }: LabelSizeFact): SizeInMm => ({
  width: width / 100,
  height: height / 100,
});

/** One page of labels at its true size. */
export const LabelSheet = <Thing extends LabelThing>(props: LabelSheetProps<Thing>) => {
  const { size, labels, face, outlines = false } = props;
  const page = pageInMm(size);
  const label = sizeOf(size);
  return (
    <svg
      class="label-page"
      width={`${page.width}mm`}
      height={`${page.height}mm`}
      viewBox={`0 0 ${page.width} ${page.height}`}
      role="img"
      aria-label={[...new Set(labels.map(({ thing }) => thing.name))].join(', ')}
    >
      {labels.map(({ thing, x, y }) => (
        <svg
          key={thing.key}
          class="label"
          aria-hidden="true"
          x={x}
          y={y}
          {...label}
          viewBox={`0 0 ${label.width} ${label.height}`}
        >
          {outlines && <rect class="label-outline" {...label} />}
          {face(thing, label)}
        </svg>
      ))}
    </svg>
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
