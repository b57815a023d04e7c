import { d2, deviation, type Measured, meanMovingRange } from './control-chart.ts';

/**
 * The same points with the standard deviation that they show from one to the next, where chance alone would give
 * another: σ of each times the moving-range σ of the standardised points. D. B. Laney, Improved control charts for
 * attributes, Quality Engineering 14 (2002) 531-537 (formula from memory).
 *
 * Fewer than two points, or a centre at which chance leaves no room, tell nothing of it: then σ stays.
 */
export function laneySigma(measured: readonly Measured[], centre: number): Measured[] {
  if (measured.some(({ sigma }) => sigma === 0)) return [...measured];
  const range = meanMovingRange(measured.map(({ value, sigma }) => deviation(value, { centre, sigma })));
  const wider = range === undefined ? 1 : range / d2;
  return measured.map((each) => ({ ...each, sigma: each.sigma * wider }));
}
