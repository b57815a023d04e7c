import { shopDay, zoneAt } from '../../src/domain/log/zone.ts';
import { demoDayStart, demoZone } from './demo-facts.ts';

/** A stretch of working time, ms UTC; `day` counts the working days from 0. */
export interface Stretch {
  readonly day: number;
  readonly from: number;
  readonly to: number;
}

const dayMs = 86_400_000;
/** A stretch shorter than this (45 min in ms) is not begun. */
const shortest = 45 * 60_000;
/** Local working hours with their breaks, as hours of the day. */
const hours = [
  [8, 10.25],
  [10.5, 12.5],
  [13.25, 15.5],
  [15.75, 17.5],
] as const;

/**
 * The stretches of the last `days` weekdays up to `now`, in order. The last of them ends at `now` when the shop
 * is at work then.
 */
export function workingStretches(now: number, days: number): readonly Stretch[] {
  const weekdays: number[] = [];
  for (let noon = localNoon(now); weekdays.length < days; noon = localNoon(noon - dayMs)) {
    const weekday = new Date(noon).getUTCDay();
    if (weekday >= 1 && weekday <= 5 && at(noon, hours[0][0]) + shortest < now) weekdays.unshift(noon);
  }
  return weekdays.flatMap((noon, day) =>
    hours
      .map(([from, to]) => ({ day, from: at(noon, from), to: Math.min(at(noon, to), now) }))
      .filter(({ from, to }) => to - from > shortest),
  );
}

/** Noon in the shop's zone on the shop day of a moment. No zone changes its clock at noon. */
function localNoon(moment: number): number {
  const noonUtc = Date.parse(`${shopDay(moment, { zone: demoZone, startHour: demoDayStart })}T12:00:00Z`);
  return noonUtc - zoneAt(noonUtc, demoZone).offset * 60_000;
}

function at(noon: number, hour: number): number {
  return noon + (hour - 12) * 3_600_000;
}
