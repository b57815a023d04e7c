// biome-ignore-all lint/performance/noBarrelFile: checks from outside find every function here; the app imports the files.
/** The statistics, by the names of their field. */
export { bernoulliCusum, flawWeight } from './bernoulli-cusum.ts';
export { bernoulliCusumAlarm, bernoulliCusumArl, bernoulliCusumThreshold } from './bernoulli-cusum-run.ts';
export { betaBinomial } from './beta-binomial.ts';
export { betaMoments } from './beta-moments.ts';
export { cChart } from './c-chart.ts';
export { cusum } from './cusum.ts';
export { empiricalBayes } from './empirical-bayes.ts';
export { ewmaChart } from './ewma-chart.ts';
export { bonferroniThreshold, falseDiscovery, holm, taroneHolm } from './false-discovery.ts';
export { fisherExact } from './fisher-exact.ts';
export { gChart } from './g-chart.ts';
export { individualsChart } from './individuals-chart.ts';
export { learningCurve, learningCurveThrough } from './learning-curve.ts';
export { cumulativeTotal, learningExponent, predictUnit, unitsToReach } from './learning-model.ts';
export { littlesLaw } from './littles-law.ts';
export { minutesPerPiece } from './minutes-per-piece.ts';
export { pChart } from './p-chart.ts';
export { productLimit } from './product-limit.ts';
export { clopperPearson, jeffreys, wilson } from './proportion-intervals.ts';
export { nelsonRules, runRules, westernElectricRules } from './run-rules.ts';
export { shewhartArl } from './shewhart-arl.ts';
export { survivalPosterior } from './survival-posterior.ts';
export { twoProportions } from './two-proportions.ts';
export { uChart } from './u-chart.ts';
export { firstPassYield, normalizedYield, rolledThroughputYield } from './yields.ts';
