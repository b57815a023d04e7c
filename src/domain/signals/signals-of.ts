import { taroneHolm } from '../statistics/false-discovery.ts';
import { type Change, changeScan, type Scanned } from './change-scan.ts';
import { chanceOfShuffled, type Random } from './shuffled-trays.ts';
import { newestRun, type Run, type Tally } from './tally.ts';

export interface ShopSignal extends Change {
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
  /** Chance of a false alarm for the whole list; 0.05 when left out. */
  readonly falseAlarm?: number;
  /**
   * With a source of chance, a change must also be stranger than what the same groups show in random order: where
   * trays differ by nature, pieces alone would be called a change. The same seed gives the same list.
   */
  readonly random?: Random;
  /** Older pieces of a series are left out; 3000 when left out. */
  readonly mostPieces?: number;
}

/**
 * The series of a shop in which the share of flawed pieces has changed. Each is judged by the exact `changeScan`, and
 * all of them together by `taroneHolm`: whatever the rates are and however many series there are, a list of a shop
 * where nothing changes is empty with a chance of at least 1 − `falseAlarm`. That holds for one look at the list; whoever
 * looks every day sees a false alarm some day more often than that.
 *
 * A change that was answered is no news: hand the series in from its `since` on.
 *
 * @param series the pieces of each stage and wood, say, in the order of the work. Groups are trays, when `random` is given
 * @throws {RangeError} see `newestRun`; for a `falseAlarm` that is not between 0 and 1
 */
export function signalsOf(
  series: readonly Tally[],
  { falseAlarm = 0.05, mostPieces = 3000, random }: SignalOptions = {},
): SignalList {
  if (!(falseAlarm > 0 && falseAlarm < 1)) throw new RangeError(`no chance of a false alarm: ${falseAlarm}`);
  const scans = series.flatMap((tally, index) => {
    const run = newestRun(tally, mostPieces);
    const scanned = changeScan(run);
    return scanned ? [{ series: index, run, ...scanned }] : [];
  });
  const judged = random ? alsoByTrays(scans, { falseAlarm, random }) : scans;
  const adjusted = adjustedOf(judged);
  const signals = judged.flatMap(({ run: _run, tail: _tail, leastP: _least, ...change }, at) => {
    const adjustedP = adjusted[at] ?? 1;
    return adjustedP <= falseAlarm ? [{ ...change, adjustedP }] : [];
  });
  return {
    signals: signals.sort((a, b) => a.adjustedP - b.adjustedP || a.p - b.p || a.series - b.series),
    falseAlarm,
    watched: scans.filter(({ leastP }) => leastP <= falseAlarm).length,
  };
}

interface Judged extends Scanned {
  readonly series: number;
  readonly run: Run;
}

function adjustedOf(scans: readonly Judged[]): number[] {
  return taroneHolm(
    scans.map(({ p }) => p),
    scans.map(({ leastP }) => leastP),
  );
}

/** Orders drawn for each test that shares the bound: enough to tell a p value at it within a tenth or so. */
const ordersForEach = 100;

/**
 * The larger p of pieces and trays, for those that pieces alone would have shown; for the others it would not matter.
 * No series comes lower by it, so what each could have reached still bounds it.
 */
function alsoByTrays(
  scans: readonly Judged[],
  { falseAlarm, random }: { readonly falseAlarm: number; readonly random: Random },
): Judged[] {
  const most = Math.ceil((ordersForEach * Math.max(1, scans.length)) / falseAlarm);
  const adjusted = adjustedOf(scans);
  return scans.map((scan, at) =>
    (adjusted[at] ?? 1) > falseAlarm
      ? scan
      : { ...scan, p: Math.max(scan.p, chanceOfShuffled(scan.run, { tail: scan.tail, random, most })) },
  );
}
