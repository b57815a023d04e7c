import type { Compared, DayReport, StageDay } from '../../domain/rollup/day-report.ts';
import { liveStages } from '../../domain/route/live-stages.ts';
import type { Shop } from '../../domain/shop/shop.ts';

const minute = 60_000;

/** Milliseconds of work as minutes, rounded to the nearest for a day and kept whole for an average. */
export function inMinutes({ day, before, average }: Compared): Compared {
  return {
    day: Math.round(day / minute),
    before: Math.round(before / minute),
    average: average === null ? null : average / minute,
  };
}

/** Stages in the order of the route; those that left it come last. */
export function stagesInOrder(shop: Shop, { stages }: DayReport): readonly StageDay[] {
  const order = liveStages(shop.registers);
  const place = ({ stage }: StageDay) => {
    const index = order.indexOf(stage);
    return index < 0 ? order.length : index;
  };
  return stages.toSorted((a, b) => place(a) - place(b));
}

/** The lines of the day in figures, in the order in which a maker asks. */
export function dayLines(report: DayReport): readonly (readonly [DayMeasure, Compared])[] {
  return [
    ['firsts', report.finishedFirsts],
    ['secondsFinished', report.finishedSeconds],
    ['scrapped', report.scrapped],
    ['seconds', report.seconds],
    ['made', report.made],
    ['minutes', inMinutes(report.worked)],
  ];
}

export type DayMeasure = 'firsts' | 'secondsFinished' | 'scrapped' | 'seconds' | 'made' | 'minutes';
