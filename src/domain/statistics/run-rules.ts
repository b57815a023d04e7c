/**
 * A pattern in a row of deviations that chance alone seldom makes. Western Electric, Statistical Quality Control
 * Handbook (1956): the first four. L. S. Nelson, The Shewhart control chart: tests for special causes, Journal of
 * Quality Technology 16 (1984) 237-239: the first three and the others (numbers from memory).
 */
export type RunRule =
  | 'beyond-limits'
  | 'two-of-three-beyond-two-sigma'
  | 'four-of-five-beyond-one-sigma'
  | 'eight-on-one-side'
  | 'nine-on-one-side'
  | 'six-rising-or-falling'
  | 'fourteen-alternating'
  | 'fifteen-within-one-sigma'
  | 'eight-beyond-one-sigma';

/** The point that completes a pattern. */
export interface RuleSignal {
  readonly index: number;
  readonly rule: RunRule;
}

export const westernElectricRules = [
  'beyond-limits',
  'two-of-three-beyond-two-sigma',
  'four-of-five-beyond-one-sigma',
  'eight-on-one-side',
] as const satisfies readonly RunRule[];

export const nelsonRules = [
  'beyond-limits',
  'nine-on-one-side',
  'six-rising-or-falling',
  'fourteen-alternating',
  'two-of-three-beyond-two-sigma',
  'four-of-five-beyond-one-sigma',
  'fifteen-within-one-sigma',
  'eight-beyond-one-sigma',
] as const satisfies readonly RunRule[];

/** What rounding may add to a deviation: a point that is meant to lie on a limit is not beyond it. */
const rounding = 1e-9;

type Judge = (newest: readonly number[]) => boolean;

/** `needed` of the newest points beyond `bound` on one side, the newest among them. */
function crowd(needed: number, bound: number): Judge {
  return (newest) =>
    [1, -1].some((side) => {
      const beyond = newest.map((deviation) => side * deviation > bound + rounding);
      return beyond.at(-1) === true && beyond.filter(Boolean).length >= needed;
    });
}

function whole(length: number, judge: Judge): Judge {
  return (newest) => newest.length === length && judge(newest);
}

function steps(newest: readonly number[]): number[] {
  return newest.slice(1).map((deviation, at) => deviation - (newest[at] ?? deviation));
}

const rising: Judge = (newest) => steps(newest).every((step) => step > rounding);
const falling: Judge = (newest) => steps(newest).every((step) => step < -rounding);
const alternating: Judge = (newest) => {
  const turns = steps(newest);
  return turns.every(
    (step, at) => Math.abs(step) > rounding && (at === 0 || step * (turns[at - 1] ?? 0) < 0),
  );
};

/** How many of the newest points a rule looks at, and what it says of them. */
const judges: Readonly<Record<RunRule, { readonly looksAt: number; readonly judge: Judge }>> = {
  'beyond-limits': { looksAt: 1, judge: crowd(1, 3) },
  'two-of-three-beyond-two-sigma': { looksAt: 3, judge: crowd(2, 2) },
  'four-of-five-beyond-one-sigma': { looksAt: 5, judge: crowd(4, 1) },
  'eight-on-one-side': { looksAt: 8, judge: crowd(8, 0) },
  'nine-on-one-side': { looksAt: 9, judge: crowd(9, 0) },
  'six-rising-or-falling': { looksAt: 6, judge: whole(6, (newest) => rising(newest) || falling(newest)) },
  'fourteen-alternating': { looksAt: 14, judge: whole(14, alternating) },
  'fifteen-within-one-sigma': {
    looksAt: 15,
    judge: whole(15, (newest) => newest.every((deviation) => Math.abs(deviation) < 1 - rounding)),
  },
  'eight-beyond-one-sigma': {
    looksAt: 8,
    judge: whole(8, (newest) => newest.every((deviation) => Math.abs(deviation) > 1 + rounding)),
  },
};

/**
 * The points that complete a pattern, in order of the points and, at one point, of the rules.
 *
 * @param deviations distance of each point from the centre in standard deviations, oldest first. A point on the
 *   centre is on neither side, and one on a limit is not beyond it (NIST/SEMATECH e-Handbook, 6.3.3.1).
 * @example runRules([0, 3.2, 0.5], ['beyond-limits']) // => [{ index: 1, rule: 'beyond-limits' }]
 */
export function runRules(
  deviations: readonly number[],
  rules: readonly RunRule[] = westernElectricRules,
): RuleSignal[] {
  return deviations.flatMap((_, index) =>
    rules
      .filter((rule) => {
        const { looksAt, judge } = judges[rule];
        return judge(deviations.slice(Math.max(0, index + 1 - looksAt), index + 1));
      })
      .map((rule) => ({ index, rule })),
  );
}
