import { normalCdf } from './special-functions.ts';

/**
 * Average number of points until a Shewhart chart with two limits shows one beyond them: 1 ÷ P(beyond), for
 * independent normal values (NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.3.1).
 *
 * @param shift of the mean from the centre, in standard deviations; 0 for the run until a false alarm
 * @param options.sigmas half the distance between the limits; 3 when left out
 * @throws {RangeError} for a shift that is no number, or limits that are not at a positive distance
 * @example shewhartArl(0).toFixed(1) // => '370.4'
 */
export function shewhartArl(shift: number, { sigmas = 3 }: { readonly sigmas?: number } = {}): number {
  if (!(sigmas > 0)) throw new RangeError(`no distance of limits: ${sigmas}`);
  return 1 / (normalCdf(shift - sigmas) + normalCdf(-shift - sigmas));
}
