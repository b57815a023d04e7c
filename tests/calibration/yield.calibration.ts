/** Whether what is said of the yield of a wood holds while a batch is in work and every wood has few pieces. */
import { seededRandom } from '../../src/domain/chance/seeded-random.ts';
import { empiricalBayes } from '../../src/domain/statistics/empirical-bayes.ts';
import { productLimit } from '../../src/domain/statistics/product-limit.ts';
import { survivalPosterior } from '../../src/domain/statistics/survival-posterior.ts';
import { type CalibrationRow, calibrationRow, meanOf, type Simulation } from './row.ts';
import { simulatedWoods } from './simulated-woods.ts';

const level = 0.9;

export function calibrate({ seed, shops }: Simulation): readonly CalibrationRow[] {
  const half = lookAt({ done: 0.5, seed, shops });
  const early = lookAt({ done: 0, seed: seed + 1, shops });
  const row = (id: string, what: string, value: number, band: CalibrationRow['band']) =>
    calibrationRow({ id, what, value, band, shops });
  const inside = 'share of woods whose true yield lies in its pooled 90 % interval';
  return [
    row('yield-coverage', `half of the batch done: ${inside}`, half.covered, [0.88, 0.92]),
    row(
      'yield-error',
      'the same: mean squared error of the pooled yield over that of the raw one, of the same woods',
      half.error,
      [0, 0.95],
    ),
    // With next to nothing at the last stages it may be too cautious, but not too sure.
    row('yield-coverage-early', `trays anywhere along the route: ${inside}`, early.covered, [0.88, 1]),
    row('yield-error-early', 'the same: mean squared errors, pooled over raw', early.error, [0, 0.95]),
  ];
}

/** Looks at shops in each of which a share of the trays is done. */
function lookAt({ done, seed, shops }: Simulation & { done: number }) {
  const random = seededRandom(seed);
  const covered: number[] = [];
  const errors = { pooled: [] as number[], raw: [] as number[] };
  for (let shop = 0; shop < shops; shop += 1) {
    const woods = simulatedWoods({ done, random });
    const { groups } = empiricalBayes(
      woods.map(({ steps }) => survivalPosterior(steps, level).worth),
      level,
    );
    for (const [at, { truth, steps }] of woods.entries()) {
      const { mean, interval } = groups[at] ?? { mean: Number.NaN, interval: [1, 0] as const };
      covered.push(interval[0] <= truth && truth <= interval[1] ? 1 : 0);
      const raw = productLimit(steps, level).at(-1)?.survival;
      // Where nothing has come through the last stage there is no raw figure to be held against.
      if (raw === undefined) continue;
      errors.raw.push((raw - truth) ** 2);
      errors.pooled.push((mean - truth) ** 2);
    }
  }
  return { covered: meanOf(covered), error: meanOf(errors.pooled) / meanOf(errors.raw) };
}
