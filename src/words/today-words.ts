import type { NextWork, WhyNext } from '../domain/plan/next/what-next.ts';
import type { RoundsAdvice } from '../domain/plan/rounds/todays-advice.ts';
import { inLanguage } from './language.ts';
import { pieces } from './pieces-words.ts';
import { duration } from './time-words.ts';

/** Names and times, as the shop has them. */
export interface TodayNames<Stage, Batch> {
  readonly stage: (stage: Stage) => string;
  readonly batch: (batch: Batch) => string;
  readonly time: (at: number) => string;
}

export const todaySentences = inLanguage('todaySentences', {
  nothingWaits: 'Nothing waits for a place.',
  noTime: 'No round fits into the hours that are said.',
  notToday: (n: number, stage: string, time: string) =>
    `No more today. Next: ${pieces(n)} for ${stage}, ${time}.`,
  load: (n: number, stage: string, by: string) => `Load ${pieces(n)} for ${stage} by ${by}`,
  moreRounds: (n: number) =>
    n === 1 ? 'then a second round fits before you leave' : `then ${n} further rounds fit before you leave`,
  itCures: 'it cures while nobody is here',
  lastCures: 'the last cures while nobody is here',
  unload: (n: number, stage: string) => `Take ${pieces(n)} out: ${stage}`,
  loadAt: (n: number, stage: string) => `Load ${pieces(n)}: ${stage}`,
  placesWanted: 'cured, and others wait for the places',
  placesFree: (by: string) => `places are free; in by ${by}`,
  bottleneck: 'most work is ahead here: keep it going',
  starved: (stage: string) => `${stage} has nothing left to do`,
  feeds: (stage: string, stretch: string) => `${stage} has only ${stretch} left to do`,
  late: (batch: string) => `${batch} will be late`,
  toSpare: (batch: string, days: number) =>
    days === 0
      ? `${batch} has no day to spare`
      : `${batch} has ${days === 1 ? '1 day' : `${days} days`} to spare`,
  furthest: 'furthest along',
});

/** One line of advice for some clamps or a rack. */
export function adviceWords<Stage, Batch>(
  advice: RoundsAdvice<Stage>,
  { stage, time }: TodayNames<Stage, Batch>,
): string {
  switch (advice.kind) {
    case 'nothing-waits':
      return todaySentences.nothingWaits;
    case 'no-time':
      return todaySentences.noTime;
    case 'not-today': {
      const { round } = advice;
      return todaySentences.notToday(round.pieces, stage(round.stage), time(round.from));
    }
    case 'load': {
      const { round, by, more, overNight } = advice;
      const then = more === 0 ? '' : `, ${todaySentences.moreRounds(more)}`;
      const night = overNight
        ? more === 0
          ? `: ${todaySentences.itCures}`
          : `; ${todaySentences.lastCures}`
        : '';
      return `${todaySentences.load(round.pieces, stage(round.stage), time(by))}${then}${night}.`;
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
      return todaySentences.unload(n, at);
    case 'load':
      return todaySentences.loadAt(n, at);
    case 'work':
      return `${at}: ${pieces(n)}`;
  }
}

/** The reason in a few words. */
export function whyWords<Stage, Batch>(why: WhyNext<Stage, Batch>, names: TodayNames<Stage, Batch>): string {
  switch (why.kind) {
    case 'places-wanted':
      return todaySentences.placesWanted;
    case 'places-free':
      return todaySentences.placesFree(names.time(why.by));
    case 'bottleneck':
      return todaySentences.bottleneck;
    case 'feeds':
      return why.minutesLeft < 1
        ? todaySentences.starved(names.stage(why.bottleneck))
        : todaySentences.feeds(names.stage(why.bottleneck), duration(60_000 * why.minutesLeft));
    case 'due-first':
      return why.daysToSpare < 0
        ? todaySentences.late(names.batch(why.batch))
        : todaySentences.toSpare(names.batch(why.batch), why.daysToSpare);
    case 'furthest':
      return todaySentences.furthest;
  }
}

export const todayWords = inLanguage('todayWords', {
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
  left: (n: number) => `${pieces(n)} ${n === 1 ? 'has' : 'have'} no round in the next two weeks.`,
  timetable: (name: string) => `Rounds of ${name}`,
  showTimetable: 'Timetable',
  columns: { stage: 'For', pieces: 'Pieces', from: 'Load from', loaded: 'All in', ready: 'Cured' },
});
