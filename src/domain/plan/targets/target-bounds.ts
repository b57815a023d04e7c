import type { Bounds } from '../../command/whole-number.ts';

/** Good ones wanted of a variant, as the batch can hold them. */
export const goodBounds: Bounds = { least: 0, most: 99_999 };
/** How sure one wants to be of them, whole per cent. */
export const chanceBounds: Bounds = { least: 50, most: 99 };
