import { encode } from 'uqr';

/**
 * A QR symbol (ISO/IEC 18004) of a text, without its blank margin: rows of modules, true is dark. Level Q mends a quarter of
 * it, and the text of a label still fits the smallest version, of 21 × 21 modules; level L has larger modules for long texts on a
 * screen, where there is no dust.
 */
export function qrSymbol(text: string, level: 'L' | 'Q' = 'Q'): readonly (readonly boolean[])[] {
  return encode(text, { ecc: level, border: 0 }).data;
}

/** The dark modules as the path of an SVG, a module being one unit and the corner of the symbol (0, 0). */
export function symbolPath(modules: readonly (readonly boolean[])[]): string {
  return modules.map(rowPath).join('');
}

function rowPath(row: readonly boolean[], y: number): string {
  let path = '';
  for (let x = 0; x < row.length; x += 1) {
    if (!row[x]) continue;
    const start = x;
    while (row[x + 1]) x += 1;
    const length = x + 1 - start;
    path += `M${start} ${y}h${length}v1h-${length}z`;
  }
  return path;
}
