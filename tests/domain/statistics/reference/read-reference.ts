import { readFileSync } from 'node:fs';
import { expect } from 'vitest';

type ReferenceFile =
  | 'r-reference'
  | 'scipy-reference'
  | 'charts-reference'
  | 'robust-reference'
  | 'formulas-reference';

/**
 * The cases of one block of a file that a reference implementation wrote; the scripts beside this file say how.
 * `Row` is what the block's `columns` name, in that order.
 */
export function referenceCases<Row>(file: ReferenceFile, block: string): readonly Row[] {
  const text = readFileSync(new URL(`./${file}.json`, import.meta.url), 'utf8');
  const rows: readonly Row[] = JSON.parse(text)[block].cases;
  // A block that came out short would hold the functions to less than was asked for.
  expect(rows.length).toBeGreaterThanOrEqual(200);
  return rows;
}

/** What the found values are away from the expected ones at most, as a share of these: beside 0 the absolute distance. */
export function farthest(pairs: Iterable<readonly [found: number, expected: number]>): number {
  let most = 0;
  for (const [found, expected] of pairs) {
    const distance = Math.abs(found - expected);
    const relative = expected === 0 ? distance : distance / Math.abs(expected);
    // Written so that NaN counts as far.
    if (!(relative <= most)) most = relative;
    if (Number.isNaN(relative)) return Number.POSITIVE_INFINITY;
  }
  return most;
}

/** Fails unless within 1e-9 of the size of the value, or of `scale` where values cancel. */
export function near(found: number | undefined, value: number | undefined, scale = 0): void {
  const away = Math.abs((found ?? Number.NaN) - (value ?? Number.NaN));
  const room = 1e-9 * Math.max(Math.abs(value ?? 0), scale);
  if (!(away <= room)) expect({ found, away }).toEqual({ found: value, room });
}
