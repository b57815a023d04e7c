/** Hours of people in columns, so that the end of some work is found by walking on from where the person stands. */
export interface WorkCalendar {
  /** Stretches of all people, one behind the other: those of a person lie from `first[person]` to `first[person + 1]`. */
  readonly first: Int32Array;
  readonly from: Float64Array;
  readonly to: Float64Array;
  /** ms that the person has worked when the stretch begins, and when the last one before a long absence ends. */
  readonly worked: Float64Array;
  readonly untilAway: Float64Array;
}

/** ms; whoever is away for longer leaves no half-done tray behind. */
export const longAbsence = 72 * 3_600_000;

/** From `now` on: what lies before is left out. */
export function workCalendar(
  people: readonly { readonly hours: readonly { readonly from: number; readonly to: number }[] }[],
  now: number,
): WorkCalendar {
  const ahead = people.map(({ hours }) =>
    hours.filter(({ to }) => to > now).map(({ from, to }) => ({ from: Math.max(from, now), to })),
  );
  const all = ahead.flat();
  const worked = ahead.flatMap((hours) => {
    let sum = 0;
    return hours.map(({ from, to }) => {
      sum += to - from;
      return sum - (to - from);
    });
  });
  const untilAway = new Float64Array(all.length);
  let end = 0;
  for (let at = all.length - 1; at >= 0; at -= 1) {
    const [here, next] = [all[at], all[at + 1]];
    if (!here) continue;
    const isOfOthers = worked[at + 1] === 0 || next === undefined;
    if (isOfOthers || next.from - here.to > longAbsence) end = (worked[at] ?? 0) + here.to - here.from;
    untilAway[at] = end;
  }
  const first = [0, ...ahead.map((_, at) => ahead.slice(0, at + 1).flat().length)];
  return {
    first: Int32Array.from(first),
    from: Float64Array.from(all, ({ from }) => from),
    to: Float64Array.from(all, ({ to }) => to),
    worked: Float64Array.from(worked),
    untilAway,
  };
}

/** Some work of one person, and a moment between its beginning and its end; it ended in the stretch `last`. */
interface Interrupted {
  readonly begun: number;
  readonly ended: number;
  readonly at: number;
  readonly last: number;
}

/** The part of the work that was done by then, by the hours in between. */
export function partDone(
  { from, to, worked }: WorkCalendar,
  { begun, ended, at, last }: Interrupted,
): number {
  const workedBy = (time: number) => {
    let stretch = last;
    while (stretch > 0 && (from[stretch] ?? 0) > time && (worked[stretch] ?? 0) > 0) stretch -= 1;
    const inIt = Math.min(Math.max(time, from[stretch] ?? 0), to[stretch] ?? 0);
    return (worked[stretch] ?? 0) + inIt - (from[stretch] ?? 0);
  };
  const all = workedBy(ended) - workedBy(begun);
  return all > 0 ? (workedBy(at) - workedBy(begun)) / all : 0;
}
