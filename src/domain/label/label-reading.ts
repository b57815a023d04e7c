import type { LabelSizeFact } from '../set-up/facts.ts';
import {
  capitalsOf,
  labelFrame,
  leastModule,
  modulesWithMargin,
  readableAtTwoMetres,
} from './label-layout.ts';

/** How well a label of some size can be read; lengths in mm. */
export interface LabelReading {
  /** Height of the code's capitals. */
  readonly capitals: number;
  /** Whether the code can be read at 2 m. */
  readonly fromAfar: boolean;
  /** Side of a module of the symbol. */
  readonly module: number;
  /** Whether any camera tells the modules apart. */
  readonly scannable: boolean;
}

/** How a code of so many signs and its symbol come out on a size of label. */
export function labelReading(
  { width, height }: Pick<LabelSizeFact, 'width' | 'height'>,
  codeSigns: number,
): LabelReading {
  const frame = labelFrame({ width: width / 100, height: height / 100 }, codeSigns);
  const capitals = capitalsOf(frame);
  const module = frame.symbol.side / modulesWithMargin;
  return {
    capitals,
    fromAfar: capitals >= readableAtTwoMetres - rounding,
    module,
    scannable: module >= leastModule - rounding,
  };
}

/** Binary fractions may miss a limit that they meet, in mm. */
const rounding = 1e-9;

/** A tablet's first 999 trays have codes of so many signs. */
const usualSigns = 5;

/** The signs of the longest code that a shop's labels have to bear. */
export function signsToBear(codes: Iterable<{ readonly code: string }>): number {
  let most = usualSigns;
  for (const { code } of codes) most = Math.max(most, code.length);
  return most;
}
