/** A stretch of time in which somebody works; ms UTC. */
export interface Shift {
  readonly from: number;
  readonly to: number;
}

/** What can be begun from a moment on: when, and until when somebody is there. */
export type Opening = Shift;

/** The shift at some moment, cut to what is left of it, and those after it. Shifts stand in order and apart. */
export function* openings(shifts: readonly Shift[], from: number): Generator<Opening> {
  for (const shift of shifts) {
    if (shift.to > from) yield { from: Math.max(shift.from, from), to: shift.to };
  }
}

/** When work of so many ms is done that is begun at `from` and rests between shifts; undefined after the last shift. */
export function doneBy(
  shifts: readonly Shift[],
  { from, work }: { readonly from: number; readonly work: number },
): number | undefined {
  let left = work;
  for (const opening of openings(shifts, from)) {
    if (opening.from + left <= opening.to) return opening.from + left;
    left -= opening.to - opening.from;
  }
  return undefined;
}

/** Shifts without a stretch that is spoken for. */
export function without(shifts: readonly Shift[], { from, to }: Shift): readonly Shift[] {
  return shifts.flatMap((shift) =>
    [
      { from: shift.from, to: Math.min(shift.to, from) },
      { from: Math.max(shift.from, to), to: shift.to },
    ].filter((rest) => rest.from < rest.to),
  );
}
