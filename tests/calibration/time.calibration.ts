/** Whether minutes per piece are right though some taps stand for a dozen pieces and pauses are forgotten. */
import { seededRandom } from '../../src/domain/chance/seeded-random.ts';
import { minutesPerPiece } from '../../src/domain/statistics/minutes-per-piece.ts';
import { tapsOf } from '../domain/statistics/tap-makers.ts';
import { type CalibrationRow, calibrationRow, meanOf, quantileOf, type Simulation } from './row.ts';

const taps = 400;

export function calibrate({ seed, shops }: Simulation): readonly CalibrationRow[] {
  return [0.2, 0.4, 0.6].flatMap((cv, at) => errorsOf({ cv, seed: seed + at, shops }));
}

function errorsOf({ cv, seed, shops }: Simulation & { cv: number }): readonly CalibrationRow[] {
  const random = seededRandom(seed);
  const errors = Array.from({ length: shops }, (_, shop) => {
    const mean = 1 + 9 * random();
    const bulk = shop % 2 === 0 ? 'one-tap' : 'taps-in-a-row';
    const told = minutesPerPiece(tapsOf({ mean, cv, bulk, pause: [5, 60] }, { taps, random }));
    return told ? told.mean / mean - 1 : Number.NaN;
  });
  const scene = `${taps} taps of pieces with a coefficient of variation of ${cv}, 10 % bulk, 3 % after a forgotten pause`;
  return [
    calibrationRow({
      id: `time-bias-${cv}`,
      what: `${scene}: mean relative error of minutes per piece`,
      value: meanOf(errors),
      band: [-0.05, 0.05],
      shops,
    }),
    calibrationRow({
      id: `time-error-${cv}`,
      what: 'the same: relative error, either way, that half of the shops stay below',
      value: quantileOf(errors.map(Math.abs), 0.5),
      band: [0, 0.05],
      shops,
    }),
  ];
}
