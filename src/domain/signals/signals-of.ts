import { taroneHolm } from '../statistics/false-discovery.ts';
import { type Change, changeScan } from './change-scan.ts';
import type { Tally } from './tally.ts';

export interface ShopSignal extends Omit<Change, 'leastP'> {
  /** Which of the series. */
  readonly series: number;
  /** The chance that a shop without change shows anything as strange as this in any of its series: at most this. */
  readonly adjustedP: number;
}

export interface SignalList {
  /** The strangest first. */
  readonly signals: readonly ShopSignal[];
  /** The chance that this list shows anything at all while nothing changes is at most this. */
  readonly falseAlarm: number;
  /** How many series held enough for a signal, if their pieces had come in another order. */
  readonly watched: number;
}

/**
 * The series of a shop in which the share of flawed pieces has changed. Each is judged by the exact `changeScan`, and
 * all of them together by `taroneHolm`: whatever the rates are and however many series there are, a list of a shop
 * where nothing changes is empty with a chance of at least 1 − `falseAlarm`. That holds for one look at the list; whoever
 * looks every day sees a false alarm some day more often than that.
 *
 * A change that was answered is no news: hand the series in from its `since` on.
 *
 * @param series the pieces of each stage and wood, say, in the order of the work
 * @param options.falseAlarm chance for the whole list; 0.05 when left out
 * @param options.mostPieces see `changeScan`
 * @throws {RangeError} see `newestRun`; for a `falseAlarm` that is not between 0 and 1
 */
export function signalsOf(
  series: readonly Tally[],
  { falseAlarm = 0.05, ...scan }: { readonly falseAlarm?: number; readonly mostPieces?: number } = {},
): SignalList {
  if (!(falseAlarm > 0 && falseAlarm < 1)) throw new RangeError(`no chance of a false alarm: ${falseAlarm}`);
  const changes = series.flatMap((tally, index) => {
    const change = changeScan(tally, scan);
    return change ? [{ series: index, change }] : [];
  });
  const adjusted = taroneHolm(
    changes.map(({ change }) => change.p),
    changes.map(({ change }) => change.leastP),
  );
  const signals = changes.flatMap(({ series: of, change: { leastP: _, ...change } }, at) => {
    const adjustedP = adjusted[at] ?? 1;
    return adjustedP <= falseAlarm ? [{ series: of, ...change, adjustedP }] : [];
  });
  return {
    signals: signals.sort((a, b) => a.adjustedP - b.adjustedP || a.p - b.p || a.series - b.series),
    falseAlarm,
    watched: changes.filter(({ change }) => change.leastP <= falseAlarm).length,
  };
}
