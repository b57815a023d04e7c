import type { StageId } from '../../domain/log/ids.ts';
import type { LearningCurve } from '../../domain/statistics/learning-curve.ts';
import type { StageLearning } from '../../domain/study/stage-learning.ts';

interface Learner {
  readonly key: string;
  readonly learner: StageLearning;
}

/** Those whose pace has surely changed first, then those with the most pieces, then by their stage along the route. */
export function learnersInOrder(
  learning: readonly StageLearning[],
  route: readonly StageId[],
): readonly Learner[] {
  return learning
    .map((learner) => ({ key: `${learner.stage}|${learner.person ?? ''}`, learner }))
    .toSorted(
      (a, b) =>
        Number(paceOf(a.learner.curve) === 'steady') - Number(paceOf(b.learner.curve) === 'steady') ||
        b.learner.timed - a.learner.timed ||
        route.indexOf(a.learner.stage) - route.indexOf(b.learner.stage),
    );
}

/** What a learning rate says, where its interval leaves no doubt. */
export function paceOf({ rateInterval }: LearningCurve): 'quicker' | 'slower' | 'steady' {
  if (!rateInterval) return 'steady';
  const [low, high] = rateInterval;
  if (high < 1) return 'quicker';
  return low > 1 ? 'slower' : 'steady';
}

/** The minutes of the fitted curve at each point of a chart. */
export function curveAlong({ curve: { firstUnit, exponent }, points }: StageLearning): readonly number[] {
  return points.map(({ number }) => firstUnit * number ** exponent);
}
