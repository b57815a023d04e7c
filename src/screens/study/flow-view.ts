import type { StageId } from '../../domain/log/ids.ts';
import type { FlowByDay } from '../../domain/study/flow-by-day.ts';
import type { ChartSeries } from '../../ui/chart/chart-props.ts';
import { flowWords as words } from '../../words/flow-words.ts';

/** Noon of a shop day in UTC, ms: one place on the axis for a day, whatever the zone. */
export const noonOf = (day: string): number => Date.parse(`${day}T12:00:00Z`);

const minus = (values: readonly number[], less: number) => values.map((value) => value - less);
const plus = (values: readonly number[], more: readonly number[]) =>
  values.map((value, place) => value + (more[place] ?? 0));

/** Pieces that have come to the end of their route, firsts and seconds, on each day. */
const finishedOf = ({ finished }: FlowByDay): readonly number[] => plus(finished.first, finished.second);

type Band = Pick<ChartSeries, 'key' | 'label' | 'tone'> & { readonly own: readonly number[] };

/**
 * Bands from the finished ones at the foot up to the first stages, what was scrapped on top of all: what is drawn are
 * sums, what is told are the bands' own pieces. Finished and scrapped ones are counted from the first day shown.
 */
export function cumulativeFlow(flow: FlowByDay, nameOfStage: (stage: StageId) => string): ChartSeries[] {
  const bands: readonly Band[] = [
    {
      key: 'finished',
      label: words.finished,
      own: minus(finishedOf(flow), flow.before.finished),
      tone: 'saved',
    },
    ...flow.stages.toReversed().map(
      ({ stage, standing }): Band => ({
        key: stage,
        label: nameOfStage(stage),
        own: standing,
        tone: 'copper',
      }),
    ),
    { key: 'scrapped', label: words.scrapped, own: minus(flow.scrapped, flow.before.scrapped), tone: 'flaw' },
  ];
  let top: readonly number[] = flow.days.map(() => 0);
  return bands.map(({ key, label, own, tone }) => {
    top = plus(own, top);
    return { key, label, values: top, told: own, drawn: 'area', tone };
  });
}

export interface BurnUp {
  readonly at: readonly number[];
  readonly series: readonly ChartSeries[];
}

/** Finished pieces against those wanted, out to the date by which they are wanted where that lies ahead. */
export function burnUp(
  flow: FlowByDay,
  target: { readonly wanted: number; readonly due: string | null } | undefined,
): BurnUp {
  const last = flow.days.at(-1);
  const ahead = target?.due && last !== undefined && target.due > last ? [target.due] : [];
  const at = [...flow.days, ...ahead].map(noonOf);
  const known = (values: readonly number[]) => at.map((_, place) => values[place] ?? null);
  const series: ChartSeries[] = [
    {
      key: 'finished',
      label: words.finished,
      values: known(finishedOf(flow)),
      drawn: 'steps',
      tone: 'plain',
    },
    {
      key: 'firsts',
      label: words.firsts,
      values: known(flow.finished.first),
      drawn: 'steps',
      tone: 'copper',
    },
    { key: 'scrapped', label: words.scrapped, values: known(flow.scrapped), drawn: 'dashed', tone: 'flaw' },
  ];
  if (target)
    series.push({
      ...{ key: 'wanted', label: words.wanted, values: at.map(() => target.wanted) },
      ...{ drawn: 'dashed', tone: 'saved' },
    });
  return { at, series };
}
