import * as v from 'valibot';
import tables from '../../../shared/sampling-plans.json' with { type: 'json' };
import type { QualityLimit } from './quality-limits.ts';

/** A single sampling plan: so many are checked, and the lot is accepted with at most `accept` bad ones among them. */
export type SamplingPlan =
  | { readonly kind: 'sample'; readonly letter: string; readonly sample: number; readonly accept: number }
  /** The sample is as large as the lot, or there is but one: all are checked. */
  | { readonly kind: 'all' };

const table = v.parse(
  v.object({
    aqls: v.array(v.number()),
    letters: v.array(
      v.object({
        letter: v.string(),
        largestLot: v.nullable(v.number()),
        sample: v.number(),
        plans: v.array(v.union([v.number(), v.picklist(['<', '>'])])),
      }),
    ),
  }),
  tables,
);

/**
 * The plan for a lot of so many pieces, single sampling, normal inspection, general level II.
 *
 * @throws RangeError where the lot is no whole number above 0
 * Source: MIL-STD-105E, Tables I and II-A; see shared/sampling-plans.json.
 */
export function samplingPlan(lot: number, limit: QualityLimit): SamplingPlan {
  if (!Number.isInteger(lot) || lot < 1) throw new RangeError(`a lot of ${lot}`);
  const column = table.aqls.indexOf(Number(limit));
  let row = table.letters.findIndex(({ largestLot }) => largestLot === null || lot <= largestLot);
  // An arrow leads to a plan of another letter, whose sample is taken too (4.9.3 of the standard).
  for (;;) {
    const { letter, sample, plans } = table.letters[row] ?? {};
    const plan = plans?.[column];
    if (letter === undefined || sample === undefined || plan === undefined)
      throw new Error(`the table has no plan for ${lot} at ${limit}`);
    if (typeof plan === 'number')
      return sample >= lot ? { kind: 'all' } : { kind: 'sample', letter, sample, accept: plan };
    row += plan === '>' ? 1 : -1;
  }
}

/**
 * The operating characteristic: the chance that a plan accepts lots of a process that makes a share `bad` (0 to 1) of bad ones.
 * Binomial (type B), so it is of a long run of deliveries, not of one small lot.
 *
 * @throws RangeError where `bad` is no share
 */
export function chanceOfAcceptance(
  { sample, accept }: Pick<Extract<SamplingPlan, { kind: 'sample' }>, 'sample' | 'accept'>,
  bad: number,
): number {
  if (!(bad >= 0 && bad <= 1)) throw new RangeError(`a share of ${bad}`);
  if (bad === 0 || bad === 1) return bad === 0 || accept >= sample ? 1 : 0;
  // Few terms, added one by one. The special functions would give the same, but make code of text, which no page may.
  let logTerm = sample * Math.log1p(-bad);
  let sum = Math.exp(logTerm);
  for (let found = 1; found <= Math.min(accept, sample); found += 1) {
    logTerm += Math.log((sample - found + 1) / found) + Math.log(bad) - Math.log1p(-bad);
    sum += Math.exp(logTerm);
  }
  return Math.min(1, sum);
}
