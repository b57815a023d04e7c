/**
 * The chance level at which each of several tests must be judged so that one or more false alarms among all of them
 * are no likelier than `falseAlarm`, whatever the tests have to do with each other (Bonferroni).
 *
 * @throws {RangeError} for a chance outside 0 to 1 or a number of tests that is not whole and above 0
 * @example bonferroniThreshold(0.05, 10) // => 0.005
 */
export function bonferroniThreshold(falseAlarm: number, tests: number): number {
  mustBeChances([falseAlarm]);
  if (!(Number.isInteger(tests) && tests > 0)) throw new RangeError(`no number of tests: ${tests}`);
  return falseAlarm / tests;
}

/**
 * Adjusted p values by Benjamini and Hochberg: those up to q hold a share of false ones of at most q on average, when
 * the tests are independent (Y. Benjamini and Y. Hochberg, Controlling the false discovery rate, Journal of the Royal
 * Statistical Society B 57 (1995) 289-300).
 *
 * @param pValues in any order; the answer has the same
 * @throws {RangeError} for a p value outside 0 to 1
 * @example falseDiscovery([0.01, 0.5]) // => [0.02, 0.5]
 */
export function falseDiscovery(pValues: readonly number[]): number[] {
  mustBeChances(pValues);
  const adjusted = pValues.map(() => 1);
  let least = 1;
  for (const { index, p, rank } of ranked(pValues).reverse()) {
    least = Math.min(least, p * (pValues.length / rank));
    adjusted[index] = least;
  }
  return adjusted;
}

/**
 * Adjusted p values by Holm: the chance of any false one among those up to α is at most α, whatever the tests have to
 * do with each other (S. Holm, A simple sequentially rejective multiple test procedure, Scandinavian Journal of
 * Statistics 6 (1979) 65-70).
 *
 * @param pValues in any order; the answer has the same
 * @throws {RangeError} for a p value outside 0 to 1
 * @example holm([0.01, 0.5]) // => [0.02, 0.5]
 */
export function holm(pValues: readonly number[]): number[] {
  return taroneHolm(
    pValues,
    pValues.map(() => 0),
  );
}

/**
 * Holm's bound for tests of counts, which cannot give every p value: a test is only reckoned with where it could have
 * come as low as the p value at hand. A wood with one scrapped piece can never look strange and costs the others nothing.
 *
 * The bound: with L(p) the number of tests that can reach p, P(any pᵢ ≤ p) ≤ p · L(p), which grows with p; so the
 * chance of any p · L(p) ≤ α is at most α. Step by step as Holm, L is over what is left. After R. E. Tarone, A modified
 * Bonferroni method for discrete data, Biometrics 46 (1990) 515-522, in the monotone form of G. Hommel and
 * F. Krummenauer, Biometrical Journal 40 (1998) 673-681 (both from memory; the bound is shown above).
 *
 * @param pValues in any order; the answer has the same
 * @param leastPossible the smallest p value that each test could have given
 * @throws {RangeError} for a p value outside 0 to 1, or when there are not as many of both
 * @example taroneHolm([0.01, 1, 1], [0.001, 0.001, 0.3]) // => [0.02, 1, 1]
 */
export function taroneHolm(pValues: readonly number[], leastPossible: readonly number[]): number[] {
  mustBeChances([...pValues, ...leastPossible]);
  if (pValues.length !== leastPossible.length) throw new RangeError('each p value has one least possible');
  const adjusted = pValues.map(() => 1);
  const order = ranked(pValues);
  let most = 0;
  order.forEach(({ index, p }, at) => {
    const left = order.slice(at).filter((each) => (leastPossible[each.index] ?? 0) <= p).length;
    most = Math.max(most, Math.min(1, p * left));
    adjusted[index] = most;
  });
  return adjusted;
}

function ranked(pValues: readonly number[]): { index: number; p: number; rank: number }[] {
  return pValues
    .map((p, index) => ({ index, p }))
    .sort((a, b) => a.p - b.p)
    .map((each, at) => ({ ...each, rank: at + 1 }));
}

function mustBeChances(values: readonly number[]): void {
  const strange = values.find((value) => !(value >= 0 && value <= 1));
  if (strange !== undefined) throw new RangeError(`no chance: ${strange}`);
}
