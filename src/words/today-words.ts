import type { NextWork, WhyNext } from '../domain/plan/next/what-next.ts';
import type { RoundsAdvice } from '../domain/plan/rounds/todays-advice.ts';
import { pieces } from './number-words.ts';
import { duration } from './time-words.ts';

/** Names and times, as the shop has them. */
export interface TodayNames<Stage, Batch> {
  readonly stage: (stage: Stage) => string;
  readonly batch: (batch: Batch) => string;
  readonly time: (at: number) => string;
}

const minutes = (n: number) => duration(60_000 * n);

/** One line of advice for some clamps or a rack. */
export function adviceWords<Stage, Batch>(
  advice: RoundsAdvice<Stage>,
  { stage, time }: TodayNames<Stage, Batch>,
): string {
  switch (advice.kind) {
    case 'nothing-waits':
      return 'Nothing waits for a place.';
    case 'no-time':
      return 'No round fits into the hours that are said.';
    case 'not-today': {
      const { round } = advice;
      return `No more today. Next: ${pieces(round.pieces)} for ${stage(round.stage)}, ${time(round.from)}.`;
    }
    case 'load': {
      const { round, by, more, overNight } = advice;
      const then =
        more === 0
          ? ''
          : more === 1
            ? ', then a second round fits before you leave'
            : `, then ${more} further rounds fit before you leave`;
      const night = overNight
        ? more === 0
          ? ': it cures while nobody is here'
          : '; the last cures while nobody is here'
        : '';
      return `Load ${pieces(round.pieces)} for ${stage(round.stage)} by ${time(by)}${then}${night}.`;
    }
  }
}

export function nextWords<Stage, Batch>(
  { what, stage, pieces: n }: NextWork<Stage, Batch>,
  names: TodayNames<Stage, Batch>,
): string {
  const at = names.stage(stage);
  switch (what) {
    case 'unload':
      return `Take ${pieces(n)} out: ${at}`;
    case 'load':
      return `Load ${pieces(n)}: ${at}`;
    case 'work':
      return `${at}: ${pieces(n)}`;
  }
}

/** The reason in a few words. */
export function whyWords<Stage, Batch>(why: WhyNext<Stage, Batch>, names: TodayNames<Stage, Batch>): string {
  switch (why.kind) {
    case 'places-wanted':
      return 'cured, and others wait for the places';
    case 'places-free':
      return `places are free; in by ${names.time(why.by)}`;
    case 'bottleneck':
      return 'most work is ahead here: keep it going';
    case 'feeds':
      return why.minutesLeft < 1
        ? `${names.stage(why.bottleneck)} has nothing left to do`
        : `${names.stage(why.bottleneck)} has only ${minutes(why.minutesLeft)} left to do`;
    case 'due-first':
      return why.daysToSpare < 0
        ? `${names.batch(why.batch)} will be late`
        : why.daysToSpare === 0
          ? `${names.batch(why.batch)} has no day to spare`
          : `${names.batch(why.batch)} has ${why.daysToSpare === 1 ? '1 day' : `${why.daysToSpare} days`} to spare`;
    case 'furthest':
      return 'furthest along';
  }
}

export const todayWords = {
  next: 'What next',
  nextLead: 'The first is the most urgent. Tap one to go there.',
  nextMeans:
    'First places that cured pieces keep from others, then places that are free, then the stage with most work ahead of it and what feeds it when it has less than two hours left, then batches with less than three days to spare, then what is furthest along. Days to spare are those that the hours left over would fill; where hours or times are not known, the days until it is due.',
  nothing: 'Nothing waits anywhere.',
  here: 'the stage of this tablet',
  rounds: 'Rounds',
  roundsLead: 'When to load what, so that all that waits now has cured soonest.',
  roundsMeans:
    'Reckoned from what waits now, the places, the time to cure at the warmth that was said, the hours of people and the minutes that loading has taken. The slowest wood counts. What comes to wait later is not in it, nor what else the hands have to do; breaks are not known, so leave some time. What cures long goes over night where that helps.',
  noHours: 'Nobody’s hours are said, so no round has a time.',
  toPeople: 'Hours of people',
  noHolds: 'No stage of the route cures.',
  untimed: (stages: string) => `Loading is reckoned as no time, since nobody has timed it yet: ${stages}.`,
  left: (n: number) => `${pieces(n)} have no round in the next two weeks.`,
  timetable: (name: string) => `Rounds of ${name}`,
  showTimetable: 'Timetable',
  columns: { stage: 'For', pieces: 'Pieces', from: 'Load from', loaded: 'All in', ready: 'Cured' },
} as const;
