/** Means of several groups that are drawn from one normal population, each known with an error of its own. */

/** The mean of a group as it was measured, and its standard error. */
export interface Measured {
  readonly mean: number;
  readonly error: number;
}

/** What is believed of a mean: normal, `shared` the share of its variance that all groups have in common. */
interface MeanBelief {
  readonly mean: number;
  readonly sd: number;
  readonly shared: number;
}

export interface NormalPopulation {
  /** In the order given. */
  readonly groups: readonly MeanBelief[];
  /** Of a group of which nothing was measured. */
  readonly other: MeanBelief;
}

const POINTS = 200;
/** As far as the spread between groups is looked for, in spreads that are seen or thought likely. */
const FAR = 8;

/**
 * The normal hierarchical model, with its spread between groups summed over 200 values: a group that was measured badly
 * leans on the others. Flat prior of the population's mean, half-Cauchy prior of its standard deviation.
 * Source: A. Gelman et al., Bayesian Data Analysis, 3rd ed., section 5.4, (5.17) to (5.21); the prior: A. Gelman, Prior
 * distributions for variance parameters in hierarchical models, Bayesian Analysis 1 (2006) 515-534; both from memory.
 *
 * @param options.spread scale of the half-Cauchy: half of the prior lies below it
 * @returns undefined of no group
 * @throws {RangeError} for an error or a spread that is not positive
 */
export function normalPopulation(
  measured: readonly Measured[],
  { spread }: { readonly spread: number },
): NormalPopulation | undefined {
  if (!(spread > 0) || measured.some(({ mean, error }) => !(error > 0 && Number.isFinite(mean)))) {
    throw new RangeError('Errors and spreads are positive, means are numbers');
  }
  if (measured.length === 0) return undefined;
  const beliefs = beliefsOfSpread(measured, spread);
  return {
    groups: measured.map(({ mean, error }) =>
      mixed(
        beliefs.map(({ weight, tau, centre, variance }) => {
          const pull = error ** 2 / (error ** 2 + tau ** 2);
          const common = pull ** 2 * variance;
          return { weight, mean: mean + pull * (centre - mean), common, own: (1 - pull) * error ** 2 };
        }),
      ),
    ),
    other: mixed(
      beliefs.map(({ weight, tau, centre, variance }) => ({
        weight,
        mean: centre,
        common: variance,
        own: tau ** 2,
      })),
    ),
  };
}

interface SpreadBelief {
  readonly weight: number;
  readonly tau: number;
  /** Of the population's mean, given the spread. */
  readonly centre: number;
  readonly variance: number;
}

function beliefsOfSpread(measured: readonly Measured[], spread: number): readonly SpreadBelief[] {
  const means = measured.map(({ mean }) => mean);
  const most = FAR * Math.max(spread, Math.max(...means) - Math.min(...means));
  const beliefs = Array.from({ length: POINTS }, (_, at) => {
    // Denser near 0, where a spread makes most of a difference.
    const share = (at + 0.5) / POINTS;
    const tau = most * share ** 2;
    const weights = measured.map(({ error }) => 1 / (error ** 2 + tau ** 2));
    const precision = weights.reduce((sum, weight) => sum + weight, 0);
    const centre = weights.reduce((sum, weight, of) => sum + weight * (means[of] ?? 0), 0) / precision;
    const fit = weights.reduce(
      (sum, weight, of) => sum + Math.log(weight) - weight * ((means[of] ?? 0) - centre) ** 2,
      0,
    );
    const prior = share / (1 + (tau / spread) ** 2);
    return { tau, centre, variance: 1 / precision, log: (fit - Math.log(precision)) / 2 + Math.log(prior) };
  });
  const highest = Math.max(...beliefs.map(({ log }) => log));
  const all = beliefs.reduce((sum, { log }) => sum + Math.exp(log - highest), 0);
  return beliefs.map(({ log, ...belief }) => ({ ...belief, weight: Math.exp(log - highest) / all }));
}

function mixed(
  parts: readonly {
    readonly weight: number;
    readonly mean: number;
    readonly common: number;
    readonly own: number;
  }[],
): MeanBelief {
  const sum = (of: (part: (typeof parts)[number]) => number) =>
    parts.reduce((total, part) => total + part.weight * of(part), 0);
  const mean = sum((part) => part.mean);
  const common = sum((part) => part.common);
  const variance = common + sum((part) => part.own + (part.mean - mean) ** 2);
  return { mean, sd: Math.sqrt(variance), shared: common / variance };
}
