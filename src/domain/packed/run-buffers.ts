import type { PackedRun } from './packed-run.ts';

/** The memory in which the numbers of runs lie: it can be handed to another thread instead of being copied. */
export function buffersOf(runs: readonly PackedRun[]): readonly ArrayBuffer[] {
  const numbers = runs.flatMap(({ columns, extras }) => [...Object.values(columns), extras]);
  return [...new Set(numbers.map(({ buffer }) => buffer))];
}
