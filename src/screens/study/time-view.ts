import type { ShopDay, SpeciesId, StageId } from '../../domain/log/ids.ts';
import type { StageTime } from '../../domain/study/piece-times.ts';
import type { WorkedTime } from '../../domain/study/worked-time.ts';

/** A line of the table of piece times: a stage's work, or the loading of its cure. */
interface TimeLine {
  readonly id: string;
  readonly stage: StageId;
  readonly of: StageTime['of'];
}

export interface TimeGrid {
  readonly lines: readonly TimeLine[];
  readonly woods: readonly SpeciesId[];
  readonly timeAt: (line: string, species: string) => StageTime | undefined;
  /** The longest median of any field, minutes. */
  readonly most: number;
}

/** Piece times as a table, lines in the order of the route; a cure is loaded before it is worked at. */
export function timeGrid(times: readonly StageTime[], route: readonly StageId[]): TimeGrid {
  const byKey = new Map(times.map((each) => [`${each.stage}|${each.of}|${each.species}`, each]));
  const lines = new Map(
    times.map(({ stage, of }) => [`${stage}|${of}`, { id: `${stage}|${of}`, stage, of }]),
  );
  const place = ({ stage }: TimeLine) => (route.includes(stage) ? route.indexOf(stage) : route.length);
  return {
    lines: [...lines.values()].sort(
      (a, b) =>
        place(a) - place(b) || (a.stage < b.stage ? -1 : a.stage > b.stage ? 1 : 0) || (a.of < b.of ? -1 : 1),
    ),
    woods: [...new Set(times.map(({ species }) => species))].sort(),
    timeAt: (line, species) => byKey.get(`${line}|${species}`),
    most: times.reduce((most, { time }) => Math.max(most, time.median), 0),
  };
}

export interface HoursGrid {
  /** Days, or Mondays of weeks, oldest first. */
  readonly days: readonly ShopDay[];
  /** Minutes of all stages on each of the days. */
  readonly totals: readonly number[];
  readonly stages: readonly StageId[];
  readonly minutesAt: (stage: string, day: string) => number;
  /** The most minutes of one stage on one day. */
  readonly most: number;
}

/** The newest days with work on them, at most so many; stages in the order of the route. */
export function hoursGrid(
  worked: readonly WorkedTime[],
  { route, most }: { readonly route: readonly StageId[]; readonly most: number },
): HoursGrid {
  const days = [...new Set(worked.map(({ day }) => day))].sort().slice(-most);
  const shown = worked.filter(({ day }) => days.includes(day));
  const byKey = new Map(shown.map(({ stage, day, minutes }) => [`${stage}|${day}`, minutes]));
  const stages = new Set(shown.map(({ stage }) => stage));
  return {
    days,
    totals: days.map((day) =>
      shown.filter((each) => each.day === day).reduce((sum, { minutes }) => sum + minutes, 0),
    ),
    stages: [...new Set([...route.filter((stage) => stages.has(stage)), ...stages])],
    minutesAt: (stage, day) => byKey.get(`${stage}|${day}`) ?? 0,
    most: shown.reduce((top, { minutes }) => Math.max(top, minutes), 0),
  };
}
