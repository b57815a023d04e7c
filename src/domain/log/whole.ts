import * as v from 'valibot';

/** A whole number between two bounds, both of which it may be. */
export const whole = (least: number, most: number) =>
  v.pipe(v.number(), v.integer(), v.minValue(least), v.maxValue(most));
