// biome-ignore-all lint/performance/noBarrelFile: checks from outside find every function here; the app imports the files.
/** The statistics, by the names of their field. */
export { betaBinomial } from './beta-binomial.ts';
export { betaMoments } from './beta-moments.ts';
export { empiricalBayes } from './empirical-bayes.ts';
export { fisherExact } from './fisher-exact.ts';
export { productLimit } from './product-limit.ts';
export { clopperPearson, jeffreys, wilson } from './proportion-intervals.ts';
export { survivalPosterior } from './survival-posterior.ts';
export { twoProportions } from './two-proportions.ts';
export { firstPassYield, normalizedYield, rolledThroughputYield } from './yields.ts';
