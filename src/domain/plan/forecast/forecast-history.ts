import type { ShopDay, StageId } from '../../log/ids.ts';
import { handsWanted } from '../../study/hands-wanted.ts';
import type { StageTime } from '../../study/piece-times.ts';
import { type SentBack, sentBack } from '../../study/sent-back.ts';
import type { StudyRoutes } from '../../study/study-routes.ts';
import { survivalBySpecies } from '../../study/survival.ts';
import type { TapTable } from '../../study/tap-table.ts';
import { busyByDay, type UsualMinutes, usualByDay } from '../../study/usual-by-day.ts';
import type { WoodTrials } from '../starts/stage-beliefs.ts';
import { minutesBeliefs } from './minutes-beliefs.ts';
import type { WorkedDay } from './pace.ts';

/** A day that is over: when somebody was in the shop (ms UTC), and the minutes of all people's hours. */
export interface DayOfHours {
  readonly day: ShopDay;
  readonly from: number;
  readonly to: number;
  readonly minutes: number;
}

/** What a log is asked for a forecast; see `HandsQuestion` for all but the days, which are in order. */
export interface HistoryAsked {
  readonly days: readonly DayOfHours[];
  readonly bench: readonly StageId[];
  readonly waiting: number;
  readonly each: number;
  readonly people: number;
}

/** What a log tells for a forecast: the part of `ShopToPlan` that is learnt. */
export interface ForecastHistory {
  readonly trials: readonly WoodTrials[];
  readonly back: readonly SentBack[];
  readonly times: readonly StageTime[];
  readonly days: readonly WorkedDay[];
}

/** @param times `pieceTimes` of the table, at its usual level */
export function forecastHistory(
  table: TapTable,
  {
    routes,
    times,
    asked: { days, bench, ...hands },
  }: { readonly routes: StudyRoutes; readonly times: readonly StageTime[]; readonly asked: HistoryAsked },
): ForecastHistory {
  const minutes = minutesBeliefs(times);
  const usualOf: UsualMinutes = (stage, species, of) => minutes?.(stage, species, of).median;
  const [usual, busy] = [usualByDay(table, usualOf), busyByDay(table, usualOf)];
  const [first] = usual.keys();
  const wanted = handsWanted(table, { ...hands, routes, bench: new Set(bench) });
  return {
    trials: survivalBySpecies(table, { routes }).map(({ group, stages }) => ({ group, stages })),
    back: sentBack(table),
    times,
    // Days before the first tap tell nothing of the pace.
    days: days
      .filter(({ day }) => first !== undefined && day >= first)
      .map(({ day, minutes: all, ...stretch }) => ({
        hours: all * wanted(stretch),
        busy: busy.get(day) ?? 0,
        usual: usual.get(day) ?? 0,
      })),
  };
}
