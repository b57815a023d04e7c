import type { NumberProblem } from '../../../src/domain/command/whole-number.ts';
import { mostPieces } from '../../../src/domain/log/place.ts';

interface BadCount {
  readonly pieces: number;
  readonly problem: NumberProblem;
}

/** Counts of pieces that no command takes, with what is wrong with them. */
export const badCounts: readonly BadCount[] = [
  { pieces: 0, problem: { kind: 'too-small', least: 1 } },
  { pieces: -3, problem: { kind: 'too-small', least: 1 } },
  { pieces: Number.NEGATIVE_INFINITY, problem: { kind: 'too-small', least: 1 } },
  { pieces: 2.5, problem: { kind: 'not-whole' } },
  { pieces: 1e9, problem: { kind: 'too-large', most: mostPieces } },
  { pieces: Number.POSITIVE_INFINITY, problem: { kind: 'too-large', most: mostPieces } },
  { pieces: Number.NaN, problem: { kind: 'not-a-number' } },
];
