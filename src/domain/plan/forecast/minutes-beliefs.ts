import type { SpeciesId, StageId } from '../../log/ids.ts';
import { type NormalPopulation, normalPopulation } from '../../statistics/normal-population.ts';
import type { StageTime } from '../../study/piece-times.ts';
import type { PieceMinutesBelief } from './plan-model.ts';

type Of = StageTime['of'];

/** Half of the prior of the spread of woods at a stage, and of stages, lies below it; on the log scale. */
const [woodsDiffer, stagesDiffer] = [0.2, 0.7];
/** The coefficient of variation of hand work before anything is known, and the pieces that this is worth. */
const usualCv = { cv: 0.4, pieces: 5 };
/** Normal quantile of the level of `StageTime` intervals, 90 %. */
const z90 = 1.645;

/**
 * What to believe of the minutes of a piece at each stage × wood, from the robust estimates of `pieceTimes` at the level
 * 0.9. On the log scale a wood's mean is normal about that of the stage, and leans on it the less is known of the wood; a
 * stage without a time leans on the other stages.
 *
 * @returns undefined while no stage has a time
 */
export function minutesBeliefs(
  times: readonly StageTime[],
): ((stage: StageId, species: SpeciesId, of: Of) => PieceMinutesBelief) | undefined {
  const cells = new Map<string, { readonly times: StageTime[]; population?: NormalPopulation | undefined }>();
  for (const time of times) {
    if (!(time.time.mean > 0)) continue;
    const key = `${time.stage}|${time.of}`;
    const cell = cells.get(key) ?? { times: [] };
    cells.set(key, cell);
    cell.times.push(time);
  }
  for (const cell of cells.values()) {
    cell.population = normalPopulation(
      cell.times.map(({ time }) => ({
        mean: Math.log(time.mean),
        error: errorOf(time, pooledCv(cell.times)),
      })),
      { spread: woodsDiffer },
    );
  }
  const stages = (of: Of) =>
    [...cells].flatMap(([key, { population }]) =>
      population && key.endsWith(`|${of}`)
        ? [{ mean: population.other.mean, error: population.other.sd }]
        : [],
    );
  const unknown = {
    work: normalPopulation(stages('work'), { spread: stagesDiffer })?.other,
    loading: normalPopulation(stages('loading'), { spread: stagesDiffer })?.other,
  };
  if (!unknown.work && !unknown.loading) return undefined;
  return (stage, species, of) => {
    const cell = cells.get(`${stage}|${of}`);
    const at = cell?.times.findIndex((time) => time.species === species) ?? -1;
    const belief =
      cell?.population?.groups[at] ??
      cell?.population?.other ??
      unknown[of] ??
      unknown.work ??
      unknown.loading;
    if (!belief) throw new RangeError('A population has beliefs');
    // What a stage takes of which nothing is known is not known of all woods.
    const shared = cell ? belief.shared : 1;
    return {
      median: Math.exp(belief.mean),
      logSd: belief.sd,
      shared,
      cv: cell ? pooledCv(cell.times) : usualCv.cv,
    };
  };
}

/** Of the log of the mean: what the jackknife says, but no less than pieces that spread so can be known. */
function errorOf({ meanInterval, pieces }: StageTime['time'], cv: number): number {
  const least = cv / Math.sqrt(pieces);
  if (!meanInterval) return 1.5 * least;
  return Math.max(least, (Math.log(meanInterval[1]) - Math.log(meanInterval[0])) / 2 / z90);
}

function pooledCv(times: readonly StageTime[]): number {
  const squares = times.reduce(
    (sum, { time }) => sum + time.pieces * time.cv ** 2,
    usualCv.pieces * usualCv.cv ** 2,
  );
  return Math.sqrt(squares / times.reduce((sum, { time }) => sum + time.pieces, usualCv.pieces));
}
