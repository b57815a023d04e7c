/** What a variant brings in and what of the constraint it takes. */
export interface Earner<Variant extends string> {
  readonly variant: Variant;
  /** Of a good piece: its price less what it alone costs (parts, consumables, not the work), in minor units. */
  readonly contribution: number;
  /** Minutes of the constraint for a good piece. */
  readonly minutes: number;
}

export interface Earning<Variant extends string> extends Earner<Variant> {
  /** Minor units an hour of the constraint; undefined where the variant takes none of it: nothing there holds it back. */
  readonly perHour: number | undefined;
}

/**
 * Variants by what an hour of the constraint earns with them, those that do not need it first: which to make more of.
 * With one constraint and pieces that can be divided, making them in this order is the best mix; `productMix` also answers
 * for several constraints and whole pieces.
 * Source: E. M. Goldratt, The Haystack Syndrome, North River Press 1990. Limits of the ranking: A. Linhares, Int. J.
 * Production Economics 121 (2009) 121-129.
 *
 * @throws {RangeError} for a contribution that is no number, or minutes below 0
 * @example contributionPerHour([{ variant: 'P', contribution: 45, minutes: 15 }]) // perHour 180
 */
export function contributionPerHour<Variant extends string>(
  earners: readonly Earner<Variant>[],
): readonly Earning<Variant>[] {
  return earners
    .map((earner): Earning<Variant> => {
      const { contribution, minutes } = earner;
      if (!(Number.isFinite(contribution) && minutes >= 0 && minutes < Number.POSITIVE_INFINITY)) {
        throw new RangeError(`Not a contribution and minutes: ${contribution}, ${minutes}`);
      }
      return { ...earner, perHour: minutes === 0 ? undefined : (60 * contribution) / minutes };
    })
    .sort((a, b) => (b.perHour ?? Number.MAX_VALUE) - (a.perHour ?? Number.MAX_VALUE));
}
