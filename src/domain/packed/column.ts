/** Whole numbers from 0 to 2^32 - 1, one an event, in as few bytes each as the largest of them needs. */
export type Column = Uint8Array<ArrayBuffer> | Uint16Array<ArrayBuffer> | Uint32Array<ArrayBuffer>;

/** A larger number goes to the extras of its run. */
export const largestInColumn = 0xffff_ffff;

/** Bytes of one number of a column; 0 where all numbers are 0 and nothing is kept. */
export type Width = 0 | 1 | 2 | 4;

export function widthFor(largest: number): Width {
  if (largest === 0) return 0;
  if (largest < 0x100) return 1;
  return largest < 0x1_0000 ? 2 : 4;
}

/**
 * A view on `length` numbers of a column at `offset` (bytes, a multiple of 4) of a buffer; nothing is copied. Throws a
 * RangeError when the buffer is too short.
 */
export function columnAt(
  buffer: ArrayBuffer,
  { offset, width, length }: { offset: number; width: Width; length: number },
): Column {
  switch (width) {
    case 0:
      return new Uint8Array(length);
    case 1:
      return new Uint8Array(buffer, offset, length);
    case 2:
      return new Uint16Array(buffer, offset, length);
    case 4:
      return new Uint32Array(buffer, offset, length);
  }
}

export function largestIn(column: Column): number {
  let largest = 0;
  for (let at = 0; at < column.length; at += 1) largest = Math.max(largest, column[at] ?? 0);
  return largest;
}
