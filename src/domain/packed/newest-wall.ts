import { largestIn } from './column.ts';
import type { PackedRun } from './packed-run.ts';
import { piecesOf } from './shape.ts';

/** The latest wall time of the stamps of a run (ms UTC), of which each event has one of its own and its first (`plainRuns`). */
export function newestWall({ shapes, columns, extras, base, entries }: PackedRun): number {
  const pieces = shapes.map((shape) => {
    const { holes, extras: count } = piecesOf(shape);
    const stamp = holes.find((hole) => 'kind' in hole && hole.kind === 'wall');
    return { count, inExtras: stamp?.from === 'extras' };
  });
  let newest = base + largestIn(columns.wall);
  let extra = 0;
  for (let at = 0; at < entries; at += 1) {
    const shape = pieces[columns.shape[at] ?? -1];
    if (shape?.inExtras) newest = Math.max(newest, extras[extra] ?? 0);
    extra += shape?.count ?? 0;
  }
  return newest;
}
