/** Hours of one person on one day, ms UTC, with the breaks of that day together. */
export interface ShiftToPlan {
  readonly from: number;
  readonly to: number;
  readonly breakMinutes: number;
}

/** Two stretches with all breaks between them: when they are is not known. */
export function hoursOf({ from, to, breakMinutes }: ShiftToPlan): readonly { from: number; to: number }[] {
  const off = breakMinutes * 60_000;
  const each = (to - from - off) / 2;
  if (!(each > 0)) return [];
  if (off === 0) return [{ from, to }];
  return [
    { from, to: from + each },
    { from: to - each, to },
  ];
}
