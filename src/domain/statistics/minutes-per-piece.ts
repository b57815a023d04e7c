import { demandLevel, type Interval } from './counts.ts';
import { studentQuantile } from './special-functions.ts';
import { type Tap, tapGroups, type Worked } from './tap-groups.ts';
import { isWork, type WorkTime, workTime } from './work-time.ts';

export interface PieceTime {
  /** Minutes of work that a piece takes on average: what cost and forecast reckon with. */
  readonly mean: number;
  /** Minutes within which half of the pieces are done: what a person expects of the next one. */
  readonly median: number;
  /** Not yet known with fewer than three stretches. */
  readonly meanInterval: Interval | undefined;
  readonly medianInterval: Interval | undefined;
  /** Standard deviation of the time of one piece over its mean. */
  readonly cv: number;
  /** Pieces and minutes that count. */
  readonly pieces: number;
  readonly minutes: number;
  /** Stretches that were too long for their pieces: somebody forgot to say that there was a break. */
  readonly breaks: Worked & { readonly stretches: number };
}

/**
 * Minutes per piece from the taps of a stage, robust against bulk taps, breaks and forgotten pauses: see `tapGroups` for
 * the first, `workTime` for the others. Mean and median are those of a log-normal, for which half of the pieces take
 * less than mean ÷ √(1 + CV²).
 *
 * The intervals are by the jackknife over twenty parts of the stretches, on the log scale, with Student's t
 * (J. W. Tukey, Bias and confidence in not quite large samples, Annals of Mathematical Statistics 29 (1958) 614; from
 * memory): the estimate is made anew without each part, so that also the uncertainty of what is a break is in them.
 *
 * @param taps in order; `elapsed` of the log in minutes, however long it was
 * @param options.level of the intervals; 0.9 when left out
 * @returns undefined while no stretch has a known time
 * @throws {RangeError} see `tapGroups`; for a level that is not between 0 and 1
 * @example minutesPerPiece([{ minutes: 4, pieces: 2 }, { minutes: 2, pieces: 1 }])?.mean.toFixed(2) // => '2.00'
 */
export function minutesPerPiece(
  taps: readonly Tap[],
  { level = 0.9 }: { readonly level?: number } = {},
): PieceTime | undefined {
  demandLevel(level);
  const stretches = tapGroups(taps);
  const time = workTime(stretches);
  if (!time) return undefined;
  const parts = withoutEachPart(stretches, time);
  const work = stretches.filter((stretch) => isWork(stretch, time));
  const breaks = stretches.filter((stretch) => !isWork(stretch, time));
  return {
    mean: time.mean,
    median: medianOf(time),
    meanInterval: jackknife(
      parts.map(({ mean }) => mean),
      { around: time.mean, level },
    ),
    medianInterval: jackknife(parts.map(medianOf), { around: medianOf(time), level }),
    cv: time.cv,
    ...sums(work),
    breaks: { stretches: breaks.length, ...sums(breaks) },
  };
}

function medianOf({ mean, cv }: WorkTime): number {
  return mean / Math.sqrt(1 + cv * cv);
}

/** Parts of the jackknife: enough for Student's t to be near the normal, few enough to be quick. */
const mostParts = 20;

/** The estimate without each part in turn; every twentieth stretch makes a part, so that a slow day is in all of them. */
function withoutEachPart(stretches: readonly Worked[], time: WorkTime): WorkTime[] {
  const parts = Math.min(mostParts, stretches.length);
  return Array.from({ length: parts }, (_, part) =>
    workTime(
      stretches.filter((_, at) => at % parts !== part),
      time,
    ),
  ).flatMap((each) => each ?? []);
}

function jackknife(
  estimates: readonly number[],
  { around, level }: { readonly around: number; readonly level: number },
): Interval | undefined {
  const parts = estimates.length;
  if (parts < 3) return undefined;
  const logs = estimates.map(Math.log);
  const middle = logs.reduce((sum, log) => sum + log, 0) / parts;
  const error = Math.sqrt(((parts - 1) / parts) * logs.reduce((sum, log) => sum + (log - middle) ** 2, 0));
  const half = studentQuantile((1 + level) / 2, parts - 1) * error;
  return [around * Math.exp(-half), around * Math.exp(half)];
}

function sums(stretches: readonly Worked[]): Worked {
  return {
    minutes: stretches.reduce((sum, { minutes }) => sum + minutes, 0),
    pieces: stretches.reduce((sum, { pieces }) => sum + pieces, 0),
  };
}
