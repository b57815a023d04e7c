import type { LabelSizeFact } from '../set-up/facts.ts';

/** Which way labels do not fit: across the sheet or down it. */
export type LabelSizeProblem =
  | { readonly kind: 'labels-off-sheet'; readonly way: 'across' | 'down' }
  | { readonly kind: 'labels-overlap'; readonly way: 'across' | 'down' };

/** What is wrong with how labels lie on their sheet, or null. */
export function problemOfLabelSize({
  width,
  height,
  sheet,
}: Pick<LabelSizeFact, 'width' | 'height' | 'sheet'>): LabelSizeProblem | null {
  if (!sheet) return null;
  const across = { size: width, start: sheet.left, step: sheet.acrossStep, count: sheet.columns };
  const down = { size: height, start: sheet.top, step: sheet.downStep, count: sheet.rows };
  return (
    problemOfRow({ ...across, length: sheet.width, way: 'across' }) ??
    problemOfRow({ ...down, length: sheet.height, way: 'down' })
  );
}

interface LabelRow {
  readonly size: number;
  readonly start: number;
  readonly step: number;
  readonly count: number;
  readonly length: number;
  readonly way: 'across' | 'down';
}

function problemOfRow({ size, start, step, count, length, way }: LabelRow): LabelSizeProblem | null {
  if (count > 1 && step < size) return { kind: 'labels-overlap', way };
  return start + (count - 1) * step + size > length ? { kind: 'labels-off-sheet', way } : null;
}

/** Labels on one page. */
export function labelsPerPage({ sheet }: Pick<LabelSizeFact, 'sheet'>): number {
  return sheet ? sheet.columns * sheet.rows : 1;
}

/** A size of page or label in mm. */
export interface SizeInMm {
  readonly width: number;
  readonly height: number;
}

export function pageInMm({
  width,
  height,
  sheet,
}: Pick<LabelSizeFact, 'width' | 'height' | 'sheet'>): SizeInMm {
  const page = sheet ?? { width, height };
  return { width: page.width / 100, height: page.height / 100 };
}

/** Where one label lies on its page; `x` and `y` in mm from the page's corner. */
export interface PlacedLabel<Thing> {
  readonly thing: Thing;
  readonly x: number;
  readonly y: number;
}

/**
 * Lays things on pages, one on each label, along the rows. `firstFree` is the place of the first label that is still on the
 * first sheet, counted from 0: a begun sheet is not wasted. Beyond the last place it begins a new sheet.
 */
export function pagesOfLabels<Thing>(
  things: readonly Thing[],
  { size, firstFree }: { size: Pick<LabelSizeFact, 'sheet'>; firstFree: number },
): readonly (readonly PlacedLabel<Thing>[])[] {
  const perPage = labelsPerPage(size);
  const pages: PlacedLabel<Thing>[][] = [];
  const skipped = firstFree >= 0 && firstFree < perPage ? firstFree : 0;
  for (const [index, thing] of things.entries()) {
    const place = skipped + index;
    const page = Math.floor(place / perPage);
    pages[page] = [...(pages[page] ?? []), { thing, ...placeOnPage(size, place % perPage) }];
  }
  return pages;
}

/** The corner of a label by its place on the page (from 0, along the rows), in mm. */
export function placeOnPage(
  { sheet }: Pick<LabelSizeFact, 'sheet'>,
  place: number,
): { x: number; y: number } {
  if (!sheet) return { x: 0, y: 0 };
  const column = place % sheet.columns;
  const row = Math.floor(place / sheet.columns);
  return {
    x: (sheet.left + column * sheet.acrossStep) / 100,
    y: (sheet.top + row * sheet.downStep) / 100,
  };
}
