import type { Random } from '../chance/seeded-random.ts';
import { taroneHolm } from '../statistics/false-discovery.ts';
import type { Change, Scanned } from './change.ts';
import { changeScan } from './change-scan.ts';
import { mixedScan } from './mixed-scan.ts';
import { chanceOfShuffled } from './shuffled-trays.ts';
import { newestRun, type Run, type Tally } from './tally.ts';

interface ShopSignal extends Change {
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
  /** How many series held enough for a signal, had their pieces come in another order. */
  readonly watched: number;
}

export interface SignalOptions {
  /** Where random orders come from; the same seed gives the same list. */
  readonly random: Random;
  /** Chance of a false alarm for the whole list; 0.05 when left out. */
  readonly falseAlarm?: number;
  /** Older pieces of a series are left out; 3000 when left out. */
  readonly mostPieces?: number;
}

/** Orders drawn for each test that shares the bound: enough to tell a p value at it within a quarter or so. */
const ordersForEach = 20;

/**
 * The series of a shop in which the share of flawed pieces has changed. A series of one kind is judged by the exact
 * `changeScan` of its pieces and, where that would show it, by `chanceOfShuffled` of its trays too: the larger p counts,
 * so that trays which differ by nature are no change. A series of several kinds is judged by `mixedScan`. All of them
 * together are bounded by `taroneHolm`: whatever the rates are and however many series there are, a list of a shop where
 * nothing changes is empty with a chance of at least 1 − `falseAlarm`. That holds for one look at the list; whoever looks
 * every day sees a false alarm some day more often than that.
 *
 * A change that was answered is no news: hand the series in from its `since` on.
 *
 * @param series trays of each stage and wood, say, and of each stage with its woods as kinds, in the order of the work
 * @throws {RangeError} see `newestRun`; for a `falseAlarm` that is not between 0 and 1
 */
export function signalsOf(
  series: readonly Tally[],
  { random, falseAlarm = 0.05, mostPieces = 3000 }: SignalOptions,
): SignalList {
  if (!(falseAlarm > 0 && falseAlarm < 1)) throw new RangeError(`no chance of a false alarm: ${falseAlarm}`);
  const draws = { random, most: Math.ceil((ordersForEach * series.length) / falseAlarm) };
  const scans = series.flatMap((tally, index) => {
    const run = newestRun(tally, mostPieces);
    const scanned = isMixed(run) ? mixedScan(run, draws) : changeScan(run);
    return scanned ? [{ series: index, run, scanned }] : [];
  });
  const byPieces = boundOver(scans.map(({ scanned }) => scanned));
  const judged = scans.map(({ run, scanned }, at): Scanned => {
    const { tail } = scanned;
    if (tail === undefined || (byPieces[at] ?? 1) > falseAlarm) return scanned;
    // No p value gets smaller by this, so what each could have reached still bounds it.
    const byTrays = chanceOfShuffled(run, { ...draws, tail });
    return { ...scanned, p: Math.max(scanned.p, byTrays) };
  });
  const adjusted = boundOver(judged);
  const signals = judged.flatMap(({ direction, since, before, after, expected, p }, at) => {
    const adjustedP = adjusted[at] ?? 1;
    const of = scans[at]?.series ?? 0;
    return adjustedP <= falseAlarm
      ? [{ series: of, direction, since, before, after, expected, p, adjustedP }]
      : [];
  });
  return {
    signals: signals.sort((a, b) => a.adjustedP - b.adjustedP || a.p - b.p || a.series - b.series),
    falseAlarm,
    watched: judged.filter(({ leastP }) => leastP <= falseAlarm).length,
  };
}

function isMixed({ groups }: Run): boolean {
  return groups.some(({ kind }) => kind !== groups[0]?.kind);
}

function boundOver(scans: readonly Scanned[]): number[] {
  return taroneHolm(
    scans.map(({ p }) => p),
    scans.map(({ leastP }) => leastP),
  );
}
