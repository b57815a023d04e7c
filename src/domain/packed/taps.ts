import type { PackedRun } from './packed-run.ts';
import { piecesOf } from './shape.ts';

/** How many taps a run amounts to: the entries of one tap carry one stamp, and follow on from each other. */
export function tapsInRun({ base, shapes, columns, entries }: PackedRun): number {
  const { shape, wall, tick } = columns;
  // An event that could not be taken apart is a shape of its own.
  const stamps = shapes.map((text) => (piecesOf(text).holes.length === 0 ? stampIn(text) : undefined));
  const stampAt = (at: number) =>
    stamps[shape[at] ?? -1] ?? { wall: base + (wall[at] ?? 0), tick: tick[at] ?? 0 };
  let taps = 0;
  let before: Stamp | undefined;
  for (let at = 0; at < entries; at += 1) {
    const stamp = stampAt(at);
    if (stamp.wall !== before?.wall || stamp.tick !== before?.tick) taps += 1;
    before = stamp;
  }
  return taps;
}

interface Stamp {
  readonly wall?: number;
  readonly tick?: number;
}

function stampIn(event: string): Stamp {
  return (JSON.parse(event) as { stamp?: Stamp }).stamp ?? {};
}
