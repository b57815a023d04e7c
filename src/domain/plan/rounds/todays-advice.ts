import type { Round } from './load-round.ts';
import { type RoundsQuestion, roundsTimetable } from './rounds-timetable.ts';

const minute = 60_000;

/** What to do next with some clamps or a rack. */
export type RoundsAdvice<Name> =
  | { readonly kind: 'nothing-waits' }
  /** The shifts leave no round at all. */
  | { readonly kind: 'no-time' }
  /** The next round cannot be loaded today: not before places are free, or there is no time left. */
  | { readonly kind: 'not-today'; readonly round: Round<Name> }
  | {
      readonly kind: 'load';
      readonly round: Round<Name>;
      /** The round must be in by then, or fewer pieces can be loaded today; ms UTC, a whole minute after the start. */
      readonly by: number;
      /** Rounds that can still be loaded today after it. */
      readonly more: number;
      /** The last round of today cures while nobody is there. */
      readonly overNight: boolean;
    };

/**
 * The next round, and how long it can be put off before that costs pieces today: whoever loads in time gets the further
 * rounds in before leaving.
 *
 * @param question.shifts those of today, until `today`, and as many of later days as the timetable shall see
 * @param today when today's last shift ends, ms UTC
 */
export function todaysAdvice<Name>(question: RoundsQuestion<Name>, today: number): RoundsAdvice<Name> {
  if (question.stages.every(({ waiting }) => waiting === 0)) return { kind: 'nothing-waits' };
  const { rounds } = roundsTimetable(question);
  const [round] = rounds;
  if (!round) return { kind: 'no-time' };
  if (round.from >= today) return { kind: 'not-today', round };
  const todays = rounds.filter(({ from }) => from < today);
  const latest = latestStart(question, { from: round.from, today, pieces: piecesOf(todays) });
  return {
    kind: 'load',
    round,
    by: latest + (round.loaded - round.from),
    more: todays.length - 1,
    overNight: todays.some(({ ready }) => ready > today),
  };
}

/** The latest whole minute from `from` on at which as many pieces can still be loaded today. */
function latestStart<Name>(
  question: RoundsQuestion<Name>,
  { from, today, pieces }: { readonly from: number; readonly today: number; readonly pieces: number },
): number {
  const loadedToday = (now: number) =>
    piecesOf(roundsTimetable({ ...question, now }).rounds.filter((round) => round.from < today));
  let [good, bad] = [0, Math.ceil((today - from) / minute)];
  while (bad - good > 1) {
    const middle = Math.floor((good + bad) / 2);
    if (loadedToday(from + middle * minute) >= pieces) good = middle;
    else bad = middle;
  }
  return from + good * minute;
}

function piecesOf<Name>(rounds: readonly Round<Name>[]): number {
  return rounds.reduce((sum, { pieces }) => sum + pieces, 0);
}
