import type { Random } from '../chance/seeded-random.ts';
import type { Change } from '../signals/change.ts';
import { signalsOf } from '../signals/signals-of.ts';
import { type SeriesQuestion, type SignalSeries, signalSeries } from './signal-series.ts';
import type { TapTable } from './tap-table.ts';

/** A rate that has changed, with the series that shows it: enough for a sentence and for a chart. */
export interface StudySignal extends Omit<Change, 'since'> {
  readonly series: SignalSeries;
  /** The first tray of the series after the likely change, as a place in it. */
  readonly since: number;
  /** The chance that a shop without change shows anything so strange in any of its series: at most this. */
  readonly adjustedP: number;
}

export interface StudySignals {
  /** The strangest first. */
  readonly signals: readonly StudySignal[];
  /** The chance that this list shows anything at all while nothing changes is at most this. */
  readonly falseAlarm: number;
  /** How many series held enough for a signal. */
  readonly watched: number;
}

/**
 * What has changed anywhere in the shop; see `signalsOf` for how the whole list is kept from false alarms. The same
 * `random` gives the same list.
 */
export function studySignals(
  table: TapTable,
  { random, ...question }: SeriesQuestion & { readonly random: Random },
): StudySignals {
  const series = signalSeries(table, question);
  const { signals, falseAlarm, watched } = signalsOf(
    series.map(({ tally }) => tally),
    { random },
  );
  return {
    ...{ falseAlarm, watched },
    signals: signals.flatMap(({ series: at, ...signal }) => {
      const of = series[at];
      return of ? [{ ...signal, series: of }] : [];
    }),
  };
}
