import { type Box, padOf } from './label-layout.ts';
import type { SizeInMm } from './label-size.ts';

/** The line with tray and batch is set in type of so many mm, on small labels in the smaller one. */
const footType = { usual: 3, small: 2.4 } as const;
const small = 30;
const lineHeight = 1.2;

/** Where things stand on a sheet for the box; all lengths in mm from the corner of the label. */
export interface BoxFrame {
  readonly texts: Box;
  /** One line: which tray and batch the piece is of. */
  readonly foot: Box & { readonly type: number };
}

/** Divides a label among the texts and the line at its foot. */
export function boxFrame(label: SizeInMm): BoxFrame {
  const pad = padOf(label);
  const type = label.height < small ? footType.small : footType.usual;
  const foot = type * lineHeight;
  const [x, width] = [pad, label.width - 2 * pad];
  return {
    texts: { x, y: pad, width, height: label.height - 2 * pad - foot },
    foot: { x, y: label.height - pad - foot, width, height: foot, type },
  };
}
