import type { ComparedCell, ComparedShare } from '../../domain/study/comparison.ts';

export const measures = ['clean', 'kept', 'firsts'] as const;
export type Measure = (typeof measures)[number];

/** What a cell tells by one measure. */
export interface ComparedRow extends Pick<ComparedCell, 'stage' | 'species'> {
  readonly key: string;
  readonly share: ComparedShare;
  /** The interval of the difference leaves nothing out of account but chance. */
  readonly standsOut: boolean;
}

export interface ComparedRows {
  readonly overall: ComparedRow | undefined;
  readonly stages: readonly ComparedRow[];
  readonly woods: readonly ComparedRow[];
  readonly both: readonly ComparedRow[];
}

/** The cells by one measure, those without a piece left out, the surest differences first. */
export function comparedRows(cells: readonly ComparedCell[], measure: Measure): ComparedRows {
  const rows = cells
    .map((cell) => rowOf(cell, measure))
    .filter(({ share }) => share.a.n + share.b.n > 0)
    .toSorted((a, b) => a.share.of.p - b.share.of.p);
  return {
    overall: rows.find(({ stage, species }) => stage === null && species === null),
    stages: rows.filter(({ stage, species }) => stage !== null && species === null),
    woods: rows.filter(({ stage, species }) => stage === null && species !== null),
    both: rows.filter(({ stage, species }) => stage !== null && species !== null),
  };
}

function rowOf({ stage, species, ...cell }: ComparedCell, measure: Measure): ComparedRow {
  const share = cell[measure];
  const [low, high] = share.of.interval;
  return {
    ...{ stage, species, share, key: `${stage ?? ''}|${species ?? ''}` },
    standsOut: share.of.difference !== undefined && (low > 0 || high < 0),
  };
}

/** Neither lot has lost a piece there: nothing differs, and no bar would show more than how few pieces there were. */
export function isFlawless({ share: { a, b } }: ComparedRow): boolean {
  return a.k === a.n && b.k === b.n;
}

/**
 * What half a bar stands for, so that bars above each other have one scale: the largest difference that was seen, and half
 * as much again for its bracket; never so little that nothing looks like much.
 */
export function widest(rows: readonly ComparedRow[]): number {
  const largest = rows.reduce((most, { share }) => Math.max(most, Math.abs(share.of.difference ?? 0)), 0);
  return Math.min(1, Math.max(0.1, 1.5 * largest));
}
