/**
 * The seed of every random test, from SEED. Without one a run by hand draws its own and names it; a run by a machine
 * is refused, because nobody could repeat it.
 *
 * @throws {Error} when SEED is missing in CI, or is no whole number from 0 to 2³¹ − 1
 */
export function seedFrom(
  { SEED, CI }: { SEED?: string | undefined; CI?: string | undefined },
  drawn: number,
): number {
  if (SEED === undefined || SEED === '') {
    if (CI) throw new Error('CI runs need SEED, so that they can be repeated: SEED=20260301');
    return drawn;
  }
  const seed = Number(SEED);
  if (!Number.isInteger(seed) || seed < 0 || seed >= 2 ** 31)
    throw new Error(`SEED is no whole number from 0 to 2147483647: ${SEED}`);
  return seed;
}
